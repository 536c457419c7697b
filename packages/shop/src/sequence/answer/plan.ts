import type { Line, Wording } from '@tinwright/core';
import type { Action } from '../part/operations.js';
import type { Obstacle, Station } from '../stations/station.js';

/** One operation of a bend order, as the shop reads it. Lengths mm, angles degrees. */
export interface BendStep {
  readonly action: Action;
  /** Ids of the bends done in one stroke. */
  readonly bends: readonly string[];
  readonly machine: Station['name'];
  /** Panel under the fingers, in the jaws, or at the gauge; the others turn. */
  readonly held: string;
  readonly heldSide: 'parent' | 'child';
  readonly faceUp: 'marked' | 'unmarked';
  /** Direction on the flat pattern that points to the operator, degrees from its x axis. */
  readonly heading: number;
  /** Bent through, without sign, and what the machine is set to for it. */
  readonly angle: number;
  readonly setAngle: number | null;
  readonly insideRadius: number;
  readonly setBack: number | null;
  /** Fingers or tools, where they stand along the line from its left end as the operator sees it; null for all. */
  readonly tools: readonly ToolGroup[] | null;
  /** Line on the flat to set under the nose, one for each bend; null where none is used. */
  readonly sight: readonly Line[] | null;
  /** That line from the tangent line on the held side, towards the bend; null where none is used. */
  readonly sightOffset: number | null;
  /** From the line under the nose back to the edge of the sheet against the rear stop. */
  readonly stopDistance: number | null;
  /** What lies against the rear stop or the back gauge; null where nothing straight does. */
  readonly touches: Touches | null;
  readonly hooked: boolean;
  /** Only on a press brake. */
  readonly press: PressSetting | null;
  /** Seconds up to the end of it. */
  readonly seconds: number;
}

/** A panel that lies against a stop: by its edge, or by its outside where it is bent up. */
export interface Touches {
  readonly panel: string;
  readonly by: 'edge' | 'outside';
}

/** Pieces of tool side by side. mm */
export interface ToolGroup {
  readonly pieces: readonly number[];
  /** From the left end of the bent material; negative where it stands out. */
  readonly from: number;
  /** Between two pieces, and left bare at either end of the bent material. */
  readonly gap: number;
  readonly bare: readonly [number, number];
}

/** What a press brake is set to. mm, kN */
export interface PressSetting {
  readonly punch: string;
  readonly die: string;
  readonly opening: number;
  readonly force: number;
  readonly forceFormula: string;
  /** From the punch line to the edge against the back gauge; null where no edge is straight. */
  readonly gauge: number | null;
}

/** Why a part cannot be bent: what runs into what. */
export interface Reason {
  readonly bends: readonly string[];
  readonly code: Obstacle['code'] | 'tools';
  /** Panel in the way; '' where it is none. */
  readonly panel: string;
  readonly machine: Station['name'];
  /** By how much, in mm or degrees; null where no number tells it. */
  readonly by: number | null;
  readonly message: Wording;
}

/** Something that would make an impossible part possible. */
export interface Mend {
  /** Parameter of the part by its path, '' for a machine or a way of working. */
  readonly parameter: string;
  readonly given: number | null;
  readonly found: number | null;
  readonly message: Wording;
}

/** The order in which a part is bent. */
export interface Sequence {
  readonly part: string;
  readonly shop: string;
  readonly status: 'optimal' | 'feasible' | 'infeasible';
  /** True when all orders were looked at: an infeasible part has none, an optimal plan is the cheapest. */
  readonly proved: boolean;
  readonly steps: readonly BendStep[];
  /** Of handling by the shop's costs; no plan takes less than the bound. */
  readonly seconds: number;
  readonly bound: number;
  /** (seconds − bound) ÷ seconds: 0 for an optimal plan. */
  readonly gap: number;
  readonly reasons: readonly Reason[];
  readonly mends: readonly Mend[];
  /** States looked at. */
  readonly expanded: number;
}
