import { add, cross, dot, type Point, scale, sub, unit } from '../../plane/point.js';
import type { Lookup } from '../draft/lookup.js';
import { edgeIndex } from '../draft/outline.js';
import type { Edge, Panel } from '../draft/tree.js';

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

/** A corner of a host panel: what hangs on the edges before and after it, and where both are set back to. */
export interface HostCorner {
  readonly before: CornerSide | null;
  readonly after: CornerSide | null;
  readonly root: Point;
}

/** Corner `i` of a host panel. */
export function cornerOf(lookup: Lookup, host: Panel, i: number): HostCorner {
  const n = host.outline.length;
  const root = setBackCorner(lookup, host, i);
  const back = sub(root, (host.outline[i] as Edge).from);
  return {
    before: sideOn(lookup, host, (i + n - 1) % n, { end: 'low', back }),
    after: sideOn(lookup, host, i, { end: 'high', back }),
    root,
  };
}

/** What hangs on an edge; `back` leads from the corner at this end of it to where the corner is set back to. */
function sideOn(
  lookup: Lookup,
  host: Panel,
  index: number,
  { end, back }: { readonly end: 'low' | 'high'; readonly back: Point },
): CornerSide | null {
  const edge = (host.outline[index] as Edge).name;
  const flange = lookup.on(host.id, edge);
  if (flange === null) return null;
  const { frame, length } = lookup.hinge(host, index);
  const start = dot(back, end === 'low' ? frame.x : scale(frame.x, -1));
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
  const { length } = lookup.hinge(flange, index);
  return { flange: tab, edge: null, end, length, start: flange.bend?.terms.setback ?? 0 };
}

/** The host's corner `i` once the bent edges beside it are moved in to their tangent lines. */
function setBackCorner(lookup: Lookup, host: Panel, i: number): Point {
  const n = host.outline.length;
  const bends = lookup.bends(host);
  const before = (i + n - 1) % n;
  const from = (k: number) => (host.outline[k] as Edge).from;
  const v = from(i);
  const u = unit(sub(v, from(before)));
  const w = unit(sub(from((i + 1) % n), v));
  const a = bends[before]?.terms.setback ?? 0;
  const b = bends[i]?.terms.setback ?? 0;
  // along u from v, moved left by a, until it lies b left of the edge after
  const s = (a * dot(u, w) - b) / cross(u, w);
  return add(v, add(scale(u, s), scale([-u[1], u[0]], a)));
}
