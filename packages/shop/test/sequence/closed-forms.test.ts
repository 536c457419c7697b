// The sweep against the closed forms of a leaf brake: sharp corners, no margin, by bisection. The forms are derived
// from the geometry of a rigid leaf and checked numerically before; foot 60, upright 35, nose 45°.
import type { Point } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { contactAngle } from '../../src/sweep/contact.js';
import { overlap, rectangle } from '../../src/sweep/polygon.js';
import { leafRadius, leafSetting } from '../../src/tools/leaf-setting.js';
import { leafTools } from '../../src/tools/leaf-tools.js';
import { BRAKE } from '../shops.js';

const T = 1;
const S = 1.5; // set-back at R = 0.5
const tools = leafTools(BRAKE, T, S, 0);

/** Greatest value for which something holds, between two. */
function edge(low: number, high: number, holds: (v: number) => boolean): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i++) {
    const m = (a + b) / 2;
    if (holds(m)) a = m;
    else b = m;
  }
  return a;
}

/** A return flange on the free side: wall of height H over the line, turned in by r at its end, bent to an angle. */
const returnClears = (H: number, r: number, through: number): boolean => {
  // before the stroke the wall lies along x, its return stands up at x = H
  const lip: readonly Point[] = rectangle(H - T, 0, H, r);
  return tools.finger.every((f) => contactAngle(lip, f, radians(through)) > radians(through));
};

test.each([10, 15, 20, 30])('a return on a wall of %d mm: r up to H + s - 2T at 90 degrees', (H) => {
  const most = edge(0, 60, (r) => returnClears(H, r, 90));
  expect(most).toBeCloseTo(Math.min(H + S - 2 * T, S + 35), 2);
});

test.each([
  [15, 13.1],
  [30, 26.6],
])('with 3 degrees of overbend a wall of %d mm takes %d mm', (H, r) => {
  const most = edge(0, 60, (v) => returnClears(H, v, 93));
  expect(most).toBeCloseTo(r, 1);
});

test('a U 20 wide with flanges of 18 goes at 90 degrees but not with 3 degrees of overbend: 17.6 at most', () => {
  expect(returnClears(20, 18, 90)).toBe(true);
  expect(returnClears(20, 18, 93)).toBe(false);
  expect(edge(0, 60, (r) => returnClears(20, r, 93))).toBeCloseTo(17.6, 1);
});

test('a flange that stands behind the fingers needs an inside web of s + foot', () => {
  const clears = (web: number) => {
    const flange = rectangle(-web - T, 0, -web, 30);
    return tools.finger.every((f) => overlap(flange, f) <= 0);
  };
  // least web, as the greatest that does not clear
  expect(edge(0, 200, (w) => !clears(w))).toBeCloseTo(S + 60, 6);
});

test('walls up to the clear height go under the beam', () => {
  const clears = (h: number) => overlap(rectangle(-80, 0, -79, h), tools.beam) <= 0;
  expect(edge(0, 200, clears)).toBeCloseTo(75 + T, 6);
});

const setting = (R: number, angle: number, setBack: readonly [number, number] = [1, 2.5]) =>
  leafSetting({ ...BRAKE, setBack }, T, R, { angle, set: angle });

test.each([
  [1, 90],
  [1.5, 112.6],
  [2, 126.9],
  [2.5, 135],
])('a set-back of %d thicknesses bends through %d degrees at most', (times, most) => {
  // 2·atan(s/T), or the stop of the leaf at 135
  expect(setting(0, 135, [times, times]).most).toBeCloseTo(most, 1);
});

test.each([
  [1, 90, 2],
  [0, 90, 1],
  [5, 90, 2.5],
  [1, 45, 1],
  [2, 60, Math.sqrt(3)],
  [0.3, 120, 1.3 * Math.sqrt(3)],
  [0, 120, Math.sqrt(3)],
])(
  'an inside radius of %d at %d degrees: s = (R + T) tan(A/2), within the range of the machine',
  (R, angle, s) => {
    expect(setting(R, angle).setBack).toBeCloseTo(s, 9);
  },
);

test('within the range the leaf makes the radius that was asked', () => {
  for (const [R, angle] of [
    [1, 90],
    [0.3, 110],
    [2, 70],
  ] as const)
    expect(leafRadius(setting(R, angle).setBack, T, angle)).toBeCloseTo(R, 9);
});
