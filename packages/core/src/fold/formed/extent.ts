import type { Point } from '../../plane/point.js';
import { AXIS, place3, type Vec3 } from '../draft/space.js';
import type { Asked, Measured } from '../draft/tree.js';
import type { Box3, Formed, FormedBend, FormedPanel } from './formed.js';

/** A size as it is on the formed part, mm. */
export function measuredSize(formed: Formed, { axis, over }: Pick<Asked, 'axis' | 'over'>): number {
  const { min, max } = measuredBox(formed, over);
  return max[AXIS[axis]] - min[AXIS[axis]];
}

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
  const reach: Reach = { min: [Infinity, Infinity, Infinity], max: [-Infinity, -Infinity, -Infinity] };
  for (const p of panels) panelReach(p, thickness, reach);
  for (const b of bends) bendReach(b, reach);
  return reach;
}

/** The box while it grows. */
interface Reach {
  readonly min: [number, number, number];
  readonly max: [number, number, number];
}

type Axis = 0 | 1 | 2;
const AXES: readonly Axis[] = [0, 1, 2];

function see({ min, max }: Reach, axis: Axis, value: number): void {
  if (value < min[axis]) min[axis] = value;
  if (value > max[axis]) max[axis] = value;
}

function panelReach({ shape, pose, thickness: own }: FormedPanel, thickness: number, reach: Reach): void {
  for (const axis of AXES) {
    const step = pose.z[axis] * (own ?? thickness);
    for (const p of shape) {
      const at = pose.origin[axis] + pose.x[axis] * p[0] + pose.y[axis] * p[1];
      see(reach, axis, at);
      see(reach, axis, at + step);
    }
  }
}

function bendReach(b: FormedBend, reach: Reach): void {
  const end = { phi: b.sweep, cos: Math.cos(b.sweep), sin: Math.sin(b.sweep) };
  for (const axis of AXES) {
    const x = b.frame.x[axis];
    const y = b.frame.y[axis];
    const z = b.frame.z[axis];
    const origin = b.frame.origin[axis];
    const ring = { axis, origin, x, y, z, tall: Math.sqrt(y * y + z * z), tilt: Math.atan2(z, y), end };
    edgeReach(ring, b.low, b.insideRadius, reach);
    edgeReach(ring, b.low, b.outsideRadius, reach);
    edgeReach(ring, b.high, b.insideRadius, reach);
    edgeReach(ring, b.high, b.outsideRadius, reach);
  }
}

/** A bend seen along an axis: its frame's part along it, and the end of its turn. */
interface Ring {
  readonly axis: Axis;
  readonly origin: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** What the axis has in the plane of the turn, and at which turn it lies there. */
  readonly tall: number;
  readonly tilt: number;
  readonly end: { readonly phi: number; readonly cos: number; readonly sin: number };
}

/**
 * Furthest values along the axis of one of the four edges that run round a bend: at this radius, from one end to the
 * other along the axis of the bend. The value there is s(φ)·x + r·h·cos(φ − tilt), s straight in φ, so it is greatest at
 * an end of the turn or where sin(φ − tilt) = s'·x / (r·h).
 */
function edgeReach(ring: Ring, ends: readonly [number, number], radius: number, reach: Reach): void {
  const { axis, x, y, z, tilt, end } = ring;
  const start = ring.origin + ends[0] * x;
  const slope = ((ends[1] - ends[0]) / end.phi) * x;
  const size = radius * ring.tall;
  see(reach, axis, start + radius * y);
  see(reach, axis, start + slope * end.phi + radius * (y * end.cos + z * end.sin));
  if (size < 1e-12) return;
  const lean = slope === 0 ? 0 : Math.asin(slope / size); // no number where the edge has no such place
  const peak = (turn: number) => {
    const phi = turn < 0 ? turn + FULL : turn % FULL;
    if (phi <= end.phi)
      see(reach, axis, start + slope * phi + radius * (y * Math.cos(phi) + z * Math.sin(phi)));
  };
  peak(tilt + lean);
  peak(tilt + Math.PI - lean);
}

const FULL = 2 * Math.PI;
