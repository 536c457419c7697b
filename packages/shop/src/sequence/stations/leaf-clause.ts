import { contactAngle } from '../../sweep/contact.js';
import { meet } from '../../sweep/polygon.js';
import { shifted } from '../../sweep/shift.js';
import { EDGE, type LeafTools } from '../../tools/leaf-tools.js';
import type { LineSection } from '../part/line-stands.js';
import type { Clause } from './bench.js';
import { widened } from './stretches.js';

/** Parts of a leaf brake that stop a stroke. */
export type LeafTool = 'leaf' | 'bed' | 'beam';

type LeafClause = Clause<LeafTool>;

const FREE: LeafClause = { stops: null, takes: null };

/** How far the leaf turns, radians: to the angle it is set to, and as far as has to be free. */
export interface LeafTurn {
  readonly set: number;
  readonly free: number;
}

/**
 * One convex solid in a stroke: as it stands in the machine before it, whether it turns with the leaf, and
 * whether it still lies in the plane of the sheet there.
 */
export function leafClause(
  { section: seen, y }: LineSection,
  moves: boolean,
  flat: boolean,
  tools: LeafTools,
  turns: LeafTurn,
  margin: number,
): LeafClause {
  const turn = turns.free;
  if (flat) {
    // the held sheet may not reach over the line, the free one not behind it
    if (!moves) return Math.max(...seen.map((p) => p[0])) > EDGE ? { stops: 'leaf', takes: null } : FREE;
    if (Math.min(...seen.map((p) => p[0])) < -EDGE) return { stops: 'bed', takes: null };
    if (contactAngle(seen, tools.beam, turn) <= turn) return { stops: 'beam', takes: null };
    // past the nose a wide sheet leans back against the fingers' uprights
    const upright = tools.finger.slice(1).some((f) => contactAngle(seen, f, turn) <= turn);
    return { stops: null, takes: upright ? widened(y, margin) : null };
  }
  const hits = moves
    ? {
        leaf: meet(seen, tools.leaf),
        bed: contactAngle(seen, tools.bed, turn) <= turn,
        beam: contactAngle(seen, tools.beam, turn) <= turn,
        finger: tools.finger.some((f) => contactAngle(seen, f, turn) <= turn),
      }
    : {
        leaf: contactAngle(tools.leafFace, seen, turns.set) <= turns.set,
        bed: meet(seen, tools.bed),
        beam: meet(seen, tools.beam),
        finger: tools.finger.some((f) => meet(seen, f)),
      };
  const stops = hits.leaf ? 'leaf' : hits.bed ? 'bed' : hits.beam ? 'beam' : null;
  return { stops, takes: hits.finger ? widened(y, margin) : null };
}

/** Clause of a solid while a hem is closed: the jaw comes straight down, nothing turns. @param shift of the line, mm */
export function closeClause(
  { section, y }: LineSection,
  shift: number,
  flat: boolean,
  tools: LeafTools,
  margin: number,
): LeafClause {
  if (flat) return FREE;
  const seen = shifted(section, shift, 0);
  const stops = meet(seen, tools.leaf)
    ? 'leaf'
    : meet(seen, tools.bed)
      ? 'bed'
      : meet(seen, tools.beam)
        ? 'beam'
        : null;
  const finger = tools.finger.some((f) => meet(seen, f));
  return { stops, takes: finger ? widened(y, margin) : null };
}
