import { din6935, kFactor, outsideSetback } from '@tinwright/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';

// A bent strip in coordinates: the first leg comes along x with its outside face on y = 0 and bends upwards
// round (0, R + T) from x = 0. Everything below is measured off points, not off setback formulas.

const DEGREE = Math.PI / 180;

/** Furthest point along x of the outer arc, walked in steps of 1/100 of the angle plus the 90° point. */
function outerReach(T: number, R: number, A: number): number {
  const steps = [...Array.from({ length: 101 }, (_, i) => (A * i) / 100), ...(A >= 90 ? [90] : [])];
  return Math.max(...steps.map((a) => (R + T) * Math.sin(a * DEGREE)));
}

/** x where the two outside faces would meet: from the end of the outer arc back along its tangent to y = 0. */
function apex(T: number, R: number, A: number): number {
  const [x, y] = [(R + T) * Math.sin(A * DEGREE), (R + T) * (1 - Math.cos(A * DEGREE))];
  return x - (y * Math.cos(A * DEGREE)) / Math.sin(A * DEGREE);
}

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const [thickness, radius] = [size(0.3, 6), size(0, 20)];

test('any bend up to 90°: the setback reaches to where the outside faces would meet', () => {
  fc.assert(
    fc.property(thickness, radius, size(5, 90), (T, R, A) => {
      expect(outsideSetback({ thickness: T, insideRadius: R, angle: A })).toBeCloseTo(apex(T, R, A), 9);
    }),
  );
});

test('any bend over 90°: the setback reaches to the outer tangent, the furthest the bend comes', () => {
  fc.assert(
    fc.property(thickness, radius, size(90.001, 180), (T, R, A) => {
      expect(outsideSetback({ thickness: T, insideRadius: R, angle: A })).toBeCloseTo(outerReach(T, R, A), 9);
    }),
  );
});

test.each([90.001, 120, 150, 180])(
  'legs of 30 and 20 flat, bent %d°: their extents less the deduction give the flat',
  (A) => {
    const [T, R, K] = [1.5, 2, 0.42];
    const [first, second] = [30, 20];
    // each leg's extent, measured along itself from its free edge to the furthest point of the bend
    const extents = first + second + 2 * outerReach(T, R, A);
    const { deduction } = kFactor(K).terms({ thickness: T, insideRadius: R, angle: A });
    const neutral = A * DEGREE * (R + K * T);
    expect(extents - deduction).toBeCloseTo(first + neutral + second, 9);
  },
);

test.each([20, 45, 60, 90])(
  'legs of 30 and 20 flat, bent %d°: mould line sizes less the deduction give the flat',
  (A) => {
    const [T, R, K] = [1.5, 2, 0.42];
    const [first, second] = [30, 20];
    const sizes = first + second + 2 * apex(T, R, A);
    const { deduction } = kFactor(K).terms({ thickness: T, insideRadius: R, angle: A });
    expect(sizes - deduction).toBeCloseTo(first + A * DEGREE * (R + K * T) + second, 9);
  },
);

// AC 43.13-1B table 4-7 p. 4-15, as printed: K = tan(A/2), cut off after four figures
test.each([
  [45, 0.4142],
  [60, 0.5773],
  [90, 1],
])('AC 43.13-1B setback chart at %d°: K %d, which is the setback at R + T = 1', (angle, K) => {
  const found = outsideSetback({ thickness: 0.25, insideRadius: 0.75, angle });
  expect(Math.floor(found * 1e4 + 1e-6) / 1e4).toBe(K);
});

test.each([
  [120, 1.732],
  [135, 2.414],
])(
  'AC 43.13-1B setback chart at %d°: K %d to the apex; ours stops at the outer tangent, K - 1 before it',
  (angle, K) => {
    const toApex = apex(0.25, 0.75, angle);
    expect(Math.abs(toApex - K)).toBeLessThan(0.0005);
    const short = toApex - outsideSetback({ thickness: 0.25, insideRadius: 0.75, angle });
    expect(Math.abs(short - (K - 1))).toBeLessThan(0.0005);
  },
);

// calculated from the same chart: T 0.051, R 0.125 in
test.each([
  [45, 0.0729, 4],
  [90, 0.176, 3],
])(
  '0.051 in sheet, radius 0.125 in, %d° (calculated from the chart): setback %d in',
  (angle, setback, digits) => {
    expect(outsideSetback({ thickness: 0.051, insideRadius: 0.125, angle })).toBeCloseTo(setback, digits);
  },
);

test('0.051 in sheet, radius 0.125 in, 135° (calculated from the chart): the apex lies 0.4249 in out', () => {
  expect(apex(0.051, 0.125, 135)).toBeCloseTo(0.4249, 4);
  expect(outsideSetback({ thickness: 0.051, insideRadius: 0.125, angle: 135 })).toBeCloseTo(0.176, 12);
});

test('both ways to measure meet at 90°: DIN 6935 has no step there', () => {
  const at = (angle: number) => din6935.terms({ thickness: 2, insideRadius: 4, angle }).deduction;
  expect(at(90 - 1e-7)).toBeCloseTo(at(90 + 1e-7), 6);
});
