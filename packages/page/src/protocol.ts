import type { Severity } from '@tinwright/core';
import type { Bytes } from '@tinwright/files';
import type { BendStep } from '@tinwright/shop';

/** Way to a value in a job. */
export type JobPath = readonly (string | number)[];

/** A value of a family as a field shows it. Lengths mm. */
export interface Field {
  readonly name: string;
  readonly words: string;
  readonly unit: 'mm' | 'deg' | '';
  readonly options: readonly string[];
  /** What an option is called where its own word is not for people. */
  readonly titles?: Readonly<Record<string, string>>;
  readonly least: number | null;
  readonly most: number | null;
  /** What stands for it when it is left out, as a job writes it; undefined when it may not be left out. */
  readonly fallback: unknown;
  readonly optional: boolean;
  readonly inner: readonly Field[];
  /** True for a list: `inner` has one field, that of its entries. */
  readonly list: boolean;
}

/** A family one may choose. */
export interface FamilyView {
  readonly name: string;
  readonly title: string;
  readonly example: Readonly<Record<string, unknown>>;
  readonly fields: readonly Field[];
}

/** What never changes while the page is open. */
export interface Catalogue {
  readonly families: readonly FamilyView[];
  readonly materials: readonly { readonly name: string; readonly title: string }[];
  /** What jobs can be written as, beside everything together. */
  readonly formats: readonly { readonly format: string; readonly words: string }[];
}

/** A bend as the flat pattern shows and explains it. mm, degrees */
export interface BendView {
  readonly id: string;
  readonly line: readonly (readonly [number, number])[];
  readonly zone: readonly (readonly [number, number])[];
  readonly angle: number;
  readonly direction: 'up' | 'down';
  readonly insideRadius: number;
  readonly allowance: number;
  readonly deduction: number;
}

/** One length of the sum that makes a blank. mm */
export interface TermView {
  readonly id: string;
  readonly kind: 'leg' | 'bend';
  readonly length: number;
}

/** A blank's dimension and what it is the sum of. */
export interface BlankView {
  readonly total: number;
  readonly terms: readonly TermView[];
}

/** A panel's size from bend line to bend line, or to its edge: what an outside size leaves after half of each deduction. mm */
export interface SpanView {
  readonly marked: number;
  readonly outside: number;
  readonly taken: number;
  readonly bends: readonly string[];
}

/** The flat pattern. mm, y up */
export interface FlatView {
  /** The cut file's drawing as SVG. */
  readonly svg: string;
  readonly size: readonly [number, number];
  readonly blank: readonly [BlankView, BlankView];
  readonly bends: readonly BendView[];
  readonly panels: readonly {
    readonly id: string;
    readonly shape: readonly (readonly [number, number])[];
    readonly spans: readonly SpanView[];
  }[];
}

/** A panel or a bend in space, three floats a corner. mm */
export interface Chunk {
  readonly id: string;
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  /** Ends of its edges. */
  readonly edges: Float32Array;
}

/** A formed part, or one on its way there. */
export interface SolidView {
  readonly chunks: readonly Chunk[];
}

/** The changed part, at once. */
export interface Quick {
  readonly name: string;
  readonly flat: FlatView;
  readonly solid: SolidView;
}

/** A part with its numbers. mm, kg, mm² */
export interface PartView extends Quick {
  readonly family: string;
  readonly quantity: number;
  readonly mass: number;
  readonly area: number;
  /** What of it can be measured. */
  readonly sizes: readonly { readonly name: string; readonly value: number }[];
  /** Its parameters in mm and degrees, defaults filled in. */
  readonly params: unknown;
}

/** Something a maker should know. */
export interface FindingView {
  readonly severity: Severity;
  /** That in the page's language. */
  readonly label: string;
  readonly part: string;
  readonly at: readonly [number, number] | null;
  /** Panels and bends it speaks of. */
  readonly names: readonly string[];
  /** Values that would pass, in mm or words, by their path in the part. */
  readonly changes: readonly { readonly path: JobPath; readonly value: number | string }[];
  readonly message: string;
  readonly fix: string;
  readonly source: string;
}

/** The job, computed. */
export interface JobView {
  readonly units: 'mm' | 'in';
  readonly name: string;
  readonly parts: readonly PartView[];
  /** Where pieces stand, column-major; null without joints. */
  readonly object:
    | readonly {
        readonly piece: string;
        readonly part: string;
        readonly matrix: readonly number[];
        /** Of a bought part; null for a piece of a part. */
        readonly solid: SolidView | null;
      }[]
    | null;
  readonly findings: readonly FindingView[];
  /** kg, mm², pieces and fasteners. */
  readonly totals: {
    readonly mass: number;
    readonly area: number;
    readonly pieces: number;
    readonly fasteners: number;
  };
}

/** Why a job cannot be. */
export interface ProblemView {
  readonly path: JobPath;
  readonly part: string;
  readonly message: string;
  readonly fix: string;
}

/** The order a part is bent in. */
export interface OrderView {
  readonly part: string;
  readonly status: 'optimal' | 'feasible' | 'infeasible';
  readonly steps: readonly BendStep[];
  /** Its time, and whether another order may take less. */
  readonly claim: string;
  /** A line for each step, and the machine's section as SVG. */
  readonly words: readonly string[];
  readonly sections: readonly string[];
  readonly reasons: readonly string[];
}

/** A size that is another after measuring. mm */
export interface ChangeView {
  readonly part: string;
  readonly dimension: string;
  readonly before: number;
  readonly after: number;
  readonly measured: boolean;
}

/** A page to print, as SVG, and the part it is of. */
export interface PrintView {
  readonly part: string;
  readonly paper: 'A4' | 'letter';
  readonly svg: string;
}

/** A file to save. */
export interface FileView {
  readonly path: string;
  readonly content: string | Bytes;
}

/** Questions and what answers each. */
export interface Answers {
  readonly catalogue: Catalogue;
  readonly quick: Quick | null;
  readonly job: JobView | { readonly problems: readonly ProblemView[] };
  /** Those of the job, with the values that would mend them: takes longer. */
  readonly findings: readonly FindingView[];
  /** A value with which the job can be, as the job writes it; null where none was found. */
  readonly mend: { readonly path: JobPath; readonly value: number } | null;
  readonly order: OrderView | null;
  readonly stage: SolidView | null;
  readonly refit:
    | { readonly changes: readonly ChangeView[]; readonly again: readonly string[] }
    | { readonly problems: readonly ProblemView[] };
  readonly files: readonly FileView[];
  readonly prints: readonly PrintView[];
  /** A part's picture, or the object's where it is null, as SVG: for browsers that draw nothing in space. */
  readonly picture: string | null;
}

/** What each question takes. */
export interface Asks {
  readonly catalogue: { readonly language: 'en' | 'de' };
  readonly quick: { readonly data: unknown; readonly part: string };
  readonly job: { readonly data: unknown; readonly language: 'en' | 'de' };
  readonly findings: { readonly data: unknown; readonly language: 'en' | 'de' };
  readonly mend: { readonly data: unknown; readonly path: JobPath };
  readonly order: { readonly data: unknown; readonly part: string; readonly language: 'en' | 'de' };
  readonly stage: {
    readonly data: unknown;
    readonly part: string;
    readonly steps: readonly BendStep[];
    /** Steps done; a fraction for one under way. */
    readonly at: number;
  };
  /** Sizes measured, beside those that the job holds already: changes are those from the job without any. */
  readonly refit: { readonly data: unknown; readonly measured: Readonly<Record<string, unknown>> };
  readonly files: {
    readonly data: unknown;
    /** Text of the job, to be kept with everything. */
    readonly text: string;
    readonly what: string;
    readonly part: string;
    readonly language: 'en' | 'de';
  };
  readonly prints: {
    readonly data: unknown;
    readonly language: 'en' | 'de';
    /** True where sizes are left out, for a class to find. */
    readonly worksheet: boolean;
  };
  readonly picture: { readonly data: unknown; readonly part: string | null };
}

/** A question on its way. */
export type Message = {
  readonly [K in keyof Asks]: { readonly id: number; readonly kind: K; readonly ask: Asks[K] };
}[keyof Asks];

/** A question that nobody waits for any more: one that goes on in slices ends. */
export interface Drop {
  readonly id: number;
  readonly kind: 'drop';
}

/** An answer on its way; `fault` when the program failed. */
export interface Reply {
  readonly id: number;
  readonly answer: unknown;
  readonly fault: string | null;
}
