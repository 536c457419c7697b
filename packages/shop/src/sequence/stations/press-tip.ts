import type { Point } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import { type FoldTree, foldedTurn, type TreeBend } from '../part/fold-tree.js';
import type { LineFrame } from '../part/line.js';

/** Where the point of the punch lies: behind the hinge as either side sees it, and over the inner faces of the legs. mm */
export interface Tip {
  readonly held: number;
  readonly free: number;
  readonly over: number;
}

export const AT_LINE: Tip = { held: 0, free: 0, over: 0 };

/**
 * Up to square the point lies where the inner faces meet; past it that corner is far off, and the point lies in the round
 * of the bend: R sin(A/2) in front of the tangent lines, R (1 − cos(A/2)) over the faces.
 * @param through degrees
 */
export function tipOf(
  tree: FoldTree,
  { reach }: Pick<LineFrame, 'reach'>,
  bend: TreeBend,
  action: 'bend' | 'fold' | 'roll',
  through: number,
): Tip {
  const half = radians(through) / 2;
  if (through <= 90) {
    const corner = tree.thickness * Math.tan(half);
    return { held: corner, free: corner, over: 0 };
  }
  const folded = action === 'fold' ? foldedTurn(tree, bend) : null;
  const radius = folded?.turn.insideRadius ?? bend.insideRadius;
  const round = radius * Math.sin(half);
  return {
    held: reach.held - round,
    free: reach.free - (folded?.left ?? 0) - round,
    over: radius * (1 - Math.cos(half)),
  };
}

/** Section of a solid as seen from the punch's point; the held side mirrored, so that both sides rise the same way. */
export function seenFromTip(
  section: readonly Point[],
  moves: boolean,
  { held, free, over }: Tip,
  thickness: number,
): readonly Point[] {
  const seen = section.map(([x, z]): Point => [moves ? x - free : -x - held, z - thickness - over]);
  // mirrored it runs the other way round
  return moves ? seen : seen.toReversed();
}
