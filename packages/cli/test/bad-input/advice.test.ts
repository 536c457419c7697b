import { type AnyFamily, FAMILIES } from '@tinwright/core';
import { declaredAt, sizesIn, withValue } from '@tinwright/core/internal';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tinwrightReading } from '../host.js';
import { partJob } from '../jobs.js';
import { make, refused } from '../place.js';

const INCHES = {
  units: 'in',
  stock: { material: 'mild-steel', thickness: '1 mm' },
  bending: { rule: 'k-factor', insideRadius: '1 mm' },
};
const RUNS = Math.min(10, Number(process.env.TINWRIGHT_RUNS ?? 3));
const USE = /Use ([\d.]+) (mm|in) or (less|more)\.$/;

/** The size a refusal asks for, as it is printed. @throws Error when it asks for none */
function asked(problem: string | undefined): { readonly number: number; readonly text: string } {
  const [, number, unit] = USE.exec(problem ?? '') ?? [];
  if (number === undefined) throw new Error(`no size in: ${problem}`);
  return { number: Number(number), text: `${number} ${unit}` };
}

describe('a tabbed box with a hem of 10 mm', () => {
  const box = (size: object) =>
    partJob('open-box', {
      ...{ length: 320, width: 220, height: 60, corner: 'tabbed', hem: { type: 'closed', length: 10 } },
      ...size,
    });

  // hem of 10, bend of 2 and gap of 0.5 below, half a millimetre of tab: 13
  test('12 mm high: the height given is named, and one that passes', async () => {
    const [problem, ...more] = await refused(box({ height: 12 }));
    expect(more).toEqual([]);
    expect(problem).toContain(
      'part "tray": hem.length: 10 mm given, longer than panel "north" of 12 mm has room for',
    );
    const { number } = asked(problem);
    expect((await make(box({ height: 12, hem: { type: 'closed', length: number } }))).exit).toBe(0);
    expect((await make(box({ height: 12, hem: { type: 'closed', length: number + 0.02 } }))).exit).toBe(2);
  });

  test.each([1, 2, 3])('%d mm long: a length that is enough', async (length) => {
    const [problem] = await refused(box({ length }));
    expect(problem).toContain(
      `part "tray": length: ${length} mm given, panel "base" has to reach past its bends`,
    );
    expect(problem).toMatch(/Use [\d.]+ mm or more/);
  });
});

test('inside sizes are quoted as given, not as outside sizes', async () => {
  const box = (height: number) =>
    partJob('open-box', { length: 100, width: 100, height, dimensions: 'inside' });
  const [problem] = await refused(box(0.5));
  expect(problem).toContain(
    'height: 0.5 mm given, panel "north" has to reach past its bends, which take 2.5 mm.',
  );
  expect(asked(problem).text).toBe('1.5 mm'); // bend of 2 and half a millimetre, less the sheet below
  expect((await make(box(1.5))).exit).toBe(0);
});

test('a strip of no width is told the width that would work', async () => {
  const strip = (width: number) => partJob('bent-strip', { width, legs: [30, 30], angles: [90] });
  expect((await refused(strip(0.5)))[0]).toContain('width: 0.5 mm given, 1 mm to 10000 mm allowed');
  expect((await make(strip(1))).exit).toBe(0);
});

test('in a job in inches a size is advised in inches, rounded so that it passes as it is printed', async () => {
  const channel = (hem: unknown) =>
    partJob(
      'hemmed-channel',
      { length: 16, width: 8, height: '55 mm', hem: { type: 'closed', length: hem } },
      INCHES,
    );
  const [problem] = await refused(channel(3));
  const { number, text } = asked(problem);
  expect(text).toBe('2.047 in'); // 55 mm less the bend of 2 less the sheet of 1: 52 mm, 2.0472 in
  expect((await make(channel(number))).exit).toBe(0);
  expect((await make(channel(text))).exit).toBe(0);
});

type Values = Readonly<Record<string, unknown>>;

/** The example with every length taken times a factor of its own. */
function stretched({ values, describe }: AnyFamily, factor: () => number, per: number): unknown {
  return sizesIn(describe.example)
    .filter(({ path }) => declaredAt(values, path)?.unit === 'mm')
    .reduce<unknown>(
      (params, { path, given }) => withValue(params, path, Math.round((given * factor() * 1e4) / per) / 1e4),
      describe.example,
    );
}

/** A copy with the value at `hem.length` or `legs[1]` replaced. */
function put(values: unknown, [step, ...rest]: readonly string[], value: unknown): unknown {
  if (step === undefined) return value;
  if (Array.isArray(values)) return values.map((v, i) => (i === Number(step) ? put(v, rest, value) : v));
  const group = (values ?? {}) as Values; // a size that was left out has no group yet
  return { ...group, [step]: put(group[step], rest, value) };
}

async function complaints(job: string): Promise<readonly string[]> {
  const { err } = await tinwrightReading(job, 'check', '-');
  return err.split('\n').flatMap((line) => line.split(': part "tray": ').slice(1));
}

const factors = fc.array(fc.constantFrom(0.01, 0.03, 0.1, 0.3, 0.6, 1, 1, 1.7, 4), {
  minLength: 12,
  maxLength: 12,
});

let followed = 0;

describe.each([
  ['mm', 1, {}],
  ['in', 25.4, INCHES],
])('sizes that cannot be, in %s', (unit, per, head) => {
  test.each(FAMILIES.map((f): [string, AnyFamily] => [f.name, f]))(
    '%s: what is asked for, written as it is printed, ends that complaint',
    async (name, family) => {
      await fc.assert(
        fc.asyncProperty(factors, async (list) => {
          let next = 0;
          const values = stretched(family, () => list[next++ % list.length] as number, per);
          for (const line of await complaints(partJob(name, values as object, head))) {
            const [, path] = /^(\S+): .*Use /.exec(line) ?? [];
            if (path === undefined || !USE.test(line)) continue;
            const { number, text } = asked(line);
            expect(text.endsWith(` ${unit}`), line).toBe(true);
            const steps = path.replace(/\[(\d+)\]/g, '.$1').split('.');
            for (const size of [number, text]) {
              const left = await complaints(partJob(name, put(values, steps, size) as object, head));
              expect(
                left.filter((l) => l.startsWith(`${path}: `)),
                line,
              ).toEqual([]);
            }
            followed += 1;
          }
        }),
        { numRuns: RUNS },
      );
    },
  );
});

test('many sizes were asked for and followed', () => {
  expect(followed).toBeGreaterThan((RUNS * FAMILIES.length) / 4);
});
