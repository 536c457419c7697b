import type { FormedPanel } from '../fold/formed/formed.js';
import type { FastenerNeeds } from '../joining/fastener.js';
import type { KeepOff } from '../joining/layout.js';
import { polygonArea } from '../plane/convex.js';
import type { Point } from '../plane/point.js';
import { type Overlap, onFace, type StandingFace, seenOn } from './overlap.js';
import type { Placed } from './types.js';

/** Edges of both panels of an overlap, in the first one's frame, and how far fasteners stay off them. */
export function keepOffs({ from, to }: Overlap, needs: FastenerNeeds): readonly KeepOff[] {
  const own = sidesOf(from, (p) => p);
  const other = sidesOf(to, (p) => seenOn(from, onFace(to, p)));
  return [...own, ...other].map(({ from: a, to: b, bent }) => ({
    from: a,
    to: b,
    keep: bent ? needs.bend : needs.edge,
    what: bent ? 'bend' : 'edge',
  }));
}

interface SideOf {
  readonly from: Point;
  readonly to: Point;
  readonly bent: boolean;
}

function sidesOf(face: StandingFace, see: (p: Point) => Point): readonly SideOf[] {
  const { shape, edges } = face.panel;
  const seen = shape.map(see);
  const turned = polygonArea(seen) < 0;
  return seen.map((a, i) => {
    const b = seen[(i + 1) % seen.length] as Point;
    const bent = isBent(face.placed, face.panel, edges[i] ?? '');
    return turned ? { from: b, to: a, bent } : { from: a, to: b, bent };
  });
}

/** True when bent material joins this edge: the panel's own bend, or one that hangs on it. */
function isBent({ part }: Placed, panel: FormedPanel, edge: string): boolean {
  if (edge === 'near') return part.formed.bends.some((b) => b.id === panel.id);
  return part.part.panels.some((p) => p.hang?.bend.parent === panel.id && p.hang.bend.edge === edge);
}
