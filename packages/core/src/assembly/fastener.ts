import type { Vec3 } from '../fold/draft/space.js';
import type { Loop } from '../plane/loop.js';
import type { Point } from '../plane/point.js';
import { cutPose } from './as-cut.js';
import { type Overlap, onFace, type StandingFace, seenOn } from './overlap.js';
import type { Seated } from './types.js';

/** One fastener: where it stands in the assembly, and its place on the panels it goes through. mm */
export interface Fastener {
  readonly joint: string;
  readonly kind: string;
  readonly at: Vec3;
  readonly on: readonly FastenerEnd[];
}

/** A fastener's place on one panel, in the panel's frame as its pattern has it. */
export interface FastenerEnd {
  readonly piece: string;
  readonly panel: string;
  readonly at: Point;
  /** Diameter of the hole it goes through; null where none is cut. */
  readonly hole: number | null;
  /** What is cut there in place of a round hole, in the panel's frame. */
  readonly opening?: Loop;
}

/** Two holes may miss each other by so much, mm; common practice, no source. */
export const MEET = 0.1;

/** Places nearer than this are one place, mm. */
export const SAME_PLACE = 0.01;

/** The fastener at a point of an overlap, in the first panel's frame. */
export function fastenerAt(
  { joint }: Pick<Seated, 'joint'>,
  overlap: Overlap,
  p: Point,
  holes: readonly (number | null)[],
): Fastener {
  const at = onFace(overlap.from, p);
  const end = (face: StandingFace, i: number): FastenerEnd => ({
    piece: face.placed.piece,
    panel: face.panel.id,
    at: seenOn({ pose: cutPose(face.placed, face.panel.id) }, at),
    hole: holes[i] ?? null,
  });
  return {
    joint: joint.name,
    kind: joint.by?.kind.name ?? '',
    at,
    on: [end(overlap.from, 0), end(overlap.to, 1)],
  };
}
