import type { Point } from '../plane/point.js';
import type { Box3, Formed, FormedBend, FormedPanel } from './formed.js';
import { place3, type Vec3 } from './space.js';
import type { Measured } from './tree.js';

/** Box around what a size is measured over; infinite the wrong way round when there is nothing. */
export function measuredBox(formed: Pick<Formed, 'panels' | 'bends' | 'thickness'>, over: Measured): Box3 {
  const { panels, bends, thickness } = formed;
  if (over === 'all') return boxOfPieces(panels, bends, thickness);
  if ('panels' in over) {
    const chosen = <P extends { readonly id: string }>(list: readonly P[]) =>
      list.filter((p) => over.panels.includes(p.id));
    return boxOfPieces(chosen(panels), chosen(bends), thickness);
  }
  const lines = over.edges.flatMap(([panel, edge]) =>
    panels.filter((p) => p.id === panel).flatMap((p) => edgeOnly(p, edge)),
  );
  return boxOfPieces(lines, [], thickness);
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
  const range = ([0, 1, 2] as const).map((axis) => {
    let [min, max] = [Infinity, -Infinity];
    const see = (v: number) => {
      if (v < min) min = v;
      if (v > max) max = v;
    };
    for (const p of panels) for (const v of panelReach(p, thickness, axis)) see(v);
    for (const b of bends) for (const v of bendReach(b, axis)) see(v);
    return [min, max] as const;
  });
  const pick = (k: 0 | 1): Vec3 => [range[0]?.[k] ?? 0, range[1]?.[k] ?? 0, range[2]?.[k] ?? 0];
  return { min: pick(0), max: pick(1) };
}

function* panelReach(p: FormedPanel, thickness: number, axis: 0 | 1 | 2): Generator<number> {
  const { origin, x, y, z } = p.pose;
  const step = z[axis] * thickness;
  for (const [u, v] of p.shape) {
    const at = origin[axis] + x[axis] * u + y[axis] * v;
    yield at;
    yield at + step;
  }
}

/**
 * Furthest values of a bend along an axis. Along an end the value is s(φ)·x + r·cos(φ − φ0)·h, s straight in φ,
 * so it is greatest at an end of the turn or where sin(φ − φ0) = s'·x / (r·h).
 */
function* bendReach(b: FormedBend, axis: 0 | 1 | 2): Generator<number> {
  const { x, y, z } = b.frame;
  const tilt = Math.atan2(z[axis], y[axis]);
  const h = Math.hypot(y[axis], z[axis]);
  for (const radius of [b.insideRadius, b.outsideRadius])
    for (const [s0, s1] of [b.low, b.high]) {
      for (const phi of turns(b.sweep, tilt, ((s1 - s0) / b.sweep) * x[axis], radius * h)) {
        const s = s0 + ((s1 - s0) * phi) / b.sweep;
        yield place3(b.frame, [s, radius * Math.cos(phi), radius * Math.sin(phi)])[axis];
      }
    }
}

function* turns(sweep: number, tilt: number, slope: number, size: number): Generator<number> {
  yield 0;
  yield sweep;
  if (size === 0 || Math.abs(slope) > size) return;
  const a = Math.asin(slope / size);
  for (const root of [tilt + a, tilt + Math.PI - a]) {
    const phi = ((root % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    if (phi < sweep) yield phi;
  }
}
