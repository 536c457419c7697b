// Hand layouts without compensation, inches. Common practice, no source.

import { planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';

const INCH = 25.4;

const plan = (part: object) =>
  planJob(
    readJob({
      units: 'in',
      stock: { material: 'galvanised-steel', gauge: 26 },
      bending: { rule: 'nominal' },
      parts: [{ name: 'part', ...part }],
    } as unknown),
  ).parts[0];

const inches = (p: readonly number[] | undefined) => p?.map((v) => v / INCH);

test('a channel 14 between its tabs, base 7, sides 2, hems and tabs 3/4: the blank is 15 1/2 x 12 1/2', () => {
  const body = plan({
    family: 'hemmed-channel',
    length: 14,
    width: 7,
    height: 2,
    hem: { type: 'closed', length: '3/4 in' },
    endTabs: { length: '3/4 in' },
  });
  expect(inches(body?.flat.blank.max)).toEqual([expect.closeTo(15.5, 9), expect.closeTo(12.5, 9)]);
  const lines = (k: 0 | 1) =>
    [
      ...new Set(
        body?.flat.bends
          .filter((b) => b.line[0][1 - k] !== b.line[1][1 - k])
          .map((b) => Math.round((b.line[0][k] / INCH) * 1e6) / 1e6),
      ),
    ].toSorted((a, b) => a - b);
  expect(lines(0)).toEqual([0.75, 14.75]);
  expect(lines(1)).toEqual([0.75, 2.75, 9.75, 11.75]);
});

test('the notches of that channel run at 45 degrees at every crossing of lines', () => {
  const body = plan({
    family: 'hemmed-channel',
    length: 14,
    width: 7,
    height: 2,
    hem: { type: 'closed', length: 0.75 },
    endTabs: { length: 0.75 },
  });
  const outline = body?.flat.outline ?? [];
  const slopes = outline.map((v, i) => {
    const w = outline[(i + 1) % outline.length] ?? v;
    return Math.abs((Math.atan2(w.at[1] - v.at[1], w.at[0] - v.at[0]) * 180) / Math.PI) % 90;
  });
  // four crossings an end, two cuts each
  const slanted = slopes.filter((s) => s > 1e-6 && s < 90 - 1e-6);
  expect(slanted).toHaveLength(16);
  for (const s of slanted) expect(s).toBeCloseTo(45, 9);
});

test('its end is 7 x 4 1/2 with shoulders at 2 and a 2 in crown: the slopes then run at 45 degrees', () => {
  const end = plan({
    family: 'gusset-end',
    width: 7,
    shoulderHeight: 2,
    height: 4.5,
    crownWidth: 2,
    cornerNip: 0,
  });
  expect(inches(end?.flat.blank.max)).toEqual([expect.closeTo(7, 9), expect.closeTo(4.5, 9)]);
  const corners = end?.flat.outline.map((v) => inches(v.at)?.map((c) => Math.round(c * 1e9) / 1e9));
  expect(corners).toEqual([
    [0, 0],
    [7, 0],
    [7, 2],
    [4.5, 4.5],
    [2.5, 4.5],
    [0, 2],
  ]);
});

test('a handle that spans 14 with 3/4 tabs, 1 3/4 wide, sides 5/8, hems 3/8: the blank is 15 1/2 x 3 3/4', () => {
  const handle = plan({
    family: 'handle',
    span: 14,
    width: 1.75,
    sideDepth: 0.625,
    hem: { type: 'closed', length: 0.375 },
    tabs: { length: 0.75 },
  });
  expect(inches(handle?.flat.blank.max)).toEqual([expect.closeTo(15.5, 9), expect.closeTo(3.75, 9)]);
});
