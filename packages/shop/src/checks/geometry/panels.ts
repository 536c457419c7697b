import {
  type FlatBend,
  type FlatPanel,
  type FlatPattern,
  type Loop,
  type Point,
  type Segment,
  segments,
} from '@tinwright/core';
import {
  convexHull,
  distance,
  flattened,
  loopBox,
  nearestOn,
  place,
  placeLoop,
  segmentDistance,
} from '@tinwright/core/internal';
import type { ShopSubject } from '../check.js';

/** A hole or a cut-out on the flat. mm */
export interface CutHole {
  readonly at: Point;
  /** Half its diameter; of a cut-out, half its least width. */
  readonly radius: number;
  /** The rim of a cut-out; null for a round hole. */
  readonly rim: readonly Segment[] | null;
  readonly panel: string;
  /** Joint whose fastener goes through it, '' for a hole of the part's own. */
  readonly joint: string;
}

/** All holes and cut-outs of a part where they lie on the flat, panel by panel. */
export function holesOf({ part, flat }: Pick<ShopSubject, 'part' | 'flat'>): readonly CutHole[] {
  return part.panels.flatMap(({ id, holes, cutouts, marks }): readonly CutHole[] => {
    const { frame } = panelOf(flat, id);
    const own = holes.map((h) => ({ at: h.at, radius: h.diameter / 2, joint: '' }));
    const drilled = marks.flatMap((m) =>
      m.hole === null ? [] : [{ at: m.at, radius: m.hole / 2, joint: m.joint }],
    );
    const round = [...own, ...drilled].map((h) => ({
      ...h,
      at: place(frame, h.at),
      rim: null,
      panel: id,
    }));
    const cut = cutouts.map(({ loop }): CutHole => {
      const placed = placeLoop(frame, loop);
      const { min, max } = loopBox(placed);
      const at: Point = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
      return { at, radius: leastWidth(placed) / 2, rim: segments(placed), panel: id, joint: '' };
    });
    return [...round, ...cut];
  });
}

const WAYS = 36; // directions a cut-out is measured in
const SAG = 0.05; // mm

/** The least width of a loop between two parallel lines, within a part in a hundred or so. */
function leastWidth(loop: Loop): number {
  const points = convexHull(flattened(loop, SAG));
  const widths = Array.from({ length: WAYS }, (_, i) => {
    const [c, s] = [Math.cos((i * Math.PI) / WAYS), Math.sin((i * Math.PI) / WAYS)];
    const [least, most] = points.reduce(
      ([a, b], [x, y]) => [Math.min(a, c * x + s * y), Math.max(b, c * x + s * y)],
      [Infinity, -Infinity],
    );
    return most - least;
  });
  return Math.min(...widths);
}

/** Metal between a hole and a line beside it, mm; negative where it runs over it. */
export function metalTo({ at, radius, rim }: CutHole, line: Segment): number {
  if (rim === null) return distance(at, nearestOn(line, at)) - radius;
  return Math.min(...rim.map((s) => segmentDistance(s, line)));
}

/** Metal between two holes, mm. */
export function metalBetween(a: CutHole, b: CutHole): number {
  if (a.rim === null && b.rim === null) return distance(a.at, b.at) - a.radius - b.radius;
  if (b.rim === null)
    return Math.min(...(a.rim ?? []).map((s) => distance(b.at, nearestOn(s, b.at)))) - b.radius;
  return Math.min(...b.rim.map((s) => metalTo(a, s)));
}

/** A panel of the flat by its id. */
export function panelOf(flat: FlatPattern, id: string): FlatPanel {
  return flat.panels.find((p) => p.id === id) as FlatPanel;
}

/** Where a panel ends and a bend begins. */
export interface Tangent {
  readonly bend: FlatBend;
  readonly line: Segment;
}

/** Tangent lines along the edges of a panel. */
export function tangentsOf(flat: FlatPattern, id: string): readonly Tangent[] {
  return flat.bends.flatMap((bend): readonly Tangent[] => {
    const [own, far] = bend.tangents;
    const line = bend.parent === id ? own : bend.id === id ? far : null;
    return line === null ? [] : [{ bend, line: { from: line[0], to: line[1], bulge: 0 } }];
  });
}

/** Middle of a bend's line. */
export const middleOf = ({ line: [a, b] }: Pick<FlatBend, 'line'>): Point => [
  (a[0] + b[0]) / 2,
  (a[1] + b[1]) / 2,
];

/** Length of a bend's line, mm. */
export const lengthOf = ({ line: [a, b] }: Pick<FlatBend, 'line'>): number =>
  Math.hypot(b[0] - a[0], b[1] - a[1]);
