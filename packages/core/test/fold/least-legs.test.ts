// The least legs and hems that can be folded: made at their bound, refused a hundredth of a millimetre below it.
import { JobError, kFactor, planJob, readJob } from '@tinwright/core';
import { flange, fold, hole, panel, rectangle } from '@tinwright/core/family';
import { expect, test } from 'vitest';

function refused(part: object): readonly string[] {
  const job = { units: 'mm', stock: { material: 'mild-steel', thickness: 1 } };
  try {
    planJob(readJob({ ...job, parts: [{ name: 'part', ...part }] } as unknown));
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    return error.problems.map((p) => `${p.code}: ${p.message}`);
  }
  return [];
}

const strip = (...legs: readonly number[]) => ({
  family: 'bent-strip',
  width: 40,
  legs,
  angles: legs.slice(1).map(() => 90),
});

test('a leg at an end takes its setback and half a millimetre, one between two bends both setbacks', () => {
  // one thickness of radius: a setback of 2 mm
  expect(refused(strip(2.5, 40))).toEqual([]);
  expect(refused(strip(2.49, 40))).toHaveLength(1);
  expect(refused(strip(40, 4.5, 40))).toEqual([]);
  expect(refused(strip(40, 4.49, 40))).toHaveLength(1);
});

test.each([
  ['open', 'an open hem'],
  ['closed', 'a closed hem'],
])('a hem that is too short is told by what it is: %s', (type, words) => {
  const hem = { type, length: 0.5, ...(type === 'open' ? { gap: 2 } : {}) };
  const found = refused({ family: 'hemmed-channel', length: 300, width: 200, height: 50, hem });
  expect(found.join('\n')).toContain(`${words} needs a straight leg past its fold`);
});

test('a wired edge rolls to the side it is told', () => {
  const roll = (side: string) =>
    planJob(
      readJob({
        units: 'mm',
        stock: { material: 'mild-steel', thickness: 0.5 },
        parts: [
          {
            name: 'part',
            family: 'bent-strip',
            width: 60,
            legs: [50, 50],
            angles: [90],
            edges: [{ type: 'wired', diameter: 4, panel: 'leg-2', edge: 'far', side }],
          },
        ],
      } as unknown),
    ).parts[0]?.flat.bends.find((b) => b.parent === 'leg-2')?.direction;
  expect([roll('up'), roll('down')]).toEqual(['up', 'down']);
});

test('a panel between two bends holds both setbacks and half a millimetre, whichever way it runs', () => {
  const between = (length: number, width: number, edges: readonly [string, string]) => {
    try {
      fold(
        { thickness: 1, insideRadius: 1, rule: kFactor(0.42) },
        panel('base', rectangle(length, width), [['length'], ['width']]),
        ...edges.map((e) => flange(e, ['base', e], { height: 10 })),
      );
      return [];
    } catch (error) {
      if (!(error instanceof JobError)) throw error;
      return error.problems.map((p) => `${p.path.join('.')} ${p.code}`);
    }
  };
  expect(between(4.5, 30, ['west', 'east'])).toEqual([]);
  expect(between(4.49, 30, ['west', 'east'])).toEqual(['length leg-short']);
  expect(between(30, 4.5, ['south', 'north'])).toEqual([]);
  expect(between(30, 4.49, ['south', 'north'])).toEqual(['width leg-short']);
});

test('two holes of a part keep half a millimetre between them', () => {
  const apart = (between: number) => {
    try {
      fold(
        { thickness: 1, insideRadius: 1, rule: kFactor(0.42) },
        panel('base', rectangle(40, 20)),
        hole('base', { at: [10, 10], diameter: 6 }),
        hole('base', { at: [10 + between, 10], diameter: 4 }),
      );
      return [];
    } catch (error) {
      if (!(error instanceof JobError)) throw error;
      return error.problems.map((p) => p.message);
    }
  };
  expect(apart(5.5)).toEqual([]);
  expect(apart(5.49).join()).toContain('between the holes of panel "base"');
});
