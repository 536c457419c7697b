import type { FormedBend, Point, Vec3 } from '@tinwright/core';
import { convexHull, place3, type Standing } from '@tinwright/core/internal';
import { openings, pieces } from '@tinwright/files/internal';

/** Cut metal: a convex piece of a panel or of the bent material of a bend, seen from the operator's left. mm */
export interface Cut {
  readonly kind: 'panel' | 'bend';
  /** The panel, or the panel that the bend folds. */
  readonly id: string;
  /** x to the right, z up; counter-clockwise. */
  readonly outline: readonly Point[];
}

const STRAIGHT = 1e-5; // mm; a corner nearer to the line between its neighbours is none
const STRIP = Math.PI / 24; // turn of one piece of a bend: 0.2 % of the radius

/** A part cut across its bend line at y. Exact for panels; bends in strips. */
export function sectionAt({ panels, bends, thickness }: Standing, y: number): readonly Cut[] {
  const cut = (kind: Cut['kind'], id: string, solids: readonly (readonly Vec3[])[]) =>
    solids.flatMap((corners): readonly Cut[] => {
      const outline = sliced(corners, y);
      return outline.length < 3 ? [] : [{ kind, id, outline }];
    });
  return [
    ...panels.flatMap((p) => {
      const solids = pieces(p.shape, openings(p)).map((piece) =>
        [0, thickness].flatMap((z) => piece.map(([u, v]) => place3(p.pose, [u, v, z]))),
      );
      return cut('panel', p.id, solids);
    }),
    ...bends.flatMap((b) => cut('bend', b.id, stripsOf(b))),
  ];
}

/** Hull of where the plane meets a convex solid. */
function sliced(corners: readonly Vec3[], y: number): readonly Point[] {
  const [low, high] = [corners.filter((c) => c[1] < y), corners.filter((c) => c[1] >= y)];
  const met = low.flatMap((p) =>
    high.map((q): Point => {
      const t = (y - p[1]) / (q[1] - p[1]);
      return [p[0] + (q[0] - p[0]) * t, p[2] + (q[2] - p[2]) * t];
    }),
  );
  const hull = met.length === 0 ? [] : convexHull(met);
  return hull.filter(
    (p, i) => off(p, hull.at(i - 1) as Point, hull[(i + 1) % hull.length] as Point) > STRAIGHT,
  );
}

/** How far a point lies off the line through two others. */
function off([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const l = Math.hypot(bx - ax, by - ay);
  return l === 0 ? 0 : Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / l;
}

function stripsOf({ frame, sweep, low, high, insideRadius, outsideRadius }: FormedBend) {
  const count = Math.max(1, Math.ceil(sweep / STRIP));
  const at = (phi: number, r: number, [a, b]: readonly [number, number]): Vec3 =>
    place3(frame, [a + ((b - a) * phi) / sweep, r * Math.cos(phi), r * Math.sin(phi)]);
  return Array.from({ length: count }, (_, i) =>
    [i, i + 1].flatMap((k) =>
      [insideRadius, outsideRadius].flatMap((r) => [low, high].map((end) => at((sweep * k) / count, r, end))),
    ),
  );
}
