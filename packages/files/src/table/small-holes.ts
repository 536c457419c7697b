import type { FlatPattern, Loop, Point } from '@tinwright/core';
import { arcOf } from '@tinwright/core/internal';

/** A pattern without its small holes, and where those are. */
export interface Punched {
  readonly flat: FlatPattern;
  readonly punched: readonly Point[];
}

/** Round holes of less than a diameter become places for a centre punch. @param leastHole mm; 0 for none */
export function withoutSmallHoles(flat: FlatPattern, leastHole: number): Punched {
  const small = (h: Loop) => diameterOf(h) < leastHole;
  const holes = flat.holes.filter((h) => !small(h));
  if (holes.length === flat.holes.length) return { flat, punched: [] };
  return { flat: { ...flat, holes }, punched: flat.holes.filter(small).map(centreOf) };
}

/** Diameter of a round hole, mm; Infinity of any other. */
function diameterOf(loop: Loop): number {
  const [a, b] = loop;
  if (loop.length !== 2 || a === undefined || b === undefined) return Infinity;
  return 2 * arcOf({ from: a.at, to: b.at, bulge: a.bulge }).radius;
}

function centreOf(loop: Loop): Point {
  const [a, b] = loop as readonly [Loop[number], Loop[number]];
  return arcOf({ from: a.at, to: b.at, bulge: a.bulge }).centre;
}
