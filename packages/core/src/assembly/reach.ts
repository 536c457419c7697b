import { compose3, cross3, dot3, place3, sub3, unit3, type Vec3 } from '../fold/draft/space.js';
import { clipPolygon, convexPieces } from '../plane/convex.js';
import { dot, type Point } from '../plane/point.js';
import type { Placed } from './types.js';

const DIRECTIONS = 16;
const ARM = 15; // mm, half the width of a tool's arm; common practice, no source

/**
 * How far arms along the faces of two pieces reach to a point of them: the least way out, over sixteen directions in
 * the plane of the face, until both pieces end on the arms' way. mm
 */
export function reachTo(at: Vec3, normal: Vec3, pieces: readonly Placed[]): number {
  const x = unit3(cross3(normal, Math.abs(normal[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0]));
  const y = cross3(normal, x);
  const seen = (p: Vec3): Point => {
    const d = sub3(p, at);
    return [dot3(d, x), dot3(d, y)];
  };
  const shapes = pieces.flatMap(({ part, pose }) =>
    part.formed.panels.flatMap((panel) => {
      const stand = compose3(pose, panel.pose);
      return convexPieces(panel.shape).map((shape) => shape.map((p) => seen(place3(stand, [...p, 0]))));
    }),
  );
  const ways = Array.from({ length: DIRECTIONS }, (_, i): Point => {
    const turn = (2 * Math.PI * i) / DIRECTIONS;
    return [Math.cos(turn), Math.sin(turn)];
  });
  return Math.min(...ways.map((way) => endOf(shapes, way)));
}

/** Where what lies within an arm's width of a direction ends along it. mm */
function endOf(shapes: readonly (readonly Point[])[], way: Point): number {
  const across: Point = [-way[1], way[0]];
  const ends = shapes.flatMap((shape) => {
    const strip = clipPolygon(clipPolygon(shape, across, -ARM), [-across[0], -across[1]], -ARM);
    // a panel seen on its edge has no area to clip: its ends stand for it
    const left = strip.length > 0 ? strip : shape.filter((p) => Math.abs(dot(p, across)) <= ARM);
    return left.map((p) => dot(p, way));
  });
  return Math.max(0, ...ends);
}
