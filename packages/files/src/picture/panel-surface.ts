import type { FormedBend, FormedPanel, Point, Vec3 } from '@tinwright/core';
import { dot3, flattened, lazy, place3, type Standing, scale3, sub3, turn3 } from '@tinwright/core/internal';
import { pieces } from './pieces.js';
import { anew, type Facet, type Surface, type SurfaceLine } from './surface.js';

const HOLE_SIDES = 24;
const SAG = 0.05; // mm a chord may lie off a rounded opening
const ON = 1e-6; // mm

/** Both faces, edges and holes of a panel. Where a bend joins it there is no edge. */
export function panelSurface(formed: Standing, panel: FormedPanel): Surface {
  const T = panel.thickness ?? formed.thickness;
  const holes = openings(panel);
  const joints = formed.bends.flatMap((b) => jointOn(b, panel));
  const at = (p: Point, z: number) => place3(panel.pose, [p[0], p[1], z]);
  const z = panel.pose.z;
  const up = (piece: readonly Point[]) => piece.map((p) => at(p, T));
  const down = (piece: readonly Point[]) => piece.toReversed().map((p) => at(p, 0));
  const whole = lazy(() => pieces(panel.shape, holes)); // of one with holes asked for by models alone
  const placed = (side: typeof up) =>
    anew(function* () {
      for (const piece of whole()) yield side(piece);
    });
  const facesOf = (side: typeof up, normal: Vec3): readonly Facet[] =>
    holes.length === 0
      ? whole().map((piece) => ({ corners: side(piece), normal }))
      : [{ corners: side(panel.shape), normal, holes: holes.map(side), pieces: () => placed(side) }];
  const rims = [
    ...sides(panel.shape).flatMap(([p, q]) => free(p, q, joints)),
    ...holes.flatMap((h) => sides(h.toReversed())),
  ];
  return {
    facets: anew(function* () {
      yield* facesOf(up, z);
      yield* facesOf(down, scale3(z, -1));
      for (const [p, q] of rims) yield rimFacet(panel, p, q, T);
    }),
    lines: anew(function* (): Generator<SurfaceLine> {
      for (const [p, q] of rims) for (const h of [0, T]) yield { from: at(p, h), to: at(q, h), kind: 'edge' };
      for (const p of corners(panel, rims)) yield { from: at(p, 0), to: at(p, T), kind: 'edge' };
    }),
  };
}

type Side = readonly [Point, Point];

const sides = (shape: readonly Point[]): readonly Side[] =>
  shape.map((p, i) => [p, shape[(i + 1) % shape.length] as Point]);

/** Everything cut through a panel as polygons. */
export function openings({ holes, cutouts }: FormedPanel): readonly (readonly Point[])[] {
  return [
    ...holes.map(({ at, diameter }) => ring(at, diameter / 2)),
    ...cutouts.map((loop) => flattened(loop, SAG)),
  ];
}

/** A circle as a polygon. */
function ring([x, y]: Point, r: number): readonly Point[] {
  return Array.from({ length: HOLE_SIDES }, (_, i): Point => {
    const a = (2 * Math.PI * i) / HOLE_SIDES;
    return [x + r * Math.cos(a), y + r * Math.sin(a)];
  });
}

function rimFacet({ pose }: FormedPanel, p: Point, q: Point, T: number): Facet {
  const at = (a: Point, z: number) => place3(pose, [a[0], a[1], z]);
  const normal = turn3(pose, [q[1] - p[1], p[0] - q[0], 0]);
  return { corners: [at(p, 0), at(q, 0), at(q, T), at(p, T)], normal };
}

/** Corners of the shape between two free sides; where a bend goes on there is no edge across the sheet. */
function corners(panel: FormedPanel, rims: readonly Side[]): readonly Point[] {
  return panel.shape.filter((p) => rims.filter(([a, b]) => same(a, p) || same(b, p)).length > 1);
}

const same = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]) < ON;

/** Where bent material starts or ends on a panel, in its frame. */
function jointOn(bend: FormedBend, panel: FormedPanel): readonly Side[] {
  const end = bend.parent === panel.id ? 0 : bend.id === panel.id ? 1 : null;
  if (end === null) return [];
  const phi = end === 0 ? 0 : bend.sweep;
  const local = (x: number): Point => {
    const p = place3(bend.frame, [x, bend.outsideRadius * Math.cos(phi), bend.outsideRadius * Math.sin(phi)]);
    const d: Vec3 = sub3(p, panel.pose.origin);
    return [dot3(d, panel.pose.x), dot3(d, panel.pose.y)];
  };
  return [[local(bend.low[end]), local(bend.high[end])]];
}

/** The stretches of a side that no joint covers. */
function free(p: Point, q: Point, joints: readonly Side[]): readonly Side[] {
  const l = Math.hypot(q[0] - p[0], q[1] - p[1]);
  const u: Point = [(q[0] - p[0]) / l, (q[1] - p[1]) / l];
  const along = (a: Point) => (a[0] - p[0]) * u[0] + (a[1] - p[1]) * u[1];
  const off = (a: Point) => Math.abs((a[0] - p[0]) * u[1] - (a[1] - p[1]) * u[0]);
  const covered = joints
    .filter(([a, b]) => off(a) < ON && off(b) < ON)
    .map(([a, b]) => [Math.min(along(a), along(b)), Math.max(along(a), along(b))] as const)
    .toSorted((a, b) => a[0] - b[0]);
  const at = (s: number): Point => [p[0] + u[0] * s, p[1] + u[1] * s];
  const found: Side[] = [];
  let from = 0;
  for (const [a, b] of [...covered, [l, l] as const]) {
    if (Math.min(a, l) - from > ON) found.push([at(from), at(Math.min(a, l))]);
    from = Math.max(from, b);
  }
  return found;
}
