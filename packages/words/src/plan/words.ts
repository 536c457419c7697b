import type { FlatBend, ToleranceClass } from '@tinwright/core';
import type { FastenerWords } from '@tinwright/core/family';
import type { DimsName } from '../dims-name.js';
import type { Language } from '../language.js';

/** Everything plans and templates say, in one language. Sizes come in as they are printed, without their unit. */
export interface PlanWords {
  readonly language: Language;
  readonly up: string;
  readonly down: string;
  readonly hems: Readonly<Record<NonNullable<FlatBend['hem']>, string>>;
  /** @param words those of a kind of one's own, where they are at hand */
  readonly fastener: (kind: string, words?: FastenerWords) => string;
  readonly hole: (count: number, diameter: string, purpose: string) => string;
  readonly mark: (count: number, kind: string) => string;
  readonly patternAlt: (part: string) => string;
  readonly details: string;
  readonly detail: (letter: string, scale: string, alike: number) => string;
  readonly detailAlt: (letter: string) => string;
  readonly formedAlt: (part: string) => string;
  readonly front: string;
  readonly top: string;
  readonly side: string;
  readonly isometric: string;
  readonly title: (part: string, job: string) => string;
  readonly job: (name: string) => string;
  readonly stock: (material: string, thickness: string, x: string, y: string, unit: string) => string;
  readonly make: (quantity: number, mass: string) => string;
  readonly sheet: (n: number, of: number) => string;
  readonly patternScale: (scale: string) => string;
  readonly viewScale: (scale: string) => string;
  readonly measure: (length: string, unit: string) => string;
  /** @param finer whether some are printed to a finer step */
  readonly sizes: (dims: DimsName, finer: 'finer too' | 'no finer') => string;
  /** What rounding costs where it matters: how many sizes, and by how much at most. */
  readonly rounding: (count: number, most: string, unit: string) => string;
  readonly tolerance: (
    of: ToleranceClass,
    steps: readonly (readonly [limit: string, to: string])[],
    unit: string,
  ) => string;
  readonly caution: string;
  readonly cautionShort: string;
  readonly cautionZinc: string;
  readonly formed: string;
  readonly marking: {
    readonly heading: string;
    readonly columns: Readonly<Record<'number' | 'edge' | 'offset' | 'what' | 'reach' | 'face', string>>;
    readonly left: string;
    readonly bottom: string;
    readonly blank: (x: string, y: string) => string;
    readonly square: (diagonal: string) => string;
    readonly cut: string;
    readonly scribe: string;
    readonly bend: (numbers: readonly string[], direction: string, angle: string, hem: string) => string;
    readonly sight: (number: string) => string;
    readonly relief: (diameter: string) => string;
    readonly arc: (radius: string) => string;
    readonly span: (from: string, to: string) => string;
    readonly at: (places: readonly string[]) => string;
    readonly point: (x: string, y: string) => string;
    readonly slant: (from: string, to: string) => string;
    readonly face: string;
    readonly inside: string;
    readonly outside: string;
  };
  /** The marking program: settings of rule and square. */
  readonly program: {
    readonly heading: string;
    readonly columns: Readonly<Record<'number' | 'set' | 'from' | 'what' | 'where', string>>;
    readonly edges: Readonly<Record<'west' | 'east' | 'south' | 'north', string>>;
    readonly long: string;
    readonly ends: string;
    readonly all: string;
    /** Lines across and along: those set from the left or right edge, from the near or far one. */
    readonly lines: readonly [string, string];
    readonly whole: string;
    readonly both: string;
    /** Lines of which one of each is told: how many there are, and whether they are mirrored left to right and near to far. */
    readonly count: (all: number, axes: readonly [boolean, boolean]) => string;
    readonly points: (from: string, to: string) => string;
    readonly at: (places: readonly string[]) => string;
    readonly hole: string;
    readonly mirrored: string;
  };
  readonly bends: {
    readonly heading: (unit: string) => string;
    readonly columns: Readonly<
      Record<'panel' | 'bend' | 'radius' | 'allowance' | 'deduction' | 'set', string>
    >;
  };
  readonly finished: {
    readonly heading: (unit: string) => string;
    readonly columns: Readonly<Record<'size' | 'what' | 'formed', string>>;
  };
  readonly rounded: {
    readonly heading: string;
    readonly columns: Readonly<Record<'printed' | 'exact' | 'off', string>>;
    readonly over: (count: number) => string;
  };
  readonly notes: {
    readonly heading: string;
    readonly cuts: string;
    readonly bends: string;
    readonly blank: string;
    readonly datum: string;
    readonly pencil: string;
    readonly strip: string;
    readonly nominal: string;
  };
  readonly template: {
    readonly title: (part: string, job: string) => string;
    readonly map: string;
    readonly mapAlt: (part: string, tiles: number) => string;
    readonly tileAlt: (part: string, tile: string) => string;
    readonly page: (part: string, tile: string) => string;
    readonly make: (quantity: number) => string;
    readonly printing: string;
    readonly gluing: string;
    readonly using: string;
    /** Where a template carries sight lines. */
    readonly sights: string;
    readonly square: (length: string, unit: string) => string;
    readonly cut: string;
    readonly glue: (tile: string) => string;
  };
}
