import type { BendStep } from '@tinwright/shop';
import type { Language } from '../language.js';

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
  | 'stop'
  | 'bar'
  | 'table'
  | 'bench'
  | 'mallet'
  | 'jaw'
  | 'block'
  | 'batten';

/** How an edge is rolled: what each of three pictures shows, the scale told behind it. */
export interface RolledWords {
  readonly stages: readonly [string, string, string];
  readonly core: string;
}

/** Everything step pictures say, in one language. Sizes come in as they are printed, with their unit. */
export interface StepWords {
  readonly language: Language;
  readonly title: (part: string, n: number, of: number) => string;
  readonly alt: (what: string) => string;
  readonly before: string;
  readonly after: string;
  /** After either of these: scale and side it is seen from. */
  readonly seen: (scale: string) => string;
  readonly detail: (scale: string) => string;
  readonly lying: string;
  /** Over the same picture where what thick and hatched mean is told elsewhere. */
  readonly lies: string;
  readonly held: (panel: string, step: BendStep) => string;
  readonly turns: (panel: string, step: BendStep) => string;
  readonly tools: Readonly<Record<DrawnTool, string>>;
  /** An edge rolled round a wire, or round a rod that is drawn out again: its stages, and what it is rolled round. */
  readonly rolled: Readonly<Record<'wired' | 'curl', RolledWords>>;
  readonly setBackHere: (size: string) => string;
  readonly sightHere: string;
  readonly openingHere: (size: string) => string;
  /** Over a row of tools, each edge told from an end of the bend. */
  readonly row: (tools: 'fingers' | 'punch', end: 'left' | 'right', unit: string) => string;
  readonly caution: Readonly<Record<BendStep['machine'], string>>;
}
