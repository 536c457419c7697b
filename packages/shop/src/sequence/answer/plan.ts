import type { Line } from '@tinwright/core';
import type { Action } from '../part/operations.js';
import type { Obstacle, Station, Way } from '../stations/station.js';

/** One operation of a bend order, as the shop reads it. Lengths mm, angles degrees. */
export interface BendStep {
  readonly action: Action;
  /** Ids of the bends done in one stroke. */
  readonly bends: readonly string[];
  readonly machine: Station['name'];
  /** What holds the sheet where no machine does: a bar at the edge of the bench, or a hand seamer; null else. */
  readonly clamp: 'bench' | 'seamer' | null;
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
  /** How it comes under the jaw, and off it once bent; null on other machines. */
  readonly putIn: Way | null;
  readonly takeOff: Way | null;
  /** Either of them tilted. */
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

/** Why a part cannot be bent: what one bend runs into when some others are made. Lengths mm, angles degrees, forces kN. */
export interface Reason {
  readonly bends: readonly string[];
  /** Bends made before it that it cannot do with; none where it cannot be made at all. */
  readonly after: readonly string[];
  readonly code: Obstacle['code'] | 'tools';
  readonly machine: Station['name'];
  /** Panel held for it, or with code `part` the one that turns; null where it makes no difference. */
  readonly held: string | null;
  /** Panel in the way; null where it is none. */
  readonly panel: string | null;
  /** Found and allowed, and by how much it is over or into a tool; null where no number tells it. */
  readonly value: number | null;
  readonly limit: number | null;
  readonly by: number | null;
}

/** Something that would make an impossible part possible: applied, and planned again, before it is told. mm */
export interface Mend {
  /** A size of the part, or a value of the shop file. */
  readonly of: 'part' | 'machine';
  /** Its path: `height`, `brake.clearHeight`. */
  readonly parameter: string;
  /** Null for a machine the shop has not got. */
  readonly given: number | null;
  readonly found: number;
  /** Whether what was found is the least or the most that does. */
  readonly bound: 'least' | 'most';
  /** Thickest sheet the machine takes then, where it takes less. */
  readonly thickness: number | null;
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
