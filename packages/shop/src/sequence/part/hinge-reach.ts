import { radians } from '@tinwright/core/internal';
import { type FoldTree, foldedTurn, type TreeBend } from './fold-tree.js';
import type { Action } from './operations.js';

/** How far in front of each tangent line of a bend the hinge of a leaf lies while it is made, mm. */
export interface HingeReach {
  readonly held: number;
  readonly free: number;
}

const MOST = 160; // degrees; past it outer faces meet far away, and no machine bends so far but a hem

/**
 * From a tangent line to where the outer faces of both sides meet, mm: tan(A/2) (R + T) at any angle. Legs over 90° are
 * measured to the outer tangent instead, R + T from it. @param bend outside setback, mm; angle, degrees, signed
 */
export function outerMeet({ angle, outside }: Pick<TreeBend, 'angle' | 'outside'>): number {
  const through = Math.abs(angle);
  return through > 90 ? outside * Math.tan(radians(Math.min(through, MOST)) / 2) : outside;
}

/**
 * Both sides of a bend as they lie at the hinge when it is made. A hem is folded with its line under the nose, a set-back
 * behind the hinge; what of its metal the fold does not take up lies flat on the free side until it is closed.
 */
export function hingeReach(tree: FoldTree, bend: TreeBend, action: Action): HingeReach {
  if (action === 'close') return { held: 0, free: 2 * bend.outside };
  if (action !== 'fold') return { held: outerMeet(bend), free: outerMeet(bend) };
  const { turn, left } = foldedTurn(tree, bend);
  const both = 2 * (turn.insideRadius + tree.thickness) * Math.tan(radians(Math.abs(turn.angle)) / 2) + left;
  const held = tree.fold.setBack ?? (both - left) / 2;
  return { held, free: both - held };
}
