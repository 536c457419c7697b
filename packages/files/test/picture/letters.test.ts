import type { Point } from '@tinwright/core';
import type { Shape } from '@tinwright/files';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Lettered, letters } from '../../src/picture/letters.js';

const BOX = { min: [0, 0], max: [150, 90] } as const;

type Line = Extract<Shape, { kind: 'line' }>;
const leadersOf = (things: readonly Lettered[]) => letters(things, BOX).leaders as readonly Line[];

/** Where two segments meet inside both, by solving for it; null when they run parallel. */
function meet(a: Line, b: Line): readonly [number, number] | null {
  const [ux, uy] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
  const [vx, vy] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
  const det = ux * vy - uy * vx;
  if (Math.abs(det) < 1e-12) return null;
  const [wx, wy] = [b.from[0] - a.from[0], b.from[1] - a.from[1]];
  return [(wx * vy - wy * vx) / det, (wx * uy - wy * ux) / det];
}

const anchors = fc.array(
  fc
    .tuple(fc.integer({ min: 0, max: 1500 }), fc.integer({ min: 0, max: 900 }))
    .map(([x, y]): Point => [x / 10, y / 10]),
  { minLength: 1, maxLength: 30 },
);

const lettered = (list: readonly Point[]) => list.map((anchor, i): Lettered => ({ letter: `L${i}`, anchor }));

describe('leader lines', () => {
  test('no two cross, wherever the pieces lie', () => {
    fc.assert(
      fc.property(anchors, (list) => {
        const leaders = leadersOf(lettered(list));
        for (const [i, a] of leaders.entries())
          for (const b of leaders.slice(i + 1)) {
            const [s, t] = meet(a, b) ?? [-1, -1];
            expect(s > 1e-9 && s < 1 - 1e-9 && t > 1e-9 && t < 1 - 1e-9).toBe(false);
          }
      }),
    );
  });

  test('each starts at its piece and ends outside the picture, at a place of its own', () => {
    fc.assert(
      fc.property(anchors, (list) => {
        const leaders = leadersOf(lettered(list));
        expect(leaders.map((l) => l.from)).toEqual(list);
        for (const { to } of leaders) expect(to[0] < BOX.min[0] || to[0] > BOX.max[0]).toBe(true);
        const ends = new Set(leaders.map((l) => l.to.join(' ')));
        expect(ends.size).toBe(list.length);
      }),
    );
  });

  test('two pieces above each other at one side: the upper one has the upper letter', () => {
    const leaders = leadersOf(
      lettered([
        [10, 80],
        [11, 20],
        [140, 20],
        [139, 80],
      ]),
    );
    const ends = leaders.map((l) => l.to);
    expect(ends[0]?.[1]).toBeGreaterThan(ends[1]?.[1] ?? Number.NaN);
    expect(ends[3]?.[1]).toBeGreaterThan(ends[2]?.[1] ?? Number.NaN);
    expect(ends.map((p) => p[0] < 75)).toEqual([true, true, false, false]);
  });
});

test('letters stand past the ends of their leaders, away from the picture', () => {
  const { leaders, texts } = letters(
    lettered([
      [10, 20],
      [140, 30],
    ]),
    BOX,
  );
  for (const [i, text] of texts.entries()) {
    const end = (leaders[i] as Line).to;
    if (text.kind !== 'text') throw new Error(text.kind);
    expect(text.text).toBe(`L${i}`);
    expect(Math.abs(text.at[0] - 75)).toBeGreaterThan(Math.abs(end[0] - 75));
  }
});
