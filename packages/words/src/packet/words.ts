import type { KnownFastener } from '@tinwright/core/family';
import type { ReasonName, ToolName } from '@tinwright/shop';

/** Cautions there are; which of them apply is the job's business. */
export type CautionName =
  | 'edges'
  | 'burr-rotating'
  | 'eyes'
  | 'shear'
  | 'leaf-brake'
  | 'press-brake'
  | 'vise'
  | 'resistance-weld'
  | 'implants'
  | 'arc'
  | 'fire'
  | 'air'
  | 'zinc'
  | 'chromium'
  | 'table'
  | 'mandrels'
  | 'object'
  | 'food'
  | 'food-zinc'
  | 'pupils'
  | 'rules';

/** Between which faces a finished size is measured. */
export type SizeSide = 'inside' | 'outside' | 'mould' | 'flat';

/** True for a section that is in the packet. */
export type Has = (
  section: 'cuts' | 'plans' | 'operations' | 'joints' | 'inspection' | 'templates' | 'worksheets',
) => boolean;

/** A caution in words: where the work is, what can hurt and what to do, and who says so. */
export interface CautionWords {
  readonly where: string;
  readonly text: string;
  readonly source: string;
}

/** A title and what to do, in plain sentences: what is the same for every part in lines of its own. */
export interface OperationText {
  readonly title: string;
  readonly lines: readonly string[];
}

/** A strip bent to try the metal, ready to print. */
export interface TrialFacts {
  readonly thickness: string;
  readonly radius: string;
  readonly length: string;
  readonly width: string;
  /** Of a bend of 90 degrees; null where the job has none. */
  readonly deduction: string | null;
  /** Whether plans take deductions off, or are laid out at nominal sizes. */
  readonly laidOut: 'compensated' | 'nominal';
}

/** Bought parts of one row, ready to print. */
export interface FitFacts {
  readonly name: string;
  readonly what: string;
  readonly count: number;
  readonly pieces: readonly string[];
  readonly fastener: KnownFastener | null;
  readonly opens: number | null;
}

/** Pieces put together, ready to print. */
export interface JointFacts {
  readonly joint: string;
  readonly from: string;
  readonly to: string;
  readonly count: number;
  readonly clearance: string;
}

/** Everything a packet says besides plans and templates, in one language. Sizes come in as they are printed. */
export interface PacketWords {
  readonly page: (n: number, of: number) => string;
  readonly packet: (job: string) => string;
  readonly sections: Readonly<
    Record<
      | 'cover'
      | 'cautions'
      | 'cuts'
      | 'plans'
      | 'operations'
      | 'joints'
      | 'inspection'
      | 'templates'
      | 'worksheets'
      | 'answers',
      string
    >
  >;
  readonly plan: (part: string) => string;
  readonly template: (part: string) => string;
  readonly contents: string;
  readonly contentsPage: string;
  readonly cover: {
    /** What all sets take together. */
    readonly totals: (facts: {
      readonly sets: number;
      readonly blanks: number;
      readonly mass: string;
      readonly fasteners: readonly (readonly [count: number, name: string])[];
      /** Of bending at the machines; null where no order was found. */
      readonly minutes: number | null;
    }) => string;
    readonly picture: string;
    readonly pictureAlt: (job: string, pieces: string) => string;
    readonly partAlt: (part: string) => string;
    readonly parts: string;
    readonly columns: Readonly<
      Record<'letter' | 'part' | 'what' | 'make' | 'stock' | 'blank' | 'mass', string>
    >;
    readonly mass: (text: string) => string;
    /** @param has sections that are in the packet */
    readonly sets: (count: number, has: Has) => string;
    readonly start: (has: Has) => string;
  };
  readonly cautions: {
    readonly columns: Readonly<Record<'where' | 'what', string>>;
    readonly all: Readonly<Record<CautionName, CautionWords>>;
    readonly load: { readonly question: string; readonly answer: string };
    readonly findings: string;
    readonly findingColumns: Readonly<Record<'part' | 'what' | 'fix', string>>;
  };
  readonly cuts: {
    readonly heading: string;
    readonly columns: Readonly<
      Record<'part' | 'pieces' | 'blank' | 'diagonal' | 'stock' | 'mass' | 'done', string>
    >;
    /** @param has sections that are in the packet */
    readonly notes: (has: Has) => readonly string[];
    /** What all blanks of a sheet take. */
    readonly stock: (sheet: string, blanks: number, area: string, mass: string) => string;
  };
  readonly operations: {
    readonly shop: (name: string, assumed: boolean) => string;
    readonly found: (parts: string) => string;
    readonly usual: (parts: string) => string;
    /** @param helps each of what would make it possible; empty where nothing that was tried does */
    readonly impossible: (part: string, reasons: string, helps: readonly string[]) => string;
    readonly tools: string;
    readonly toolNames: Readonly<Record<ToolName, string>>;
    readonly reasons: Readonly<Record<ReasonName, string>>;
    readonly why: (text: string) => string;
    readonly with: (tools: string) => string;
    readonly glossary: string;
    /** What is set on a leaf brake, where one bends. */
    readonly leafTerms: string;
    /** The picture of the directions: how the sheet lies before a person. */
    readonly directions: Readonly<Record<'heading' | 'alt' | 'face' | 'datum' | 'you' | 'note', string>>;
    readonly heading: string;
    /** How pictures of bends are read. */
    readonly pictures: string;
    /** Heading over what helps to read the plans. */
    readonly plans: string;
    /** Done as an operation before it, by its number. */
    readonly asBefore: (number: number) => string;
    /** Done again the same, by the numbers of these operations. */
    readonly again: (numbers: readonly number[]) => string;
    readonly trialBend: (facts: TrialFacts, unit: string) => OperationText;
    readonly shear: (
      part: string,
      quantity: number,
      x: string,
      y: string,
      diagonal: string,
      unit: string,
      how: 'numbered' | 'free',
    ) => OperationText;
    readonly deburr: (part: string) => OperationText;
    /** @param noted there is something to know about the part, on the sheet of cautions */
    readonly mark: (part: string, noted: boolean) => OperationText;
    readonly cutOut: (part: string, openings: number) => OperationText;
    readonly drill: (
      part: string,
      holes: readonly {
        readonly count: number;
        readonly diameter: string;
        readonly purpose: string;
        /** The drill to take where it is another size; '' where not. */
        readonly drill: string;
        readonly firstOnly: boolean;
      }[],
      unit: string,
    ) => OperationText;
    readonly form: (
      part: string,
      louvre: {
        readonly flaps: number;
        readonly side: 'up' | 'down';
        readonly height: string;
        readonly angle: number;
      },
      unit: string,
    ) => OperationText;
    /** @param sizes to measure; null where an inspection sheet has them */
    readonly check: (
      part: string,
      bent: boolean,
      sizes: readonly string[] | null,
      unit: string,
    ) => OperationText;
    readonly measure: (
      part: string,
      fit: {
        readonly size: string | null;
        readonly own: string | null;
        readonly between: readonly [string, string] | null;
        readonly planned: string;
        /** The size that it follows: of which part, in the words of its family; null where the parts only meet. */
        readonly follows: { readonly part: string; readonly what: string } | null;
        /** Where the part goes over what is measured, its largest size counts. */
        readonly over: boolean;
      },
      unit: string,
    ) => OperationText;
    readonly trialJoint: (fastener: KnownFastener) => OperationText;
    /** @param fastener what will hold them; null for what only stands in place */
    readonly place: (
      joints: readonly JointFacts[],
      fastener: KnownFastener | null,
      unit: string,
    ) => OperationText;
    readonly fit: (bought: FitFacts) => OperationText;
    readonly first: (fastener: KnownFastener, joints: readonly JointFacts[]) => OperationText;
    readonly rest: (fastener: KnownFastener, joints: readonly JointFacts[]) => OperationText;
    readonly finish: OperationText;
    readonly inspect: OperationText;
  };
  readonly bought: {
    readonly heading: string;
    readonly columns: Readonly<Record<'letter' | 'part' | 'what' | 'count' | 'size' | 'on' | 'by', string>>;
    readonly open: (degrees: string) => string;
  };
  readonly joints: {
    readonly heading: string;
    readonly columns: Readonly<
      Record<'joint' | 'pieces' | 'by' | 'count' | 'pitch' | 'hole' | 'clearance', string>
    >;
    readonly placed: string;
    readonly pictureAlt: (job: string) => string;
    readonly picture: string;
    readonly rules: string;
    readonly ruleColumns: Readonly<Record<'by' | 'edge' | 'pitch' | 'bend', string>>;
    readonly drill: (rivet: string, drill: string) => string;
    readonly grip: (stack: string) => string;
    readonly by: (sources: string) => string;
    readonly notes: readonly string[];
  };
  readonly inspection: {
    readonly heading: (part: string, quantity: number) => string;
    readonly columns: Readonly<Record<'what' | 'nominal' | 'limit', string>>;
    readonly measured: (n: number, of: number) => string;
    /** Between which faces a size is measured. */
    readonly sides: Readonly<Record<SizeSide, string>>;
    readonly blankX: string;
    readonly blankY: string;
    readonly overall: Readonly<Record<'x' | 'y' | 'z', string>>;
    readonly angle: (numbers: string) => string;
    readonly object: string;
    readonly notes: (cut: string, bent: string) => readonly string[];
    readonly sign: string;
  };
  readonly worksheet: {
    readonly title: (part: string) => string;
    /** At the foot: how many are to be printed, one a set. */
    readonly copies: (sets: number) => string;
    readonly heading: string;
    readonly name: string;
    readonly ask: (letters: string, unit: string) => string;
    readonly datum: string;
    readonly bends: readonly string[];
    readonly columns: Readonly<Record<'letter' | 'working' | 'size', string>>;
    readonly answerColumns: Readonly<Record<'part' | 'letter' | 'what' | 'size', string>>;
    readonly bendLine: (numbers: string) => string;
    readonly edge: string;
    readonly answersNote: string;
  };
}
