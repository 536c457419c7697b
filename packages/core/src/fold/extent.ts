import type { Point } from '../plane/point.js';
import type { Box3, Formed, FormedBend, FormedPanel } from './formed.js';
import { place3, type Vec3 } from './space.js';
import type { Measured } from './tree.js';

/** Box around what a size is measured over; infinite the wrong way round when there is nothing. */
export function measuredBox(formed: Pick<Formed, 'panels' | 'bends' | 'thickness'>, over: Measured): Box3 {
  const { panels, bends, thickness } = formed;
  if (over === 'all') return boxOfPieces(panels, bends, thickness);
  if ('panels' in over) {
    const chosen = <P extends { readonly id: string }>(list: readonly P[], ids: readonly string[]) =>
      list.filter((p) => ids.includes(p.id));
    return boxOfPieces(chosen(panels, over.panels), chosen(bends, over.bends ?? over.panels), thickness);
  }
  if ('moulds' in over)
    return boxOfPoints(bends.filter((b) => over.moulds.includes(b.id)).flatMap(mouldLine));
  if ('between' in over) {
    const [a, b] = over.between.map((id) => measuredBox(formed, { panels: [id], bends: [] })) as [Box3, Box3];
    const clear = boxOfPoints([a.max, b.max]).min;
    return { min: clear, max: boxOfPoints([a.min, b.min]).max };
  }
  const lines = over.edges.flatMap(([panel, edge]) =>
    panels.filter((p) => p.id === panel).flatMap((p) => edgeOnly(p, edge)),
  );
  return boxOfPieces(lines, [], thickness);
}

/** Ends of the line where the outside faces beside a bend of less than 180° would meet. */
function mouldLine({ frame, sweep, outsideRadius, low, high }: FormedBend): readonly Vec3[] {
  const reach = outsideRadius / Math.cos(sweep / 2);
  return [low, high].map(([from, to]) =>
    place3(frame, [(from + to) / 2, reach * Math.cos(sweep / 2), reach * Math.sin(sweep / 2)]),
  );
}

function boxOfPoints(points: readonly Vec3[]): Box3 {
  const along = (pick: (...values: number[]) => number): Vec3 => [
    pick(...points.map((p) => p[0])),
    pick(...points.map((p) => p[1])),
    pick(...points.map((p) => p[2])),
  ];
  return { min: along(Math.min), max: along(Math.max) };
}

/** A panel reduced to its edges of this name. */
function edgeOnly(p: FormedPanel, edge: string): readonly FormedPanel[] {
  const ends = p.edges.flatMap((name, i) => (name === edge ? [i, (i + 1) % p.shape.length] : []));
  return [{ ...p, shape: ends.map((i) => p.shape[i] as Point) }];
}

/** Exact box around panels and bent material, along the axes of the formed part. mm */
export function boxOfPieces(
  panels: readonly FormedPanel[],
  bends: readonly FormedBend[],
  thickness: number,
): Box3 {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const axis of [0, 1, 2] as const) {
    const see: See = (v) => {
      if (v < min[axis]) min[axis] = v;
      if (v > max[axis]) max[axis] = v;
    };
    for (const p of panels) panelReach(p, thickness, axis, see);
    for (const b of bends) bendReach(b, axis, see);
  }
  return { min, max };
}

type Axis = 0 | 1 | 2;
type See = (value: number) => void;

function panelReach({ shape, pose }: FormedPanel, thickness: number, axis: Axis, see: See): void {
  const [o, x, y, step] = [pose.origin[axis], pose.x[axis], pose.y[axis], pose.z[axis] * thickness];
  for (const p of shape) {
    const at = o + x * p[0] + y * p[1];
    see(at);
    see(at + step);
  }
}

/**
 * Furthest values of a bend along an axis. Along an end the value is s(φ)·x + r·h·cos(φ − tilt), s straight in φ,
 * so it is greatest at an end of the turn or where sin(φ − tilt) = s'·x / (r·h).
 */
function bendReach(b: FormedBend, axis: Axis, see: See): void {
  const [o, x, y, z] = [b.frame.origin[axis], b.frame.x[axis], b.frame.y[axis], b.frame.z[axis]];
  const tilt = Math.atan2(z, y);
  const h = Math.sqrt(y * y + z * z);
  for (const ends of [b.low, b.high]) {
    const slope = (ends[1] - ends[0]) / b.sweep;
    for (const radius of [b.insideRadius, b.outsideRadius]) {
      const at = (phi: number) =>
        see(o + (ends[0] + slope * phi) * x + radius * (y * Math.cos(phi) + z * Math.sin(phi)));
      at(0);
      at(b.sweep);
      const size = radius * h;
      if (size < 1e-12 || Math.abs(slope * x) > size) continue;
      const lean = Math.asin((slope * x) / size);
      for (const root of [tilt + lean, tilt + Math.PI - lean]) {
        const phi = ((root % FULL) + FULL) % FULL;
        if (phi < b.sweep) at(phi);
      }
    }
  }
}

const FULL = 2 * Math.PI;
