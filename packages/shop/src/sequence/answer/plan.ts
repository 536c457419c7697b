import type { FlatBend, Line } from '@tinwright/core';
import type { Horns } from '../../machines/shop.js';
import type { Action } from '../part/operations.js';
import type { Touches } from '../part/rear-edge.js';
import type { Obstacle, RemovalWay, Station } from '../stations/station.js';

/** What is bent in one stroke, whatever does it. Lengths mm. */
export interface BendStroke {
  readonly action: Action;
  /** Ids of its bends. */
  readonly bends: readonly string[];
  /** Towards the marked face, or away from it. */
  readonly direction: 'up' | 'down';
  readonly insideRadius: number;
  /** The hem or wired edge it makes; null for a bend. */
  readonly hem: FlatBend['hem'];
}

/** A side or a corner of the pattern as it lies to be marked: marked face up, datum corner near left. */
export type PatternSide =
  | 'left'
  | 'right'
  | 'near'
  | 'far'
  | 'near-left'
  | 'near-right'
  | 'far-left'
  | 'far-right';

/** How the part is moved since the step before: over on its other face, then round on the bench. */
export interface Handling {
  /** Sidewise the same edge stays towards the operator, end for end the opposite one comes there; null for not turned over. */
  readonly over: 'sidewise' | 'end-for-end' | null;
  /** Degrees counter-clockwise seen from above; null for none, and for any other turn. */
  readonly round: 90 | 180 | -90 | null;
}

/** One stroke of a bend order as a machine does it. Lengths mm, angles degrees. */
export interface BendStep extends BendStroke {
  readonly machine: Station['name'];
  /** What the shop calls it, or its hand tool; null for work with neither. */
  readonly machineName: string | null;
  /** What holds the sheet where no machine does: a bar at the edge of the bench, a hand seamer, or a block inside the part on the bench; null else. */
  readonly clamp: 'bench' | 'seamer' | 'former' | null;
  /** Panel under the fingers, in the jaws, or at the gauge; the others turn. */
  readonly held: string;
  readonly heldSide: 'parent' | 'child';
  /** All panels held along the line, that one first. */
  readonly gripped: readonly string[];
  /** What bends away from it along the line: panels by name. */
  readonly beside: readonly string[];
  readonly faceUp: 'marked' | 'unmarked';
  /** Direction on the flat pattern that points to the operator, degrees from its x axis. */
  readonly heading: number;
  /** Side of the pattern that lies towards the operator, in a vise up, and whether it is only roughly that. */
  readonly towards: { readonly side: PatternSide; readonly roughly: boolean };
  readonly handling: Handling;
  /** Bent through, without sign; and what the machine is set to for it, or how far bars bend a fold before it is laid over. */
  readonly angle: number;
  readonly setAngle: number | null;
  readonly setBack: number | null;
  /** Inside radius that the machine makes of a bend so set, mm; null by hand and for hems. */
  readonly madeRadius: number | null;
  /** Fingers or tools, where they stand along the line from its left end as the operator sees it; null for all. */
  readonly tools: readonly ToolGroup[] | null;
  /** Line on the flat to set under the nose, one for each bend; null where none is used. */
  readonly sight: readonly Line[] | null;
  /** That line from the tangent line on the held side, towards the bend; null where none is used. */
  readonly sightOffset: number | null;
  /** From the middle of the bend zone, the line that is marked, back over what is held to the line under the nose. */
  readonly noseOffset: number | null;
  /** From the line under the nose back to the edge of the sheet against the rear stop; null for a machine without one. */
  readonly stopDistance: number | null;
  /** Of the line from end to end: as long as bars may be that are clamped between what stands at its ends. */
  readonly length: number;
  /** What lies against the rear stop or the back gauge; null where nothing straight does. */
  readonly touches: Touches | null;
  /** How it comes under jaw or punch, and off it once bent; null where nothing is over it. */
  readonly putIn: RemovalWay | null;
  readonly takeOff: RemovalWay | null;
  /** Only on a press brake. */
  readonly press: PressSetting | null;
  /** Seconds up to the end of it, set-ups shared among the pieces. */
  readonly seconds: number;
}

/** Pieces of tool side by side. mm */
export interface ToolGroup {
  readonly pieces: readonly number[];
  /** From the left end of the bent material; negative where it stands out. */
  readonly from: number;
  /** Between two pieces. */
  readonly gap: number;
  /** Of the line at either end of it with nothing over it; 0 where another group goes on. */
  readonly bare: readonly [number, number];
}

/** What a press brake is set to. mm, kN */
export interface PressSetting {
  readonly punch: string;
  /** Where a gooseneck's hollow lies: to the operator, or to the gauge; null for a punch that is alike on both sides. */
  readonly hollow: 'front' | 'back' | null;
  /** At either end of the tools, feet outwards; null where none are mounted. */
  readonly horns: Horns | null;
  readonly die: string;
  readonly opening: number;
  readonly force: number;
  readonly forceFormula: string;
  /** How far the bend stands off the middle of the press, to the right of who stands before it positive. */
  readonly offMiddle: number;
  /** From the punch line to the edge against the back gauge; null where no edge is straight. */
  readonly gauge: number | null;
  /** True where most of the part lies behind the punch, and in front too little to hold it by. */
  readonly tipsBack: boolean;
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
  /** True where that panel is in the way because its own bend is not made yet. */
  readonly flat: boolean;
  /** Found and allowed, and by how much it is over or into a tool; null where no number tells it. */
  readonly value: number | null;
  readonly limit: number | null;
  readonly by: number | null;
}

/** Something that would make an impossible part possible: applied, and planned again, before it is told. */
export interface Mend {
  /** A value of the part, or one of the shop file. */
  readonly of: 'part' | 'machine';
  /** Its path: `height`, `brake.clearHeight`; of a further brake as of the first one. */
  readonly parameter: string;
  /** Null for what the shop has not got. */
  readonly given: number | string | null;
  /** A size, a word, or pieces of tool that are added. */
  readonly found: number | string | readonly number[];
  /** Whether what was found is the least or the most that does, or one of a few that were tried. */
  readonly bound: 'least' | 'most' | 'tried';
  /** What a size is in. */
  readonly unit: 'mm' | 'deg' | 'kN' | null;
  /** The machine whose place it takes, where the shop has several of its kind. */
  readonly instead: string | null;
  /** Thickest sheet the machine takes then, where it takes less. mm */
  readonly thickness: number | null;
}

/** The order in which a part is bent. */
export interface Sequence {
  readonly part: string;
  readonly shop: string;
  readonly status: 'optimal' | 'feasible' | 'infeasible';
  /** True when all orders were looked at: an infeasible part has none, an optimal plan is the cheapest. */
  readonly proved: boolean;
  /** True where that is known only of plans that keep tools on as long as they serve and change the fewest pieces then. */
  readonly toolsKept: boolean;
  readonly steps: readonly BendStep[];
  /** Of handling a piece by the shop's costs, set-ups shared among all that are made; no plan takes less than the bound. */
  readonly seconds: number;
  readonly bound: number;
  /** (seconds − bound) ÷ seconds: 0 for an optimal plan. */
  readonly gap: number;
  readonly reasons: readonly Reason[];
  readonly mends: readonly Mend[];
  /** States looked at. */
  readonly expanded: number;
}
