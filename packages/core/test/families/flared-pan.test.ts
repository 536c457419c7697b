// Pans with walls that lean out, against published layouts and measured in space.

import { type PartPlan, planJob, readJob, sizesOf } from '@tinwright/core';
import { place3 } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const INCH = 25.4;

const plan = (part: object, job: object = {}): PartPlan =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      bending: { rule: 'k-factor', insideRadius: 1 },
      ...job,
      parts: [{ name: 'pan', family: 'flared-pan', ...part }],
    } as unknown),
  ).parts[0] as PartPlan;

const sizes = (p: PartPlan) =>
  Object.fromEntries(sizesOf(p.family, p.params, p.sheet).map((s) => [s.name, s.value]));

// Longfield, Sheet Metal Drafting (public domain), p. 138 and ch. IX: a dripping pan 12 3/8 x 5 3/8 over the wire, 1 in
// deep, flare 3/8, wired edge 3/8, has a bottom of 11 1/8 x 4 1/8 and a blank of 14 x 7 in. The slant of 1 1/16 is
// computed (lost in the copy); the book rounds it to sixteenths, hence the tolerance: two sixteenths' halves.
test('the dripping pan 12 3/8 x 5 3/8 takes a blank of 14 x 7 in', () => {
  const pan = plan(
    {
      bottom: { length: '11 1/8 in', width: '4 1/8 in' },
      depth: '1 in',
      flare: '3/8 in',
      edge: { type: 'wire', allowance: '3/8 in' },
    },
    { stock: { material: 'tinplate', thickness: 0.3 }, bending: { rule: 'nominal' } },
  );
  const [x, y] = pan.flat.blank.max;
  expect(Math.abs(x / INCH - 14)).toBeLessThan(1 / 32);
  expect(Math.abs(y / INCH - 7)).toBeLessThan(1 / 32);
  // the unrounded slant: 2 x (sqrt(1 + (3/8)^2) + 3/8) past the bottom
  expect(x / INCH).toBeCloseTo(11.125 + 2 * (Math.hypot(1, 0.375) + 0.375), 9);
  expect(y / INCH).toBeCloseTo(4.125 + 2 * (Math.hypot(1, 0.375) + 0.375), 9);
});

// College workshop sheet, scribd 578606676: a hemmed tray from 200 x 150 mm, marks at 10/40/160/190 and 5/35/115/145,
// so base 120 x 80, walls 30, hems 10 and 5; no allowance for bends. As a pan with upright walls and one hem all round
// it has 10 on every side; the box with a hem for each wall is in `open-box.test.ts`.
test('upright walls without flare make the tray of the workshop sheet', () => {
  const tray = plan(
    {
      bottom: { length: 120, width: 80 },
      depth: 30,
      flare: 0,
      edge: { type: 'hem', length: 10 },
    },
    { stock: { material: 'galvanised-steel', thickness: 0.3 }, bending: { rule: 'nominal' } },
  );
  expect(tray.flat.blank.max).toEqual([expect.closeTo(200, 9), expect.closeTo(160, 9)]);
});

const EDGES = [{ type: 'plain' }, { type: 'hem', length: 8 }, { type: 'wire', diameter: 3 }];
const CORNERS = ['mitred', 'folded'];
const cases = EDGES.flatMap((edge) => CORNERS.map((corner) => ({ edge, corner })));

test.each(cases)('a pan with $edge.type edge and $corner corners is as deep and as wide as said', (c) => {
  const pan = plan({ bottom: { length: 200, width: 120 }, depth: 40, flare: 15, ...c });
  const { topLength, topWidth } = sizes(pan);
  expect(pan.formed.size).toEqual([
    expect.closeTo(topLength as number, 9),
    expect.closeTo(topWidth as number, 9),
    expect.closeTo(40, 9),
  ]);
});

test.each(CORNERS)('with %s corners the walls lean by the flare over the depth', (corner) => {
  const pan = plan({ bottom: { length: 200, width: 120 }, depth: 40, flare: 15, corner });
  for (const id of ['north', 'south', 'east', 'west']) {
    const { z } = pan.formed.panels.find((p) => p.id === id)?.pose ?? { z: [0, 0, 0] as const };
    // the face looks inwards and up: its rise over its run is the flare over the depth
    expect(z[2] / Math.hypot(z[0], z[1])).toBeCloseTo(15 / 40, 12);
  }
});

test('mitred walls stay the gap apart along the corner', () => {
  const pan = plan({ bottom: { length: 200, width: 120 }, depth: 40, flare: 15, gap: 0.8 });
  const corners = (id: string) => {
    const p = pan.formed.panels.find((x) => x.id === id);
    return (p?.shape ?? []).flatMap(([x, y]) =>
      [0, 1].map((z) => place3(p?.pose as NonNullable<typeof p>['pose'], [x, y, z])),
    );
  };
  // distance from the upright plane through the corner at 45 degrees
  const off = (id: string) => corners(id).map(([x, y]) => (200 - x - (120 - y)) / Math.SQRT2);
  expect(Math.min(...off('north').filter((d) => d > -1))).toBeCloseTo(0.4, 9);
  expect(Math.max(...off('east').filter((d) => d < 1))).toBeCloseTo(-0.4, 9);
});

test('walls that stand upright are those of a box', () => {
  const pan = plan({ bottom: { length: 200, width: 120 }, depth: 40, flare: 0 });
  expect(pan.formed.size).toEqual([expect.closeTo(200, 9), expect.closeTo(120, 9), expect.closeTo(40, 9)]);
});

test('a wired edge with neither wire nor allowance is refused', () => {
  const bare = { bottom: { length: 200, width: 120 }, depth: 40, flare: 15, edge: { type: 'wire' } };
  expect(() => plan(bare)).toThrow(/edge: a wired edge without a wire. Give diameter, or allowance/);
});
