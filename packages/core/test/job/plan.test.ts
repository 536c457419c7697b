import { planJob, readJob, type Unit } from '@tinwright/core';
import { type ToldFinding, tellFindings } from '@tinwright/words';
import { describe, expect, test } from 'vitest';

const mm = (v: number) => `${v} mm`;

interface Change {
  readonly thickness?: number;
  readonly radius?: number;
  readonly rule?: object;
  readonly body?: object;
  readonly end?: object;
  readonly handle?: object;
  readonly rim?: unknown;
  readonly crown?: unknown;
  readonly clearance?: number;
  readonly measured?: object;
}

/** A harvest carrier with every length written in mm, whatever the unit of the job. */
function carrier(units: Unit, c: Change): object {
  return {
    units,
    stock: { material: 'mild-steel', thickness: mm(c.thickness ?? 1) },
    bending: { insideRadius: mm(c.radius ?? 1), ...(c.rule ?? { rule: 'k-factor', k: 0.42 }) },
    parts: [
      {
        name: 'body',
        family: 'hemmed-channel',
        length: mm(400),
        width: mm(200),
        height: mm(55),
        endTabs: { length: mm(20) },
        ...c.body,
      },
      {
        name: 'end',
        family: 'gusset-end',
        quantity: 2,
        width: { of: 'body.seatWidth', less: mm(0.4) },
        shoulderHeight: mm(53),
        height: mm(160),
        crownWidth: mm(60),
        ...c.end,
      },
      {
        name: 'handle',
        family: 'handle',
        span: { of: 'body.insideLength', less: mm(2.2) },
        width: mm(44),
        sideDepth: mm(14),
        tabs: { length: mm(30) },
        ...c.handle,
      },
    ],
    joints: [
      ...[1, 2].map((i) => ({
        name: `rim-${i}`,
        from: i === 1 ? 'body.west' : 'body.east',
        to: `end-${i}.rim`,
        by: c.rim ?? 'spot-weld',
        clearance: mm(c.clearance ?? 0.2),
      })),
      ...[1, 2].map((i) => ({
        name: `crown-${i}`,
        from: `end-${i}.crown`,
        to: i === 1 ? 'handle.west' : 'handle.east',
        by: c.crown ?? 'spot-weld',
      })),
    ],
    measured: c.measured ?? {},
  };
}

const findings = (units: Unit, change: Change): readonly ToldFinding[] =>
  tellFindings(planJob(readJob(carrier(units, change))).findings, units, 'en');

/** Jobs with something to find, and what is found there that names a length. */
const JOBS: readonly (readonly [change: Change, codes: readonly string[]])[] = [
  [{ radius: 0.4 }, ['radius-small']],
  [{ rule: { rule: 'nominal' } }, ['no-compensation']],
  [
    { end: { stock: { material: 'mild-steel', thickness: mm(3.5) } } },
    ['weld-ratio', 'weld-thickness', 'weld-stack', 'loop-open', 'clash'],
  ],
  [{ rim: { 'spot-weld': { count: 90 } } }, ['pitch-close']],
  [{ handle: { width: mm(80) }, crown: { 'spot-weld': { throat: mm(4) } } }, ['weld-throat']],
  [{ body: { endTabs: { length: mm(6) } } }, ['overlap-narrow']],
  [{ thickness: 3, rim: { 'blind-rivet': { diameter: mm(2.4) } } }, ['rivet-thin']],
  [{ thickness: 3, rim: { 'blind-rivet': { diameter: mm(6.4) } } }, ['radius-small']],
  [{ thickness: 0.5, rim: { 'blind-rivet': { diameter: mm(4.8) } } }, ['rivet-grip']],
  [{ clearance: 3 }, ['fit-tight']],
  [{ handle: { span: mm(390) } }, ['loop-open']],
  [{ measured: { 'body.insideWidth': mm(180) } }, ['measured-far']],
];

const words = ({ message, fix, source }: ToldFinding) =>
  `${message} ${fix} ${source}`.replace(/an? [\d./]+ (mm|in) rivet/g, ''); // the name of a size

describe.each(JOBS)('%j', (change, codes) => {
  const [inches, millimetres] = [findings('in', change), findings('mm', change)];

  test('what is found does not depend on the unit of the job; values and limits are mm', () => {
    expect(inches.map((f) => f.code)).toEqual(expect.arrayContaining([...codes]));
    const numbers = (list: readonly ToldFinding[]) =>
      list.map(({ message: _, fix: _f, source: _s, ...rest }) => JSON.parse(rounded(rest)) as unknown);
    expect(numbers(inches)).toEqual(numbers(millimetres));
  });

  test('every length is said in the unit of the job, and is the same length', () => {
    for (const [i, f] of inches.entries()) {
      expect(words(f)).not.toMatch(/\d mm\b/);
      const [said, meant] = [lengths(words(f), 'in'), lengths(words(millimetres[i] as ToldFinding), 'mm')];
      expect(said).toHaveLength(meant.length);
      // a thousandth of an inch and a hundredth of a millimetre, each rounded by one at most
      for (const [k, v] of said.entries())
        expect(Math.abs(v * 25.4 - (meant[k] as number))).toBeLessThan(0.0254 + 0.01);
    }
    const named = inches.filter((f) => codes.includes(f.code));
    for (const f of named) expect(lengths(words(f), 'in').length).toBeGreaterThan(0);
  });
});

const rounded = (value: unknown) =>
  JSON.stringify(value, (_, v) => (typeof v === 'number' ? Math.round(v * 1e6) / 1e6 : v));

const lengths = (text: string, unit: Unit) =>
  [...text.matchAll(new RegExp(`([\\d.]+) ${unit}\\b`, 'g'))].map(([, number]) => Number(number));

test('a measure that cannot be is refused in the unit of the job', () => {
  const read = () => readJob(carrier('in', { measured: { 'body.insideWidth': mm(1) } }));
  expect(read).toThrow(/0\.787 in given, .* 0\.118 in/);
});
