import type { BendStep } from '@tinwright/shop';

/** A piece of a machine that is drawn beside the part. */
export type DrawnTool =
  | 'fingers'
  | 'beam'
  | 'bed'
  | 'leaf'
  | 'punch'
  | 'ram'
  | 'die'
  | 'gauge'
  | 'bar'
  | 'table'
  | 'jaw';

/** Everything step pictures say, in one language. Sizes come in as they are printed, with their unit. */
export interface StepWords {
  readonly language: string;
  readonly title: (part: string, n: number, of: number) => string;
  /** What is done: `bend north to 90°`. */
  readonly action: (action: BendStep['action'], bends: readonly string[], angle: string) => string;
  readonly alt: (what: string) => string;
  readonly before: string;
  readonly after: string;
  /** After either of these: scale and side it is seen from. */
  readonly seen: (scale: string) => string;
  readonly detail: (scale: string) => string;
  readonly lying: string;
  readonly held: (panel: string, step: BendStep) => string;
  readonly turns: (panel: string, step: BendStep) => string;
  readonly tools: Readonly<Record<DrawnTool, string>>;
  readonly setBackHere: (size: string) => string;
  readonly sightHere: string;
  readonly openingHere: (size: string) => string;
  readonly compass: readonly string[];
  readonly about: (compass: string) => string;
  /** Said first where the part has to be tilted in under the jaw. */
  readonly hook: string;
  readonly how: Readonly<Record<string, (h: How) => string>>;
  readonly rows: Readonly<Record<RowName, string>>;
  readonly cells: {
    readonly machine: (kind: BendStep['machine'], name: string) => string;
    readonly held: (panel: string, bends: readonly string[]) => string;
    readonly face: (face: 'marked' | 'unmarked', kind: BendStep['machine'], flipped: boolean) => string;
    /** Which side of the pattern lies towards the operator, in a vise up, and how far it was turned for it. */
    readonly towards: (compass: string, turned: number | null) => string;
    /** Towards the bend, or back over what is held. */
    readonly sight: (offset: string, panel: string, towards: 'bend' | 'held') => string;
    readonly tangentIsSight: (panel: string) => string;
    readonly stop: (size: string) => string;
    readonly noStop: string;
    readonly angle: (set: string, angle: string) => string;
    /** An angle that is measured with the load taken off. */
    readonly unloaded: (angle: string) => string;
    readonly allTools: string;
    readonly tools: (pieces: readonly string[], from: string, side: 'in' | 'out', gap: string) => string;
    readonly unit: (size: string) => string;
    readonly force: (force: string) => string;
    readonly gauge: (size: string) => string;
    readonly noGauge: string;
    readonly gap: (size: string) => string;
  };
  readonly caution: Readonly<Record<BendStep['machine'], string>>;
}

/** Rows of the table of what to set. */
export type RowName =
  | 'machine'
  | 'held'
  | 'up'
  | 'towards'
  | 'upright'
  | 'sight'
  | 'stop'
  | 'setBack'
  | 'angle'
  | 'fingers'
  | 'punch'
  | 'die'
  | 'tools'
  | 'force'
  | 'gauge'
  | 'gap';

/** What a sentence on the handling needs. */
export interface How {
  readonly held: string;
  readonly bends: readonly string[];
  readonly set: string;
  readonly angle: string;
}
