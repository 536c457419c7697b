// The shortest way between lines and arcs against points taken closely all along both.
import type { Point, Segment } from '@tinwright/core';
import { closest, nearestOn } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const PARTS = 360;
/** Points along a line or an arc, from end to end. */
function along({ from, to, bulge }: Segment): readonly Point[] {
  const share = (k: number): Point => [from[0] + (to[0] - from[0]) * k, from[1] + (to[1] - from[1]) * k];
  if (bulge === 0) return Array.from({ length: PARTS + 1 }, (_, i) => share(i / PARTS));
  // the centre lies on the middle line of the chord, (1 − b²)/4b chords to its left
  const off = (1 - bulge ** 2) / (4 * bulge);
  const middle = share(0.5);
  const centre: Point = [middle[0] - off * (to[1] - from[1]), middle[1] + off * (to[0] - from[0])];
  const sweep = 4 * Math.atan(bulge);
  return Array.from({ length: PARTS + 1 }, (_, i): Point => {
    const [c, s] = [Math.cos((sweep * i) / PARTS), Math.sin((sweep * i) / PARTS)];
    const [u, v] = [from[0] - centre[0], from[1] - centre[1]];
    return [centre[0] + u * c - v * s, centre[1] + u * s + v * c];
  });
}
const apart = (p: Point, q: Point) => Math.hypot(p[0] - q[0], p[1] - q[1]);

const whole = fc.integer({ min: -10, max: 10 });
const point = fc.tuple(whole, whole);
const bulges = fc.constantFrom(0, 0, 0.2, -0.4, 1, -1, 2, -3);
const segment = fc
  .tuple(point, point, bulges)
  .filter(([a, b]) => apart(a, b) > 0)
  .map(([from, to, bulge]): Segment => ({ from, to, bulge }));

test('the nearest point of a line or an arc: on it, and none of it nearer', () => {
  fc.assert(
    fc.property(segment, point, (s, p) => {
      const found = nearestOn(s, p);
      const points = along(s);
      const least = Math.min(...points.map((q) => apart(p, q)));
      const step = Math.max(...points.slice(1).map((q, i) => apart(q, points[i] as Point)));
      expect(apart(p, found)).toBeLessThanOrEqual(least + 1e-9);
      expect(Math.min(...points.map((q) => apart(q, found)))).toBeLessThanOrEqual(step / 2 + 1e-9);
    }),
    { numRuns: 100 },
  );
});

test('the shortest way between two: its ends on each, as long as it says, and no pair of their points nearer', () => {
  fc.assert(
    fc.property(segment, segment, fc.integer({ min: 21, max: 40 }), (a, near, off) => {
      const b = {
        ...near,
        from: [near.from[0] + 2 * off, near.from[1]],
        to: [near.to[0] + 2 * off, near.to[1]],
      } as const;
      const [one, other] = [along(a), along(b)];
      const { distance, from, to } = closest(a, b);
      const least = Math.min(...one.filter((_, i) => i % 4 === 0).map((p) => apart(p, nearestOn(b, p))));
      expect(distance).toBeCloseTo(apart(from, to), 9);
      expect(distance).toBeLessThanOrEqual(least + 1e-9);
      expect(least - distance).toBeLessThan(1);
      for (const [points, end] of [
        [one, from],
        [other, to],
      ] as const) {
        const step = Math.max(...points.slice(1).map((q, i) => apart(q, points[i] as Point)));
        expect(Math.min(...points.map((q) => apart(q, end)))).toBeLessThanOrEqual(step / 2 + 1e-9);
      }
    }),
    { numRuns: 60 },
  );
});
