import {
  type FlatBend,
  type FlatPanel,
  type FlatPattern,
  type Point,
  place,
  type Segment,
} from '@tinwright/core';
import type { Subject } from '../check.js';

/** A round hole on the flat. mm */
export interface CutHole {
  readonly at: Point;
  readonly radius: number;
  readonly panel: string;
  /** Joint whose fastener goes through it, '' for a hole of the part's own. */
  readonly joint: string;
}

/** All round holes of a part where they lie on the flat, its own first. */
export function holesOf({ part, flat }: Pick<Subject, 'part' | 'flat'>): readonly CutHole[] {
  return part.panels.flatMap(({ id, holes, marks }): readonly CutHole[] => {
    const { frame } = panelOf(flat, id);
    const own = holes.map((h) => ({ at: h.at, radius: h.diameter / 2, joint: '' }));
    const drilled = marks.flatMap((m) =>
      m.hole === null ? [] : [{ at: m.at, radius: m.hole / 2, joint: m.joint }],
    );
    return [...own, ...drilled].map((h) => ({ ...h, at: place(frame, h.at), panel: id }));
  });
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
