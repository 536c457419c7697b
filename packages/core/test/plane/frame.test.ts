import type { Frame, Point } from '@tinwright/core';
import { distance, place } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compose } from '../../src/plane/frame.js';

const STAY: Frame = { origin: [0, 0], x: [1, 0], y: [0, 1] };

const near = (found: Point, expected: Point, digits = 9) => {
  expect(found[0]).toBeCloseTo(expected[0], digits);
  expect(found[1]).toBeCloseTo(expected[1], digits);
};

/** Turned by an angle; `side` -1 mirrors y. */
const turned = (origin: Point, angle: number, side: number): Frame => ({
  origin,
  x: [Math.cos(angle), Math.sin(angle)],
  y: [-Math.sin(angle) * side, Math.cos(angle) * side],
});

test('the frame that stays: every point keeps its place', () => {
  expect(place(STAY, [3, -7])).toEqual([3, -7]);
});

test('a quarter turn about (10, 20): (3, 1) comes to (9, 23)', () => {
  near(place({ origin: [10, 20], x: [0, 1], y: [-1, 0] }, [3, 1]), [9, 23]);
});

test('a mirrored frame: (3, 1) comes to (3, -1)', () => {
  near(place({ origin: [0, 0], x: [1, 0], y: [0, -1] }, [3, 1]), [3, -1]);
});

const coordinate = fc.double({ min: -500, max: 500, noNaN: true });
const point = fc.tuple(coordinate, coordinate);
const frame = fc
  .tuple(point, fc.double({ min: -7, max: 7, noNaN: true }), fc.constantFrom(1, -1))
  .map(([origin, angle, side]) => turned(origin, angle, side));

test('two frames composed, turned or mirrored: the same as the inner one, then the outer one', () => {
  fc.assert(
    fc.property(frame, frame, point, (outer, inner, p) => {
      near(place(compose(outer, inner), p), place(outer, place(inner, p)), 8);
    }),
  );
});

test('a frame composed with the one that stays: itself', () => {
  fc.assert(
    fc.property(frame, point, (f, p) => {
      near(place(compose(f, STAY), p), place(f, p));
      near(place(compose(STAY, f), p), place(f, p));
    }),
  );
});

test('a turned or mirrored frame: distances stay', () => {
  fc.assert(
    fc.property(frame, point, point, (f, p, q) => {
      expect(distance(place(f, p), place(f, q))).toBeCloseTo(distance(p, q), 8);
    }),
  );
});
