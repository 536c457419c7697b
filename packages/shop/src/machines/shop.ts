import type { CutTool, Material, Point, SheetRow, Unit } from '@tinwright/core';
import type { Capacity } from './capacity.js';
import type { StripRow } from './strip-row.js';

/**
 * A leaf brake with fingers. mm, degrees. Sections are seen along the bend line: x forward to the operator from the
 * hinge, z up from the bed.
 */
export interface Brake {
  readonly name: string;
  /** Longest bend. */
  readonly length: number;
  readonly capacity: readonly Capacity[];
  /** Widths of the fingers in the rack. */
  readonly fingers: readonly number[];
  readonly finger: Finger;
  /** Clear height under the beam the fingers hang on, from the top of the sheet: the deepest box. */
  readonly clearHeight: number;
  /** From the tip of the fingers back to the front of the beam. */
  readonly beam: number;
  /** How far the jaw lifts. */
  readonly opening: number;
  readonly leaf: { readonly width: number; readonly stop: number };
  /** From the front edge of the bed to where it falls away. */
  readonly bed: number;
  /** Set-back of the fingers' tips in sheet thicknesses, least and most. */
  readonly setBack: readonly [number, number];
  /** Shortest flange the leaf holds. */
  readonly lowestFlange: number;
  /** Sheet that has to lie under the fingers, from their tips back. */
  readonly hold: number;
  /** Flange its capacity is rated with. */
  readonly ratedFlange: number;
  /** Uncovered stretches of a bend line that still come out straight: at its ends, and between two fingers. */
  readonly gaps: { readonly end: number; readonly inner: number };
  /** Degrees past the angle that have to be free, for springback. */
  readonly overbend: number;
  /** Furthest its rear stop goes behind the fingers' tips; null without one, where the line is gone by. */
  readonly rearStop: number | null;
  /** Height of the rear stop over the bed; null where it is not given: what stands up behind it is not held against it then. */
  readonly rearStopHeight: number | null;
}

/** Section of a finger, tip to the front. mm, degrees */
export interface Finger {
  /** From tip to heel along the sheet. */
  readonly foot: number;
  /** From the tip back to the front of the upright. */
  readonly upright: number;
  /** Between the underside and the face that rises from the tip. */
  readonly noseAngle: number;
  /** Of the tip's edge. */
  readonly noseRadius: number;
}

/** A punch or die as a section, seen along the bend line. mm */
export interface PressTool {
  readonly name: string;
  /** Closed outline: x across, 0 at the bend line; z up from the point of a punch, down from the top of a die. */
  readonly section: readonly Point[];
}

/** An upper tool. */
export interface Punch extends PressTool {
  /** Included angle of the tip, degrees. */
  readonly angle: number;
  readonly radius: number;
  /** Lengths there are; they stand side by side. */
  readonly lengths: readonly number[];
  /** End pieces that leave room over their feet; null without any. */
  readonly horns: Horns | null;
}

/**
 * A pair of end pieces, one for either end of what is mounted: over its foot each is cut back, so that a flange turned in
 * at the end of a bend finds room there. mm
 */
export interface Horns {
  /** Lengths along the line of the left one and of the right one, foot included. */
  readonly widths: readonly [number, number];
  /** How far the foot stands out past what is over it. */
  readonly reach: number;
  /** Height of the foot, and up to where the piece is cut back; both from the point. */
  readonly foot: number;
  readonly height: number;
}

/** A lower tool. */
export interface Die extends PressTool {
  /** Opening of the V. */
  readonly opening: number;
  /** Included angle of the V, degrees. */
  readonly angle: number;
  /** Comes in the lengths of the punch and stands only under it; else it is one long block. */
  readonly sectioned: boolean;
}

/** A back gauge: nearest and furthest place of its fingers behind the bend line. mm */
export interface BackGauge {
  readonly least: number;
  readonly most: number;
  readonly finger: GaugeFinger;
}

/** A finger of a back gauge, its front upright. mm */
export interface GaugeFinger {
  /** How far it stands over the top of the die, and hangs under it. */
  readonly over: number;
  readonly under: number;
  /** From its front back to what carries it, which is as deep as anything. */
  readonly length: number;
  /** Along the line. */
  readonly width: number;
}

/** A press brake. mm, kN */
export interface Press {
  readonly name: string;
  readonly length: number;
  readonly force: number;
  readonly punches: readonly Punch[];
  readonly dies: readonly Die[];
  /** The ram the punch hangs on: half its width, and its height over the tip. */
  readonly ram: { readonly half: number; readonly height: number };
  /** What the die stands on: half its width. */
  readonly bed: { readonly half: number };
  readonly backGauge: BackGauge;
  /** Uncovered stretches of a bend line that still come out straight: at its ends, and between two pieces. */
  readonly gaps: { readonly end: number; readonly inner: number };
  readonly overbend: number;
}

/** What a bend can be made with by hand where no machine reaches. mm */
export interface Vise {
  readonly name: string;
  /** Width of the jaws, with bars. */
  readonly jaws: number;
  /** How deep a flange goes into them. */
  readonly depth: number;
  /** Depth of the bars: this much beside the line is held, and has to be flat. */
  readonly grip: number;
  /** How thick a bar is across the sheet. */
  readonly bar: number;
  /** From the face of a jaw through to its back. */
  readonly jaw: number;
  /** From the top of the bars down to the bench. */
  readonly bench: number;
  readonly capacity: readonly Capacity[];
}

/** Pliers with wide jaws, for short flanges. mm */
export interface HandSeamer {
  readonly name: string;
  readonly width: number;
  readonly depth: number;
  /** How thick a jaw is. */
  readonly jaw: number;
  readonly capacity: readonly Capacity[];
}

/** A block over which a box is closed on the bench, sawn to the line. mm */
export interface FormerBlock {
  readonly name: string;
  /** Longest line it is made for. */
  readonly length: number;
  /** From its face back, on the sheet beside the line. */
  readonly width: number;
  /** Up to the batten across its top, which is as wide as anything. */
  readonly height: number;
  readonly capacity: readonly Capacity[];
}

/** A guillotine shear. mm */
export interface Shear {
  readonly name: string;
  readonly length: number;
  readonly capacity: readonly Capacity[];
  /** Furthest the rear stop goes; null without one. */
  readonly rearStop: number | null;
}

/** A spot welder. mm */
export interface SpotWelder {
  readonly name: string;
  readonly throat: number;
  readonly electrode: number;
  /** Thinnest and thickest single sheet. */
  readonly thickness: readonly [number, number];
}

/** A rivet gun. mm */
export interface Riveter {
  readonly name: string;
  readonly diameters: readonly number[];
  /** Diameter of its nose. */
  readonly nose: number;
}

/** A cutting table. mm */
export interface Table {
  readonly name: string;
  readonly process: 'laser' | 'plasma';
  readonly length: number;
  readonly width: number;
  readonly kerf: number;
  /** Smallest hole it cuts round. */
  readonly smallestHole: number;
}

/** What handling costs, seconds. Judgement: time your own. */
export interface Costs {
  readonly bend: number;
  /** To any next line. */
  readonly slide: number;
  readonly turn90: number;
  readonly turn180: number;
  readonly flip: number;
  /** Another stop angle. */
  readonly stop: number;
  /** Rear stop or back gauge set to another distance. */
  readonly gauge: number;
  /** A line scribed and brought under the tool by eye, where nothing lies against a stop. */
  readonly line: number;
  readonly setBack: number;
  /** Fingers or tools are changed or mounted: once, and for each one taken or added, a die too. */
  readonly tools: number;
  readonly tool: number;
  readonly hook: number;
  readonly flatten: number;
  /** The larger side swings, with the leaf or by hand, or is carried behind a punch. */
  readonly swing: number;
  /** A bend by hand, 100 mm long or shorter; longer ones in proportion. */
  readonly hand: number;
  /** A flange bent with the hand seamer. */
  readonly seamer: number;
  /** A bend over a former block, 100 mm long or shorter; longer ones in proportion. */
  readonly former: number;
  /** An end that fingers or tools do not cover, dressed by hand. */
  readonly dress: number;
  /** To another machine. */
  readonly walk: number;
}

/** What cutting and joining take: estimates from judgement until a shop has timed its own. */
export interface Rates {
  /** Seconds for a stroke of the shear, and to set its stop. */
  readonly stroke: number;
  readonly setting: number;
  /** mm of cut a minute on the table. */
  readonly speed: number;
  /** Seconds for a pierce, and for a fastener. */
  readonly pierce: number;
  readonly fastener: number;
}

/** Room kept off every tool, for sheet that is not quite flat and hands that are not quite still. */
export interface Margin {
  readonly least: number;
  /** Of the longest size of the part, on top. */
  readonly share: number;
}

/** How sources that disagree are taken: the stricter, or the usual one. */
export type Profile = 'strict' | 'usual';

/** The machines and limits of one workshop. Lengths mm. */
export interface Shop {
  readonly name: string;
  readonly note: string;
  readonly units: Unit;
  readonly profile: Profile;
  /** What outlines are cut with where a job does not say; null for no usual way. */
  readonly cutBy: CutTool | null;
  readonly brake: Brake | null;
  /** Further leaf brakes: a straight one beside one with fingers, or one with other fingers. Each has a name of its own. */
  readonly brakes: readonly Brake[];
  readonly press: Press | null;
  readonly vise: Vise | null;
  readonly handSeamer: HandSeamer | null;
  readonly formerBlock: FormerBlock | null;
  readonly shear: Shear | null;
  readonly spotWelder: SpotWelder | null;
  readonly riveter: Riveter | null;
  readonly table: Table | null;
  /** Sheets in the rack: length and width. */
  readonly sheets: readonly (readonly [number, number])[];
  /** The same with all the file says of them, where it says more than sizes of any; a row without metal is of every one. */
  readonly stock: readonly SheetRow[];
  readonly costs: Costs;
  readonly rates: Rates;
  /** Kept off every tool: a length, and a share of the part's longest size. */
  readonly margin: Margin;
  /** Materials of the shop's own, beside the built-in ones. */
  readonly materials: readonly Material[];
  /** Bends measured on the shop's own metal. */
  readonly strips: readonly StripRow[];
  /** Values the file does not give, `brake.clearHeight`: they are usual ones, by judgement or from memory. */
  readonly assumed: readonly string[];
}
