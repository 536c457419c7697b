import { type Convex, meet, turned } from '../../sweep/polygon.js';
import { shifted } from '../../sweep/shift.js';
import type { TreeBend } from '../part/fold-tree.js';
import type { LineStroke, Work } from '../part/operations.js';

/** Mm the free sheet may reach back over the line. */
const EDGE = 0.5;

const MOMENTS = 24; // of a stroke looked at

/** Radians the free side turns through, and how far it still slides out at a moment of that, mm along itself. */
export interface Swing {
  readonly turn: number;
  readonly slide: (at: number) => number;
}

/** How far the free side still slides out, mm along itself, from a moment of its turn to the end. */
export function slideOf({ tree }: Work, { panels }: LineStroke, turn: number): (at: number) => number {
  const { bend } = tree.panels[panels[0] as number] as { readonly bend: TreeBend };
  const { insideRadius, allowance } = bend;
  const slid = (at: number) =>
    2 * Math.tan(at / 2) * (insideRadius + tree.thickness) - (allowance * at) / turn;
  return (at) => slid(turn) - slid(at);
}

/**
 * How far back flat sheet on the free side may reach, mm from where the outer faces meet in the end: it slides out as it
 * turns, so that what lies level there at the end has dug into the edge before.
 */
export function backOf(slide: (at: number) => number, turn: number): number {
  const rooms = Array.from({ length: MOMENTS }, (_, i) => {
    const at = (turn * (i + 1)) / MOMENTS;
    return slide(at) - EDGE / Math.sin(at);
  });
  return Math.max(-EDGE, ...rooms);
}

const EARLY = [0, 0.25, 0.5, 0.75]; // of a turn

/** True for what is on the free side and meets a jaw before it has slid out. */
export const meetsEarly = (
  section: Convex,
  jaw: Convex,
  slide: (at: number) => number,
  turn: number,
): boolean =>
  EARLY.some((share) => {
    const still = slide(share * turn) - EDGE;
    return still > 0 && meet(turned(shifted(section, -still, 0), share * turn), jaw);
  });
