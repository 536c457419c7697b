import type { Vec3 } from '../fold/space.js';
import { add, type Point, scale } from '../plane/point.js';
import { type Overlap, onFace, type StandingFace, seenOn } from './overlap.js';
import type { Seated } from './types.js';

/** One fastener: where it stands in the assembly, and its place on the panels it goes through. mm */
export interface Fastener {
  readonly joint: string;
  readonly kind: string;
  readonly at: Vec3;
  readonly on: readonly FastenerEnd[];
}

/** A fastener's place on one panel, in the panel's frame. */
export interface FastenerEnd {
  readonly piece: string;
  readonly panel: string;
  readonly at: Point;
  /** Diameter of the hole it goes through; null where there is none. */
  readonly hole: number | null;
  /** A point of metal beside the hole; the place itself where there is no hole. */
  readonly beside: Point;
}

const BESIDE = 0.5; // mm of metal between a hole and the point that stands for it

/** The fastener at a point of an overlap, in the first panel's frame; `along` points to metal beside its hole. */
export function fastenerAt(
  { joint }: Pick<Seated, 'joint'>,
  overlap: Overlap,
  p: Point,
  along: Point,
  holes: readonly (number | null)[],
): Fastener {
  const at = onFace(overlap.from, p);
  const largest = Math.max(0, ...holes.map((h) => h ?? 0));
  const aside = onFace(overlap.from, largest === 0 ? p : add(p, scale(along, largest / 2 + BESIDE)));
  const end = (face: StandingFace, i: number): FastenerEnd => ({
    piece: face.placed.piece,
    panel: face.panel.id,
    at: seenOn(face, at),
    hole: holes[i] ?? null,
    beside: seenOn(face, aside),
  });
  return {
    joint: joint.name,
    kind: joint.by?.kind.name ?? '',
    at,
    on: [end(overlap.from, 0), end(overlap.to, 1)],
  };
}
