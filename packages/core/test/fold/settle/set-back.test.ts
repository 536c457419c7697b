import type { Point } from '@tinwright/core';
import type { Outline } from '@tinwright/core/family';
import { polygon, rectangle } from '@tinwright/core/family';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inside } from '../../../src/fold/draft/outline.js';
import { setBack } from '../../../src/fold/settle/set-back.js';
import { problemsOf } from '../../carrier.js';

/** One edge moved in by so much. mm */
function back(outline: Outline, name: string, by: number): Outline {
  const i = outline.findIndex((e) => e.name === name);
  return setBack(outline, name, inside(outline, i, by));
}
const told = (outline: Outline) => outline.map(({ name, from: [x, y] }) => `${name} ${x} ${y}`);
const square = rectangle(40, 30);

test('an edge of a rectangle moved in by 4: its neighbours are shortened, the rest stays', () => {
  expect(told(back(square, 'south', 4)).toSorted()).toEqual(
    ['south 0 4', 'east 40 4', 'north 40 30', 'west 0 30'].toSorted(),
  );
});

test('slanted neighbours are followed: a trapezium 40 wide, 45° in at both ends, loses 4 at either', () => {
  const shape = polygon(
    [
      [0, 0],
      [40, 0],
      [30, 10],
      [10, 10],
    ],
    ['south', 'east', 'north', 'west'],
  );
  const corners = back(shape, 'south', 4).map((e) => e.from.map((v) => Math.round(v * 1e9) / 1e9).join());
  expect(corners.toSorted()).toEqual(['10,10', '30,10', '36,4', '4,4']);
});

// a 60 by 30 sheet with a bend on the middle third of its lower edge
const third = polygon(
  [
    [0, 0],
    [20, 0],
    [40, 0],
    [60, 0],
    [60, 30],
    [0, 30],
  ],
  ['left', 'bend', 'right', 'east', 'north', 'west'],
);

test('where the outline goes straight on, the edge steps in at right angles, and the steps are reliefs', () => {
  expect(told(back(third, 'bend', 3)).toSorted()).toEqual(
    [
      ...['left 0 0', 'relief 20 0', 'bend 20 3', 'relief 40 3', 'right 40 0'],
      ...['east 60 0', 'north 60 30', 'west 0 30'],
    ].toSorted(),
  );
});

test('where it turns outwards too', () => {
  const stepped = polygon(
    [
      [0, -5],
      [20, 0],
      [40, 0],
      [40, 30],
      [0, 30],
    ],
    ['skirt', 'bend', 'east', 'north', 'west'],
  );
  const moved = told(back(stepped, 'bend', 3));
  expect(moved).toContain('relief 20 0');
  expect(moved).toContain('bend 20 3');
  expect(moved).toContain('skirt 0 -5');
});

describe('nothing to do', () => {
  test('an edge there is none of', () => {
    expect(setBack(square, 'hem', { x: 0, y: 1, c: 5 })).toBe(square);
  });
  test('an edge that lies inside already', () => {
    expect(back(square, 'south', 0)).toBe(square);
    expect(back(square, 'south', -2)).toBe(square);
  });
});

test('moved in by all there is, or more: nothing stays', () => {
  expect(back(square, 'south', 30)).toEqual([]);
  expect(back(square, 'south', 50)).toEqual([]);
});

test('an outline that comes out past the edge again within the strip: refused by name', () => {
  const hook = polygon(
    [
      [0, 0],
      [40, 0],
      [40, 2],
      [42, 2],
      [42, -3],
      [60, -3],
      [60, 30],
      [0, 30],
    ],
    ['bend', 'e-1', 'e-2', 'e-3', 'e-4', 'east', 'north', 'west'],
  );
  const [found, ...more] = problemsOf(() => back(hook, 'bend', 4));
  expect(more).toEqual([]);
  expect(found).toMatchObject({ code: 'edge-overrun' });
  expect(found?.message).toContain('"bend"');
  // a strip no deeper than the little step is moved in
  expect(back(hook, 'bend', 1.5)).not.toEqual([]);
});

test('any convex outline: what stays is the part in the half plane, and the edge lies on its rim', () => {
  const corner = (turn: number, r: number): Point => [r * Math.cos(turn), r * Math.sin(turn)];
  const outlines = fc
    .uniqueArray(fc.integer({ min: 0, max: 71 }), { minLength: 4, maxLength: 9 })
    .map((steps) => {
      const turns = steps.toSorted((a, b) => a - b);
      return polygon(
        turns.map((s) => corner((s * Math.PI) / 36, 50)),
        turns.map((_, i) => `e-${i}`),
      );
    });
  fc.assert(
    fc.property(outlines, fc.integer({ min: 1, max: 40 }), (outline, by) => {
      const half = inside(outline, 0, by);
      const depth = ([x, y]: Point) => half.x * x + half.y * y - half.c;
      const moved = setBack(outline, 'e-0', half);
      for (const e of moved) expect(depth(e.from)).toBeGreaterThan(-1e-6);
      const kept = outline.filter((e) => depth(e.from) > 1e-6);
      expect(moved.length === 0).toBe(kept.length === 0);
      for (const e of kept) expect(moved.map((m) => m.from)).toContainEqual(e.from);
      const rim = moved.filter((e) => Math.abs(depth(e.from)) < 1e-6);
      if (moved.length > 0) expect(rim).toHaveLength(2);
    }),
  );
});
