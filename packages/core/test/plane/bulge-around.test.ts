import type { Point } from '@tinwright/core';
import { arcOf, bulgeAround } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

// the bulge is tan(sweep / 4): half circle tan 45° = 1, quarter tan 22.5° = √2 - 1, three quarters √2 + 1
test.each([
  ['half', [-1, 0], 1, -1],
  ['quarter', [0, 1], Math.SQRT2 - 1, -(Math.SQRT2 + 1)],
  ['three quarter', [0, -1], Math.SQRT2 + 1, -(Math.SQRT2 - 1)],
] as const)('a %s circle from east: the bulge of the way round, either way', (_name, to, ccw, cw) => {
  expect(bulgeAround([0, 0], [1, 0], to, 'ccw')).toBeCloseTo(ccw, 12);
  expect(bulgeAround([0, 0], [1, 0], to, 'cw')).toBeCloseTo(cw, 12);
});

test('the same point twice: no arc', () => {
  expect(Math.abs(bulgeAround([2, 3], [5, 7], [5, 7], 'ccw'))).toBe(0);
  expect(Math.abs(bulgeAround([2, 3], [5, 7], [5, 7], 'cw'))).toBe(0);
});

test('any arc: the circle of its bulge is the circle it was made from', () => {
  const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
  const sweep = fc.double({ min: 0.05, max: 6.2, noNaN: true });
  const radius = fc.double({ min: 0.1, max: 200, noNaN: true });
  const turn = fc.constantFrom('ccw' as const, 'cw' as const);
  fc.assert(
    fc.property(angle, sweep, radius, turn, (start, swept, r, way) => {
      const centre: Point = [12, -7];
      const sign = way === 'ccw' ? 1 : -1;
      const at = (a: number): Point => [centre[0] + r * Math.cos(a), centre[1] + r * Math.sin(a)];
      const [from, to] = [at(start), at(start + sign * swept)];
      const arc = arcOf({ from, to, bulge: bulgeAround(centre, from, to, way) });
      expect(arc.sweep).toBeCloseTo(sign * swept, 8);
      expect(arc.radius).toBeCloseTo(r, 7);
      expect(Math.hypot(arc.centre[0] - centre[0], arc.centre[1] - centre[1])).toBeLessThan(1e-7);
    }),
  );
});
