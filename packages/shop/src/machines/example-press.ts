import type { Point } from '@tinwright/core';
import { frozen } from '@tinwright/core/internal';
import type { Die, Press, Punch } from './shop.js';

const HEIGHT = 100; // of a punch, point to holder
const SLOPE = Math.tan((42.5 * Math.PI) / 180); // of the sides of an 85° point

const rounded = (v: number) => Math.round(v * 100) / 100;

const punch = (name: string, section: readonly Point[]): Punch => ({
  name,
  angle: 85,
  radius: 0.8,
  lengths: [10, 15, 20, 40, 50, 100, 200, 300],
  section,
});

/** A V block with an opening, `half` wide to either side of the line. */
function die(opening: number, half: number): Die {
  const v = opening / 2;
  return {
    name: `V ${opening}`,
    opening,
    angle: 85,
    sectioned: true,
    section: [
      [-half, 0],
      [-v, 0],
      [0, rounded(-v / SLOPE)],
      [v, 0],
      [half, 0],
      [half, -60],
      [-half, -60],
    ],
  };
}

/** A small press brake, invented: what its sections look like, and a pattern to draw one's own by. mm, kN */
export const EXAMPLE_PRESS: Press = frozen({
  name: 'press brake',
  length: 1000,
  force: 250,
  punches: [
    punch('straight', [
      [0, 0],
      [6, rounded(6 / SLOPE)],
      [6, HEIGHT],
      [-6, HEIGHT],
      [-6, rounded(6 / SLOPE)],
    ]),
    punch('gooseneck', [
      [0, 0],
      [4, rounded(4 / SLOPE)],
      [-8, 22],
      [-8, 70],
      [6, 84],
      [6, HEIGHT],
      [-30, HEIGHT],
      [-30, 40],
      [-18, rounded(18 / SLOPE)],
    ]),
  ],
  dies: [die(6, 8), die(8, 10), die(12, 13), die(16, 16)],
  ram: { half: 30, height: 150 },
  backGauge: { least: 8, most: 600 },
  gaps: { end: 5, inner: 2 },
  overbend: 3,
});
