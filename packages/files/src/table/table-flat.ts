import type { FlatPattern, Loop, Point } from '@tinwright/core';
import { arcOf, leastEdges } from '@tinwright/core/internal';
import type { TableStyle } from './style.js';

/** A pattern as a table cuts it, and where holes are only punched. */
export interface TableFlat {
  readonly flat: FlatPattern;
  readonly punched: readonly Point[];
}

/** The pattern as a style wants it: small round holes as places for a centre punch, no short edges where that can be. */
export function tableFlat(
  flat: FlatPattern,
  { leastHole, leastEdge }: Pick<TableStyle, 'leastHole' | 'leastEdge'>,
): TableFlat {
  const small = (h: Loop) => diameterOf(h) < leastHole;
  const punched = flat.holes.filter(small).map(centreOf);
  const outline = leastEdge > 0 ? leastEdges(flat.outline, leastEdge) : flat.outline;
  if (punched.length === 0 && outline === flat.outline) return { flat, punched };
  return { flat: { ...flat, outline, holes: flat.holes.filter((h) => !small(h)) }, punched };
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
