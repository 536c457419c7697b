import { compose3, dot3, type Pose, place3, scale3, sub3, type Vec3 } from '../fold/draft/space.js';
import type { Face } from '../fold/draft/tree.js';
import type { FormedPanel } from '../fold/formed/formed.js';
import { convexPieces, intersectConvex, polygonArea } from '../plane/convex.js';
import type { Point } from '../plane/point.js';
import { WIDEST_GAP } from './place.js';
import type { Placed, Seated } from './types.js';

/** A panel's face where it stands. */
export interface StandingFace {
  readonly placed: Placed;
  readonly panel: FormedPanel;
  readonly face: Face;
  /** Pose of the panel in the assembly. */
  readonly pose: Pose;
}

/** Two faces that lie against each other, and where: a convex polygon in the first panel's own frame. mm */
export interface Overlap {
  readonly from: StandingFace;
  readonly to: StandingFace;
  readonly shape: readonly Point[];
  readonly gap: number;
}

const LEAST_AREA = 1; // mm²
const TILT = 1e-3;

/** Overlaps of a joint: every face of the one site with every face of the other it lies against. */
export function overlapsOf({ from, to, sites }: Seated): readonly Overlap[] {
  const [a, b] = [facesOf(from, sites[0].faces), facesOf(to, sites[1].faces)];
  const others = (f: StandingFace) => (from === to ? b.filter((g) => g.panel.id !== f.panel.id) : b);
  const found: Overlap[] = [];
  for (const f of a)
    for (const g of others(f)) {
      const there = overlap(f, g);
      if (there !== null) found.push(there);
    }
  return found;
}

function facesOf(placed: Placed, faces: Seated['sites'][0]['faces']): readonly StandingFace[] {
  return faces.flatMap(({ panel: id, face }) => {
    const panel = placed.part.formed.panels.find((p) => p.id === id);
    return panel === undefined ? [] : [{ placed, panel, face, pose: compose3(placed.pose, panel.pose) }];
  });
}

function overlap(from: StandingFace, to: StandingFace): Overlap | null {
  const normal = outward(from);
  if (dot3(normal, outward(to)) > -1 + TILT) return null;
  const gap = dot3(normal, sub3(onFace(to, [0, 0]), onFace(from, [0, 0])));
  if (gap < -0.05 || gap > WIDEST_GAP + 1e-6) return null;
  const seen = (p: Point) => seenOn(from, onFace(to, p));
  // faces look at each other, so the second outline runs the other way round
  const pieces = convexPieces(to.panel.shape).map((piece) => counterClockwise(piece.map(seen)));
  let largest: readonly Point[] = [];
  for (const own of convexPieces(from.panel.shape))
    for (const other of pieces) {
      const shape = intersectConvex(own, other);
      if (polygonArea(shape) > polygonArea(largest)) largest = shape;
    }
  return polygonArea(largest) < LEAST_AREA ? null : { from, to, shape: largest, gap: Math.max(0, gap) };
}

export function outward({ pose, face }: StandingFace): Vec3 {
  return face === 'marked' ? pose.z : scale3(pose.z, -1);
}

/** A point of the panel's frame on its face, in the assembly. */
export function onFace({ pose, face, placed }: StandingFace, [x, y]: Point): Vec3 {
  return place3(pose, [x, y, face === 'marked' ? placed.part.formed.thickness : 0]);
}

/** A point in space, straight down on a panel, in its frame. */
export function seenOn({ pose }: Pick<StandingFace, 'pose'>, at: Vec3): Point {
  const d = sub3(at, pose.origin);
  return [dot3(d, pose.x), dot3(d, pose.y)];
}

const counterClockwise = (shape: readonly Point[]) => (polygonArea(shape) < 0 ? shape.toReversed() : shape);
