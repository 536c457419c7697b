import type { FlatPattern, Loop, Point } from '@tinwright/core';
import { leastEdges, roundOf } from '@tinwright/core/internal';
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
  const small = (h: Loop) => smallRound(h, leastHole);
  const punched = flat.holes.flatMap((h) => small(h) ?? []);
  const outline = leastEdge > 0 ? leastEdges(flat.outline, leastEdge) : flat.outline;
  if (punched.length === 0 && outline === flat.outline) return { flat, punched };
  return { flat: { ...flat, outline, holes: flat.holes.filter((h) => small(h) === null) }, punched };
}

/** The middle of a round hole whose diameter is under `least`, mm; null for any other. */
function smallRound(hole: Loop, least: number): readonly [Point] | null {
  const round = roundOf(hole);
  return round === null || 2 * round.radius >= least ? null : [round.centre];
}
