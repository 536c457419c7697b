import type { BendRule, BendTerms } from '../../bending/rule.js';
import type { Path, Refusal } from '../../errors/problem.js';
import type { Loop } from '../../plane/loop.js';
import type { Point } from '../../plane/point.js';
import type { CornerStyle } from './corner-style.js';

/** The sheet a part is folded from. mm. */
export interface Sheet {
  readonly thickness: number;
  /** Inside radius of every bend that does not say otherwise. */
  readonly insideRadius: number;
  readonly rule: BendRule;
}

/** A straight edge of a panel: starts at `from`, ends where the next edge starts. */
export interface Edge {
  readonly name: string;
  readonly from: Point;
}

/**
 * Outline of a panel in its own frame, counter-clockwise seen from the marked face, bend edges on their mould
 * lines. A panel that hangs on another has its own bend along y = 0, edge `near`, and grows towards +y.
 */
export type Outline = readonly Edge[];

/** A fold that finishes an edge. */
export type EdgeFold = 'closed' | 'open' | 'teardrop' | 'wired' | 'curl';

/** The metal of a bend where it lies on the pattern, mm: half to either side of the line. */
export interface BentMetal {
  /** Between its tangent lines: the allowance, of what the metal does where the rule lays out with something else. */
  readonly width: number;
  /** From the line that the panels beside it are authored to, back to a tangent line. */
  readonly setback: number;
}

/** How a panel hangs on its parent. */
export interface Bend {
  readonly parent: string;
  /** Edge of the parent it hangs on. */
  readonly edge: string;
  /** Bent through from flat, degrees; positive up, towards the marked face. */
  readonly angle: number;
  readonly insideRadius: number;
  /** What it is laid out with. */
  readonly terms: BendTerms;
  readonly metal: BentMetal;
  /** Setback of the formed bend, mm: the terms' own under every rule that compensates. */
  readonly setback: number;
  /** Set for the fold of a hem and the roll of a wired edge. */
  readonly hem: EdgeFold | null;
}

/** A round hole through a panel, in the panel's frame, mm. */
export interface Hole {
  readonly at: Point;
  readonly diameter: number;
  /** Parameters its place along x and y and its diameter come from: they are named where too little metal would be left. */
  readonly by?: { readonly at: readonly [x: Path, y: Path]; readonly diameter: Path };
  /** The entry of the job that asks for it, where no family does: see `Cutout`. */
  readonly asked?: Path;
}

/** A slot cut into the outline of a panel, in the panel's frame. */
export interface Slot {
  readonly corners: readonly Point[];
  /** Parameters its place along the edge and its depth come from, and the axis of the panel along that edge. */
  readonly by: { readonly at: Path; readonly depth: Path; readonly axis: 0 | 1 };
}

/** An opening through a panel that is no round hole: counter-clockwise, in the panel's frame, mm. */
export interface Cutout {
  readonly loop: Loop;
  /** The entry of the job that asks for it; it is named where the opening cannot be. */
  readonly by: Path;
}

/** A place marked on a panel, in the panel's frame, mm. With a hole it is cut there too. */
export interface Mark {
  readonly kind: string;
  readonly at: Point;
  readonly joint: string;
  /** Diameter of the hole; null for a mark on whole metal. */
  readonly hole: number | null;
}

/** A face of a panel: the marked one, z = T, or the unmarked one, z = 0. */
export type Face = 'marked' | 'unmarked';

/** Where another part may join: faces it can lie against, and how it stands there. */
export interface Site {
  readonly name: string;
  /** Faces that fasteners may go through. */
  readonly faces: readonly { readonly panel: string; readonly face: Face }[];
  readonly seat: Seat;
  /** Free width where a part drops in between walls, or width of the part that does; null where nothing does. mm */
  readonly width: number | null;
}

/**
 * How parts stand at a site, in a panel's frame: the point the other part's own point comes to (also beyond the
 * panel's edge), where it looks, and the direction that stands upright with the other part's.
 */
export interface Seat {
  readonly panel: string;
  /** A face, or a direction in the panel's plane: out of an edge, across a slot. */
  readonly looks: Face | Point;
  readonly at: Point;
  readonly up: Point;
  /** Off the face, mm, or up to the top of the formed part; over the unmarked face where the seat looks along the plane. */
  readonly lift: number | 'top';
}

/** A flat region of the part, as authored. */
export interface Panel {
  readonly id: string;
  readonly outline: Outline;
  readonly bend: Bend | null;
  readonly holes: readonly Hole[];
  readonly slots: readonly Slot[];
  readonly cutouts: readonly Cutout[];
  /** Lines to scribe on it, in its frame: a cross-break, where something will stand. */
  readonly scribes: readonly (readonly [Point, Point])[];
  readonly marks: readonly Mark[];
  /** Parameters its extent along x and y comes from, in the family's words; [] where nobody said. */
  readonly by: readonly [x: Path, y: Path];
}

/** Finish these corners of a panel this way. */
export interface CornerRequest {
  readonly panel: string;
  readonly style: CornerStyle;
  /** The panels there were: what stands at the end of one is a tab of the same author. */
  readonly there: readonly Panel[];
}

/** A finished size the author asked for, to be found again on the formed part and shown on its picture. */
export interface Asked {
  /** Path of the parameter in the family's words, `hem.length`. */
  readonly name: string;
  readonly value: number;
  /** Measured as an extent along this axis of the first panel's frame, z across it. */
  readonly axis: 'x' | 'y' | 'z';
  readonly over: Measured;
}

/**
 * What a size is measured over: all of the part, some panels with their bends (or these bends), single edges, the
 * mould lines of bends, where the outside faces beside them would meet, or the clear distance between two panels.
 */
export type Measured =
  | 'all'
  | { readonly panels: readonly string[]; readonly bends?: readonly string[] }
  | { readonly edges: readonly (readonly [panel: string, edge: string])[] }
  | { readonly moulds: readonly string[] }
  | { readonly between: readonly [panel: string, panel: string] };

/** A part while verbs build it: panels in the order they were added, parents before children. */
export interface Draft {
  readonly sheet: Sheet;
  readonly panels: readonly Panel[];
  readonly corners: readonly CornerRequest[];
  readonly asked: readonly Asked[];
  readonly sites: readonly Site[];
  /** What no sheet can be folded to, found by the verbs. */
  readonly refused: readonly Refusal[];
}

/**
 * A verb applied to its arguments: takes a draft, gives the next one. `N` are the names of parameters it speaks of, so
 * that a family that misspells one does not compile.
 */
export interface Step<N extends string = string> {
  (draft: Draft): Draft;
  /** Carries the type only. */
  named?(name: N): void;
}
