import { add, cross, dot, type Point, scale, sub, unit } from '../plane/point.js';
import { hingeAt } from './hinge.js';
import type { Lookup } from './lookup.js';
import { edgeIndex } from './outline.js';
import type { Edge, Panel } from './tree.js';

/** A flange at a corner of the panel it hangs on. mm */
export interface Arm {
  readonly flange: Panel;
  /** Name of the host's edge it hangs on; null for a tab at the end of a flange. */
  readonly edge: string | null;
  /** The end of the flange's x axis that lies at the corner. */
  readonly end: 'low' | 'high';
  /** Length of the edge it hangs on: x of the high end. */
  readonly length: number;
  /** Along the bend, from the mould corner to the host's corner once its bends are set back. */
  readonly start: number;
}

/** The two sides of a corner: the flange, and the tab that folds round its end there. Null where nothing hangs. */
export interface CornerSide {
  readonly arm: Arm;
  readonly tab: Arm | null;
}

/** What hangs on the edges before and after corner `i` of a host panel. */
export function sidesAt(
  lookup: Lookup,
  host: Panel,
  i: number,
): readonly [CornerSide | null, CornerSide | null] {
  const n = host.outline.length;
  return [sideOn(lookup, host, i, (i + n - 1) % n, 'low'), sideOn(lookup, host, i, i, 'high')];
}

function sideOn(
  lookup: Lookup,
  host: Panel,
  i: number,
  index: number,
  end: 'low' | 'high',
): CornerSide | null {
  const edge = (host.outline[index] as Edge).name;
  const flange = lookup.on(host.id, edge);
  if (flange === null) return null;
  const { frame, length } = hingeAt(host.outline, index);
  const inwards = end === 'low' ? frame.x : scale(frame.x, -1);
  const start = dot(sub(setBackCorner(lookup, host, i), (host.outline[i] as Edge).from), inwards);
  const arm: Arm = { flange, edge, end, length, start };
  return { arm, tab: tabBeside(lookup, arm) };
}

/** The tab at this end of a flange. Its x runs so that its corner at the flange's bend lies at the same end. */
function tabBeside(lookup: Lookup, { flange, end }: Arm): Arm | null {
  const { outline } = flange;
  const near = edgeIndex(outline, 'near');
  const index = (near + (end === 'high' ? 1 : outline.length - 1)) % outline.length;
  const tab = lookup.on(flange.id, (outline[index] as Edge).name);
  if (tab === null) return null;
  const { length } = hingeAt(outline, index);
  return { flange: tab, edge: null, end, length, start: flange.bend?.terms.setback ?? 0 };
}

/** The host's corner `i` once the bent edges beside it are moved in to their tangent lines. */
export function setBackCorner(lookup: Lookup, host: Panel, i: number): Point {
  const n = host.outline.length;
  const at = (k: number) => host.outline[(k + n) % n] as Edge;
  const inset = (k: number) => lookup.on(host.id, at(k).name)?.bend?.terms.setback ?? 0;
  const v = at(i).from;
  const [u, w] = [unit(sub(v, at(i - 1).from)), unit(sub(at(i + 1).from, v))];
  const [a, b] = [inset(i - 1), inset(i)];
  // along u from v, moved left by a, until it lies b left of the edge after
  const s = (a * dot(u, w) - b) / cross(u, w);
  return add(v, add(scale(u, s), scale([-u[1], u[0]], a)));
}
