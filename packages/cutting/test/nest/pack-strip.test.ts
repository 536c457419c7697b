import type { Point } from '@tinwright/core';
import { movesBudget, packStrip, type StripPart } from '@tinwright/cutting/internal';
import Module from 'manifold-3d';
import { expect, test } from 'vitest';

/** Pieces that fill 60 × 40 without a gap, cut from it by two slanted lines and a notch. */
const PUZZLE: readonly StripPart[] = [
  {
    polygon: [
      [0, 0],
      [20, 0],
      [30, 40],
      [0, 40],
    ],
    turns: [0, 180],
    quantity: 1,
  },
  {
    polygon: [
      [20, 0],
      [60, 0],
      [60, 10],
      [50, 10],
      [50, 20],
      [60, 20],
      [60, 40],
      [30, 40],
    ],
    turns: [0, 90, 180, 270],
    quantity: 1,
  },
  {
    polygon: [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ],
    turns: [0],
    quantity: 1,
  },
];

const packed = (seed: number, moves: number) =>
  packStrip(PUZZLE, 40, { seed, spend: movesBudget(moves), better: () => {} });

test('pieces of a puzzle go back together, the square in a notch as wide as itself', async () => {
  const strip = packed(1, 3000);
  expect(strip.length).toBeLessThan(60.001);
  const library = await Module();
  library.setup();
  const polygons = strip.pieces.map(
    (p) => new library.CrossSection([p.polygon.map(([x, y]: Point): [number, number] => [x, y])]),
  );
  const shared = polygons.flatMap((a, i) => polygons.slice(i + 1).map((b) => a.intersect(b).area()));
  expect(Math.max(...shared)).toBeLessThan(0.005);
  for (const { polygon } of strip.pieces)
    for (const [x, y] of polygon) {
      expect(Math.min(x, y)).toBeGreaterThan(-1e-4);
      expect(y).toBeLessThan(40 + 1e-4);
      expect(x).toBeLessThan(strip.length + 1e-4);
    }
});

test('the same seed and moves give the same strip, another seed another way', () => {
  expect(packed(3, 400)).toEqual(packed(3, 400));
});
