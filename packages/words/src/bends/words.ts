import type { BendStep, BendStroke, Handling, PatternSide, PressSetting } from '@tinwright/shop';
import type { RowPlace } from './tool-rows.js';

/** What is set for a bend, in the order it is told. */
export type SettingName =
  | 'machine'
  | 'held'
  | 'face'
  | 'towards'
  | 'upright'
  | 'bars'
  | 'block'
  | 'sight'
  | 'stop'
  | 'setBack'
  | 'angle'
  | 'jaws'
  | 'fingers'
  | 'punch'
  | 'die'
  | 'tools'
  | 'force'
  | 'middle'
  | 'gauge'
  | 'hem'
  | 'radius';

/** What does a bend: a machine, or what holds the sheet for work by hand. */
export type Doer = BendStep['machine'] | NonNullable<BendStep['clamp']>;

/** What sentences on the handling need, ready to print. */
export interface HandFacts {
  readonly held: readonly string[];
  readonly bends: readonly string[];
  readonly set: string;
  readonly angle: string;
  /** What lies against a back gauge; null where nothing straight does. */
  readonly rear: BendStep['touches'];
  /** In front of a punch there is too little to hold. */
  readonly tipsBack: boolean;
  /** Strip that keeps the gap of an open hem; null for a hem pressed flat or left round. */
  readonly strip: string | null;
  readonly round: boolean;
  /** Inside of an edge rolled round nothing; null for one round a wire. */
  readonly rod: string | null;
}

/** Ways that have to be told; the others are seen at once. */
export type WayWords = Readonly<Partial<Record<NonNullable<BendStep['putIn']>, string>>>;

/** Where a row of tools stands at the end of the bend it is told from, its distance as it is printed. */
export interface ToldPlace extends Pick<RowPlace, 'from' | 'onward'> {
  readonly by: string;
  readonly end: 'inside' | 'past' | 'at';
}

/** What an order of bends claims of itself. Times are text already. */
export interface ClaimWords {
  readonly none: (proved: 'proved' | 'not-found') => string;
  readonly flat: string;
  readonly steps: (steps: number, time: string) => string;
  /** @param tools `kept` where only orders are meant that keep tools on as long as they serve */
  readonly best: (tools: 'any' | 'kept') => string;
  /** Another order may take so much less, as a share. */
  readonly less: (share: string, tools: 'any' | 'kept') => string;
}

/** How a bend is told in a language; sizes come in as they are printed, with their unit. */
export interface BendWords {
  /** @param angle null where a hem is folded as far as it goes */
  readonly action: (stroke: BendStroke, names: readonly string[], angle: string | null) => string;
  /** What hands do, by what does the bend; `none` where no order was found for a machine. */
  readonly how: Readonly<
    Record<BendStroke['action'], Readonly<Record<Doer | 'none', ((f: HandFacts) => string) | null>>>
  >;
  /** How the part comes under jaw or punch, and off it once bent. */
  readonly putIn: Readonly<Record<'jaw' | 'punch', WayWords>>;
  readonly takeOff: Readonly<Record<'jaw' | 'punch', WayWords>>;
  readonly byHand: string;
  readonly check: (square: boolean) => string;
  readonly bare: (size: string) => string;
  readonly claim: ClaimWords;
  readonly labels: Readonly<Record<SettingName, string>>;
  readonly sides: Readonly<Record<PatternSide, string>>;
  readonly values: {
    readonly held: (panels: readonly string[], beside: readonly string[]) => string;
    readonly face: (faceUp: BendStep['faceUp'], upright: 'upright' | 'lying', handling: Handling) => string;
    readonly towards: (side: string, roughly: 'roughly' | 'exactly', round: Handling['round']) => string;
    /** Off the bend line, towards the panel that is held or away from it; null for on it. */
    readonly sight: (off: string | null, way: 'towards' | 'away', panel: string) => string;
    /** Bars as long as the line. */
    readonly bars: (size: string) => string;
    readonly block: (size: string) => string;
    /** A punch by its name, where its hollow lies, and what stands at its ends. */
    readonly punch: (name: string, hollow: PressSetting['hollow'], horns: PressSetting['horns']) => string;
    /** A piece of a punch that is a horn. */
    readonly horn: (size: string) => string;
    readonly stop: (size: string, panel: string, by: 'edge' | 'outside') => string;
    /** Off the middle of the press. */
    readonly middle: (size: string, side: 'left' | 'right') => string;
    readonly gauge: (size: string, panel: string, by: 'edge' | 'outside') => string;
    readonly byLine: string;
    readonly angle: (set: string, angle: string) => string;
    /** An angle that is measured with the load taken off. */
    readonly unloaded: (angle: string) => string;
    readonly allTools: string;
    /** Pieces from the left, where their row stands, and how far apart they are; null for side by side. */
    readonly tools: (pieces: readonly string[], place: ToldPlace, gap: string | null) => string;
    readonly force: (force: string) => string;
    readonly hem: (kind: BendStroke['hem'], gap: string) => string;
    /** An inside radius that a machine makes in place of the one drawn. */
    readonly radius: (made: string, drawn: string) => string;
  };
}

/** How the reader reads sizes, angles and names of bends. */
export interface BendPrint {
  /** With its unit. */
  readonly size: (mm: number) => string;
  /** A piece of tool by its width, in the unit of the shop it stands in; as other sizes where left out. */
  readonly piece?: (mm: number) => string;
  /** Finer than a rule shows it. */
  readonly fine: (mm: number) => string;
  /** An angle with its unit. */
  readonly angle: (degrees: number) => string;
  /** A bend by its name. */
  readonly bend: (id: string) => string;
}

/** Something to set, with what it is called. */
export interface ToldSetting {
  readonly name: SettingName;
  readonly label: string;
  readonly text: string;
}
