import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Loop, planJob, readJob, segments } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { contains, distanceToLoop, leastEdges, loopArea, segmentLength } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

const LEAST = 1.3;
const loop = (...corners: readonly (readonly [number, number])[]): Loop =>
  corners.map((at) => ({ at, bulge: 0 }));
const shortest = (l: Loop) => Math.min(...segments(l).map(segmentLength));
const shorts = (l: Loop) => segments(l).filter((s) => segmentLength(s) < LEAST - 1e-9).length;

test('a chamfer of 0.5 is widened to the least edge, at its own slope', () => {
  const nipped = loop([0, 0], [40, 0], [40, 19.6], [39.6, 20], [0, 20]);
  const mended = leastEdges(nipped, LEAST);
  expect(shortest(mended)).toBeCloseTo(LEAST, 9);
  const [a, b] = [mended[2], mended[3]];
  expect((b?.at[0] as number) - (a?.at[0] as number)).toBeCloseTo(-LEAST / Math.SQRT2, 9);
});

test('the foot of a notch of 0.3 runs to a point; a slot with parallel sides cannot be helped', () => {
  const notched = loop([0, 0], [40, 0], [40, 20], [24, 20], [20.15, 12], [19.85, 12], [16, 20], [0, 20]);
  const mended = leastEdges(notched, LEAST);
  expect(shorts(mended)).toBe(0);
  expect(mended).toHaveLength(7);
  const slotted = loop([0, 0], [40, 0], [40, 20], [20.2, 20], [20.2, 12], [19.8, 12], [19.8, 20], [0, 20]);
  expect(leastEdges(slotted, LEAST)).toEqual(slotted);
});

test('a step of 0.2, up or down, becomes a slope as long as the least edge', () => {
  for (const [left, right] of [
    [20, 20.2],
    [20.2, 20],
  ] as const) {
    const stepped = loop([0, 0], [40, 0], [40, right], [20, right], [20, left], [0, left]);
    const mended = leastEdges(stepped, LEAST);
    expect(shortest(mended)).toBeCloseTo(LEAST, 9);
    expect(loopArea(mended)).toBeLessThan(loopArea(stepped));
  }
});

test('every example: fewer short edges, metal only taken off and not far from where it was', () => {
  const folder = fileURLToPath(new URL('../../../../examples/', import.meta.url));
  const jobs = readdirSync(folder).filter((f) => f.endsWith('.yaml') && !/shop|row-markers/.test(f));
  expect(jobs.length).toBeGreaterThan(5);
  let [before, after] = [0, 0];
  for (const file of jobs)
    for (const { flat } of planJob(
      readJob(parse(readFileSync(folder + file, 'utf8')) as unknown, undefined, { hardware }),
    ).parts) {
      const mended = leastEdges(flat.outline, LEAST);
      before += shorts(flat.outline);
      after += shorts(mended);
      for (const { at } of mended) {
        expect(distanceToLoop(at, flat.outline)).toBeLessThan(2 * LEAST);
        expect(contains(flat.outline, at) || distanceToLoop(at, flat.outline) < 1e-6).toBe(true);
      }
    }
  expect(before).toBeGreaterThan(10);
  expect(after).toBeLessThan(before / 2);
});

test('a short edge beside an arc is left: only straight neighbours run on', () => {
  const before: Loop = [
    { at: [0, 0], bulge: 0 },
    { at: [40, 0], bulge: 0.2 },
    { at: [40, 19.6], bulge: 0 },
    { at: [39.6, 20], bulge: 0 },
    { at: [0, 20], bulge: 0 },
  ];
  const after = before.map((v, i) => ({ ...v, bulge: i === 3 ? 0.2 : 0 }));
  for (const beside of [before, after]) expect(leastEdges(beside, LEAST)).toEqual(beside);
});

test('a step that leans becomes a slope as long as the least edge too', () => {
  const stepped = loop([0, 0], [40, 0], [40, 20.2], [20, 20.2], [19.9, 20], [0, 20]);
  expect(shortest(leastEdges(stepped, LEAST))).toBeCloseTo(LEAST, 9);
});
