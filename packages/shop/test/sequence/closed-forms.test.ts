// The sweep against the closed forms of a leaf brake: sharp corners, no margin, by bisection. The forms are derived
// from the geometry of a rigid leaf and checked numerically before; foot 60, upright 35, nose 45°.
import { type Point, radians } from '@tinwright/core';
import { expect, test } from 'vitest';
import { contactAngle } from '../../src/sweep/contact.js';
import { overlap, rectangle } from '../../src/sweep/polygon.js';
import { leafTools } from '../../src/tools/leaf-tools.js';
import { BRAKE } from '../shops.js';

const T = 1;
const S = 1.5; // set-back at R = 0.5
const tools = leafTools(BRAKE, T, 0.5, 0);

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

test.each([
  [1, 90],
  [1.5, 112.6],
  [2, 126.9],
  [2.5, 135],
])('set-back of %d thicknesses bends through %d degrees at most', (times, most) => {
  // 2·atan(s/T), or the stop of the leaf at 135
  expect(leafTools(BRAKE, T, times * T - T, 0).most).toBeCloseTo(most, 1);
});

test('the set-back for an inside radius is R + T, within the range of the machine', () => {
  expect(leafTools(BRAKE, 1, 1, 0).setBack).toBe(2);
  expect(leafTools(BRAKE, 1, 0, 0).setBack).toBe(1);
  expect(leafTools(BRAKE, 1, 5, 0).setBack).toBe(2.5);
});
