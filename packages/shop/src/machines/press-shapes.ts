import type { Point } from '@tinwright/core';
import type { Die, Punch } from './shop.js';

// Sections of press tools, invented: usual shapes, no maker's. mm, degrees

const HEIGHT = 100; // of a punch, point to holder
const HALF = 6; // of its body

/** Lengths a set of tools comes in. mm */
export const TOOL_LENGTHS: readonly number[] = [10, 15, 20, 40, 50, 100, 200, 300];

const rounded = (v: number) => Math.round(v * 100) / 100;

/** mm along a flank for each mm across, of a V or a point. @param angle included */
const slope = (angle: number): number => Math.tan((angle * Math.PI) / 360);

const punch = (name: string, angle: number, section: readonly Point[]): Punch => ({
  name,
  angle,
  radius: 0.8,
  lengths: TOOL_LENGTHS,
  horns: null,
  section,
});

/** A punch alike on both sides. */
export function straightPunch(name: string, angle: number): Punch {
  const rise = rounded(HALF / slope(angle));
  return punch(name, angle, [
    [0, 0],
    [HALF, rise],
    [HALF, HEIGHT],
    [-HALF, HEIGHT],
    [-HALF, rise],
  ]);
}

const BEHIND = 22; // mm of a gooseneck behind its hollow

/** A punch that leaves room over the sheet on one side. @param hollow how far that goes back behind the point */
export function gooseneck(name: string, hollow: number): Punch {
  const flank = (x: number) => rounded(x / slope(85));
  const [back, neck] = [hollow + BEHIND, hollow + 10];
  return punch(name, 85, [
    [0, 0],
    [4, flank(4)],
    [-hollow, 14 + hollow],
    [-hollow, 70],
    [6, 84],
    [6, HEIGHT],
    [-back, HEIGHT],
    [-back, Math.max(40, flank(back))],
    [-neck, flank(neck)],
  ]);
}

/** A block with a V, `half` wide to either side of the line. */
export function vDie(name: string, opening: number, angle: number, half: number): Die {
  const v = opening / 2;
  return {
    name,
    opening,
    angle,
    sectioned: true,
    section: [
      [-half, 0],
      [-v, 0],
      [0, rounded(-v / slope(angle))],
      [v, 0],
      [half, 0],
      [half, -60],
      [-half, -60],
    ],
  };
}
