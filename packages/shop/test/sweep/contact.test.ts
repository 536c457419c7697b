import type { Point } from '@tinwright/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { contactAngle } from '../../src/sweep/contact.js';
import { grown, overlap, rectangle, turned } from '../../src/sweep/polygon.js';

test('a bar along the axis meets a post over the origin at a right angle less its half width', () => {
  // post from x = -1 to 1 over z = 20: the bar's upper edge at height 2 meets its corner (1, 20)
  const angle = contactAngle(rectangle(5, 0, 40, 2), rectangle(-1, 20, 1, 60), Math.PI);
  // the circle through (1, 20) cuts the upper edge of the bar at (sqrt(401 - 4), 2)
  const expected = Math.atan2(20, 1) - Math.atan2(2, Math.sqrt(401 - 4));
  expect(angle).toBeCloseTo(expected, 12);
});

test('what is never reached within the turn gives Infinity', () => {
  const post = rectangle(-1, 20, 1, 60);
  expect(contactAngle(rectangle(5, 0, 15, 2), post, Math.PI)).toBe(Infinity); // too short
  expect(contactAngle(rectangle(5, 0, 40, 2), post, 1)).toBe(Infinity); // stops before
});

test('polygons that meet at the start meet at angle 0', () => {
  expect(contactAngle(rectangle(0, 0, 10, 1), rectangle(5, -1, 6, 5), 1)).toBe(0);
});

/** Random convex polygons: the corners of an ellipse, moved off the origin. */
const convex = (near: number, far: number) =>
  fc
    .record({
      n: fc.integer({ min: 3, max: 7 }),
      a: fc.integer({ min: 2, max: 20 }),
      b: fc.integer({ min: 2, max: 20 }),
      at: fc.integer({ min: near, max: far }),
      turn: fc.integer({ min: 0, max: 359 }),
    })
    .map(({ n, a, b, at, turn }): readonly Point[] => {
      const t = (turn * Math.PI) / 180;
      return Array.from({ length: n }, (_, i): Point => {
        const phi = (2 * Math.PI * i) / n;
        return [at * Math.cos(t) + a * Math.cos(phi), at * Math.sin(t) + b * Math.sin(phi)];
      });
    });

test('random polygons: apart before the first contact, together right after it', () => {
  let met = 0;
  fc.assert(
    fc.property(convex(10, 60), convex(10, 60), (moving, fixed) => {
      const limit = Math.PI;
      const angle = contactAngle(moving, fixed, limit);
      if (angle === 0) {
        expect(overlap(moving, fixed)).toBeGreaterThan(-1e-6);
        return;
      }
      const until = Math.min(angle, limit);
      for (let k = 0; k < 60; k++)
        expect(overlap(turned(moving, (until * k) / 60), fixed)).toBeLessThan(1e-6);
      if (angle === Infinity) return;
      met += 1;
      expect(overlap(turned(moving, angle), fixed)).toBeCloseTo(0, 6);
    }),
    { numRuns: 400 },
  );
  expect(met).toBeGreaterThan(20);
});

test('a polygon grown by a margin keeps everything within it', () => {
  const shape = rectangle(-2, -1, 3, 1);
  const wide = grown(shape, 0.5);
  for (const [x, y] of shape)
    for (let k = 0; k < 16; k++) {
      const t = (Math.PI * k) / 8;
      const p: Point = [x + 0.5 * Math.cos(t), y + 0.5 * Math.sin(t)];
      expect(overlap([p, [p[0] + 1e-9, p[1]], [p[0], p[1] + 1e-9]], wide)).toBeGreaterThan(-1e-6);
    }
});
