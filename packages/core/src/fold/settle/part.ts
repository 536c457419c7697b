import { circleLoop, type Loop } from '../../plane/loop.js';
import type { Point } from '../../plane/point.js';
import type { Hinge } from '../draft/hinge.js';
import type { Asked, Bend, Cutout, Hole, Mark, Outline, Sheet, Site } from '../draft/tree.js';

/** The bend zone between a panel and its parent. Both sides in the flange's own x, mm. */
export interface Zone {
  /** Ends of the bent material on the parent's tangent line. */
  readonly parentSide: readonly [number, number];
  /** Ends of the bent material on the flange's tangent line. */
  readonly childSide: readonly [number, number];
}

/** A panel with its corners resolved: `shape` is what stays flat of it, between tangent lines, trimmed. */
export interface PartPanel {
  readonly id: string;
  /** As authored, bend edges on mould lines. */
  readonly outline: Outline;
  readonly shape: Outline;
  /** Where it hangs; null for the first panel. */
  readonly hang: { readonly bend: Bend; readonly hinge: Hinge; readonly zone: Zone } | null;
  /** How it is laid out and cut: up to the terms of the rule. The same unless the metal forms by others. */
  readonly cut: { readonly shape: Outline; readonly zone: Zone | null };
  readonly holes: readonly Hole[];
  readonly cutouts: readonly Cutout[];
  readonly scribes: readonly (readonly [Point, Point])[];
  readonly marks: readonly Mark[];
}

/** A round hole at the root of a notch: at a corner of this panel's shape. */
export interface RootHole {
  readonly panel: string;
  readonly at: Point;
  readonly diameter: number;
}

/** A part ready to be seen flat or formed. Frozen; parents come before children, the first panel stays put. */
export interface Part {
  readonly sheet: Sheet;
  readonly panels: readonly PartPanel[];
  readonly rootHoles: readonly RootHole[];
  readonly asked: readonly Asked[];
  readonly sites: readonly Site[];
}

/** Everything cut through a panel, round holes first, counter-clockwise in its frame. */
export function openingsOf(panel: Pick<PartPanel, 'holes' | 'marks' | 'cutouts'>): readonly Loop[] {
  const round = holesOf(panel).map((h) => circleLoop(h.at, h.diameter / 2));
  return panel.cutouts.length === 0 ? round : [...round, ...panel.cutouts.map((c) => c.loop)];
}

/** All holes through a panel: those of its own and those of its marks. */
export function holesOf({ holes, marks }: Pick<PartPanel, 'holes' | 'marks'>): readonly Hole[] {
  const drilled = marks.flatMap((m) => (m.hole === null ? [] : [{ at: m.at, diameter: m.hole }]));
  return drilled.length === 0 ? holes : [...holes, ...drilled];
}
