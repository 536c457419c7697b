import { din6935 } from '@tinwright/core';
import { expect, test } from 'vitest';

const v = (r: number, s: number, angle: number) =>
  din6935.terms({ thickness: s, insideRadius: r, angle }).deduction;

// DIN 6935 supplement 2 and Tabellenbuch Metall print these to 0.1 mm; from memory
test.each([
  [1, 1, 1.9],
  [1.6, 1, 2.1],
  [2.5, 1, 2.4],
  [4, 2, 4.5],
  [6, 3, 6.7],
  [10, 1, 5.5],
])('DIN 6935 supplement 2 (from memory), r %d, s %d, 90°: v %d mm', (r, s, expected) => {
  expect(v(r, s, 90)).toBeCloseTo(expected, 1);
});

// v at 90°, mm, calculated from the standard's formula
const THICKNESSES = [0.6, 0.8, 1, 1.5, 2, 2.5, 3, 4, 5, 6];
const AT_90 = [
  [1, [1.27, 1.59, 1.92, 2.77, 3.64, 4.54, 5.46, 7.33, 9.25, 11.2]],
  [1.6, [1.48, 1.78, 2.1, 2.9, 3.74, 4.6, 5.48, 7.27, 9.11, 10.98]],
  [2.5, [1.82, 2.11, 2.41, 3.18, 3.98, 4.8, 5.63, 7.35, 9.11, 10.91]],
  [4, [2.45, 2.69, 2.97, 3.7, 4.46, 5.24, 6.04, 7.67, 9.35, 11.07]],
  [6, [3.3, 3.55, 3.79, 4.45, 5.18, 5.93, 6.69, 8.26, 9.87, 11.51]],
  [10, [5.02, 5.26, 5.51, 6.11, 6.72, 7.42, 8.14, 9.62, 11.15, 12.71]],
] as const;

test.each(AT_90.flatMap(([r, row]) => row.map((value, i) => [r, THICKNESSES[i] as number, value] as const)))(
  'DIN 6935 formula (calculated), r %d, s %d, 90°: v %d mm',
  (r, s, expected) => {
    expect(v(r, s, 90)).toBeCloseTo(expected, 2);
  },
);

// v by the opening angle β, mm, calculated from the standard's formulas
const BETAS = [30, 45, 60, 75, 90, 105, 120, 135, 150, 165];
const BY_ANGLE = [
  [1, 1, [0.531, 0.878, 1.225, 1.572, 1.919, 1.335, 0.922, 0.616, 0.378, 0.18]],
  [1.5, 1, [0.107, 0.596, 1.086, 1.575, 2.064, 1.39, 0.93, 0.603, 0.361, 0.169]],
  [2.5, 1.5, [-0.039, 0.765, 1.569, 2.373, 3.177, 2.119, 1.403, 0.902, 0.536, 0.249]],
  [6, 5, [1.779, 3.801, 5.823, 7.845, 9.867, 6.771, 4.613, 3.046, 1.851, 0.874]],
] as const;

test.each(
  BY_ANGLE.flatMap(([r, s, row]) => row.map((value, i) => [r, s, BETAS[i] as number, value] as const)),
)('DIN 6935 formula (calculated), r %d, s %d, β %d°: v %d mm', (r, s, beta, expected) => {
  expect(v(r, s, 180 - beta)).toBeCloseTo(expected, 3);
});
