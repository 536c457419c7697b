import { type Convex, meet } from '../../sweep/polygon.js';
import type { LineSolid, LumpStand, PartAtLine } from '../part/line-stands.js';
import type { Mask } from '../part/mask.js';
import { LEAST_EDGE, type PossibleEdge } from '../part/rear-edge.js';
import { type Interval, merged, widened } from './stretches.js';

const BESIDE = 1; // mm a stop is kept off what stands beside it; judgement

/** A stop as a body, and the part as it passes it. mm */
export interface StopBody {
  /** Along the line. */
  readonly width: number;
  /** Sections of it where it lies against an edge, in a frame of its own. */
  readonly against: (edge: PossibleEdge) => readonly Convex[];
  /** How far from the line a solid has to reach to come to it. */
  readonly reach: (edge: PossibleEdge) => number;
  /** Sections of a solid in that frame, at moments of the stroke. */
  readonly moments: (solid: LineSolid, moves: boolean) => readonly Convex[];
}

/** Where the middle of a stop can stand against an edge in a state, as near to the middle of the edge as may be: mm along the line; null for nowhere. */
export type StopRoom = (edge: PossibleEdge, done: Mask) => number | null;

/** Room for a stop along a line, held against all of a part. */
export function stopRoom({ lumps }: PartAtLine, body: StopBody): StopRoom {
  const known = new Map<PossibleEdge, WeakMap<LumpStand, readonly Interval[]>>();
  const blockedBy = (edge: PossibleEdge, stand: LumpStand): readonly Interval[] => {
    const own = known.get(edge) ?? new WeakMap<LumpStand, readonly Interval[]>();
    known.set(edge, own);
    const made = own.get(stand) ?? blocked(body, edge, stand);
    own.set(stand, made);
    return made;
  };
  return (edge, done) => {
    const taken = lumps.flatMap((l) => {
      const stand = l.at(done);
      return stand === null ? [] : blockedBy(edge, stand);
    });
    return placeOn(edge.along, taken, body.width);
  };
}

/** Stretches of the line where a lump is in the way of a stop at some moment. */
function blocked(body: StopBody, edge: PossibleEdge, { solids, moves }: LumpStand): readonly Interval[] {
  const least = body.reach(edge);
  const near = solids.filter((s) => s.reach[1] >= least);
  if (near.length === 0) return [];
  const stop = body.against(edge);
  return near.flatMap((s) =>
    body.moments(s, moves).some((now) => stop.some((piece) => meet(now, piece))) ? [s.y] : [],
  );
}

/** The place next to the middle of an edge at which a stop touches enough of it and nothing stands in its way. */
function placeOn([from, to]: Interval, taken: readonly Interval[], width: number): number | null {
  const half = width / 2;
  const [first, last] = [from + LEAST_EDGE - half, to - LEAST_EDGE + half];
  const middle = (from + to) / 2;
  const closed = merged(taken.map((t) => widened(t, half + BESIDE)));
  const isOpen = (y: number) => !closed.some(([a, b]) => y > a + 1e-9 && y < b - 1e-9);
  const places = [middle, ...closed.flat()].filter((y) => y >= first && y <= last && isOpen(y));
  return places.toSorted((a, b) => Math.abs(a - middle) - Math.abs(b - middle) || a - b)[0] ?? null;
}
