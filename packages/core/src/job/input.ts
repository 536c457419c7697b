import type * as z from 'zod/mini';
import type { RULE_KINDS } from '../bending/kinds.js';
import type { CutoutInput } from '../cutouts/params.js';
import type { EdgeInput } from '../edges/params.js';
import type { AnyFamily } from '../families/family.js';
import type { BuiltInFamily } from '../families/index.js';
import type { hardware } from '../hardware/params.js';
import type { FASTENER_KINDS } from '../joining/kinds.js';
import type { LengthText, Size, Written } from '../schema/value.js';
import type { GaugeSystemName } from '../stock/gauges.js';
import type { MaterialName } from '../stock/materials.js';
import type { Unit } from '../units/length.js';

/** A sheet as a job writes it: its metal, and its thickness or gauge. */
export type StockInput = { readonly material: string } & (
  | { readonly thickness: Size; readonly gauge?: never }
  | {
      readonly gauge: number | { readonly system: GaugeSystemName; readonly number: number };
      readonly thickness?: never;
    }
);

/** What rows of stock share; metal and thickness are those of the job where they are left out. */
interface MetalInput {
  readonly name?: string;
  readonly material?: string;
  readonly thickness?: Size;
  /** How the rolling lines run; nobody minds if left out. */
  readonly grain?: 'x' | 'y';
  /** Of one sheet, or of a measure of it. */
  readonly price?:
    | number
    | { readonly per: 'sheet' | 'kg' | 'pound' | 'squareMetre' | 'squareFoot'; readonly amount: number };
  readonly trim?: TrimInput;
}

type TrimInput = Size | { readonly [edge in 'west' | 'east' | 'south' | 'north']?: Size };

/** What a job may say of the stock it is cut from. */
export interface RackInput {
  /** Full sheets, a size or more of it; as many as needed without a count. */
  readonly sheets?: readonly (
    | readonly [Size, Size]
    | (MetalInput & { readonly size: readonly [Size, Size]; readonly count?: number })
  )[];
  /** What earlier jobs left: a size, or corners once round. */
  readonly offcuts?: readonly (MetalInput &
    (
      | { readonly size: readonly [Size, Size]; readonly outline?: never }
      | { readonly outline: readonly (readonly [Size, Size])[]; readonly size?: never }
    ))[];
  readonly trim?: TrimInput;
  readonly kerf?: Size;
  readonly leastOffcut?: readonly [Size, Size];
}

type Rules = (typeof RULE_KINDS)[number];
type Constants<Shape> = keyof Shape extends never
  ? unknown
  : Shape extends z.core.$ZodLooseShape
    ? Readonly<z.output<z.ZodMiniObject<Shape>>>
    : never;
type RuleInput<K extends Rules> = K extends Rules
  ? { readonly rule: K['name']; readonly insideRadius?: Size } & Constants<K['constants']>
  : never;

/** A bend rule as a job writes it, its constants beside its name; the inside radius is one thickness if left out. */
export type BendingInput = RuleInput<Rules>;

/** What a part of any family may say beside its parameters. */
export interface PartHead {
  /** Letters, digits, - and _; files and joints go by it. */
  readonly name: string;
  /** Pieces; 1 if left out. */
  readonly quantity?: number;
  readonly note?: string;
  /** How the rolling lines shall run on its flat; nobody minds if left out. */
  readonly grain?: 'x' | 'y' | 'any';
  /** Its own sheet instead of the job's. */
  readonly stock?: StockInput;
  /** Its own bend rule instead of the job's. */
  readonly bending?: BendingInput;
  /** Edges of its panels finished by a fold. */
  readonly edges?: readonly EdgeInput[];
  /** Openings cut through its panels. */
  readonly cutouts?: readonly CutoutInput[];
}

/** The parameters of a family as a job writes them. */
export type ParamsInput<F extends AnyFamily> = Written<F['values']>;

/** A part of a job: its family's name tells which parameters stand beside it. */
export type PartInput<F extends AnyFamily = BuiltInFamily> = F extends AnyFamily
  ? PartHead & { readonly family: F['name'] } & ParamsInput<F>
  : never;

type Kinds = (typeof FASTENER_KINDS)[number];
type AskOf<K> = K extends { readonly ask?: infer A } ? NonNullable<A> : never;
type AskInput<A> = {
  readonly [N in keyof A]?: N extends 'count' ? number : Size;
};

/** How a joint is fastened: by its usual values, by some of one's own, or not at all. */
export type FasteningInput =
  | Kinds['name']
  | 'none'
  | { readonly [K in Kinds as K['name']]?: AskInput<AskOf<K>> };

/** A material of one's own. kg/m³, N/mm², GPa */
export interface MaterialInput {
  readonly name: string;
  readonly like: MaterialName;
  readonly title?: string;
  readonly density?: number;
  /** Least and greatest. */
  readonly tensile?: readonly [number, number];
  readonly yield?: number;
  readonly modulus?: number;
  readonly k?: number;
  /** Least inside radius by thickness: the next thicker row holds. */
  readonly leastRadius?: readonly { readonly thickness: Size; readonly radius: Size }[];
  readonly coating?: 'none' | 'zinc';
}

/** A length that may be negative. */
export type SignedSize = Size | `-${LengthText}`;

/** A joint of a job: two sites, `part.site`, and how they are fastened. */
export interface JointInput {
  readonly name: string;
  readonly from: `${string}.${string}`;
  readonly to: `${string}.${string}`;
  readonly by: FasteningInput;
  /** Where the second stands on the first, off the middle of the site: to its right, and upright. */
  readonly shift?: { readonly across?: SignedSize; readonly up?: SignedSize };
  /** Between the parts, away from the faces that touch; 0.2 mm if left out. */
  readonly clearance?: Size;
  /** Places of several pieces of `to` along the panel of `from`: their distances from an end of it, */
  readonly at?: Size | readonly Size[];
  /** or a row about its middle, so far apart; spread evenly if left out, */
  readonly every?: Size;
  /** of so many; as many as there are pieces if left out. */
  readonly count?: number;
  /** Edge of the panel that places are counted from; the left one of who looks at the face if left out. */
  readonly edge?: string;
}

type HardwareKinds = typeof hardware;
type HardwarePlace = { readonly [edge: string]: Size };

/** A row of bought parts, their sizes typed in, one at each place. */
export type HardwareInput = {
  [T in keyof HardwareKinds]: {
    readonly name: string;
    readonly type: T;
    /** The face it stands on, `part.site`, */
    readonly on: `${string}.${string}`;
    /** and that of the other part, for what joins two. */
    readonly and?: `${string}.${string}`;
    /** Off edges of the panel by their names; the middle of the panel if left out. */
    readonly at?: HardwarePlace | readonly HardwarePlace[];
    readonly turn?: number;
    /** What goes through its holes; nothing of the list if left out. */
    readonly by?: FasteningInput;
  } & Written<HardwareKinds[T]>;
}[keyof HardwareKinds];

/** What a job says beside its parts and joints. */
export interface JobHead {
  /** Unit of every length that does not carry its own. */
  readonly units: Unit;
  readonly name?: string;
  readonly note?: string;
  /** Materials of one's own; what a row leaves out is that of the one it is like. */
  readonly materials?: readonly MaterialInput[];
  /** The sheet of every part that names none of its own, and what there is to cut from. */
  readonly stock?: StockInput & RackInput;
  /** The bend rule of every part that names none of its own; k-factor, by the metal, if left out. */
  readonly bending?: BendingInput;
  /** What outlines are cut with; a table leaves no edge under its kerf, or under a least of its own. */
  readonly cutBy?: 'hand' | 'table' | { readonly table: { readonly leastEdge: Size } };
  /** Sizes measured on parts that are made, by `part.size`. */
  readonly measured?: { readonly [size: `${string}.${string}`]: Size };
}

/**
 * A job as data, as a YAML or JSON file holds it, each part checked by the parameters of its family as it is typed.
 * `F` are the families parts may name; the built-in ones by default.
 */
export interface JobInput<F extends AnyFamily = BuiltInFamily> extends JobHead {
  readonly parts: readonly PartInput<F>[];
  readonly joints?: readonly JointInput[];
  /** Bought parts on them. */
  readonly hardware?: readonly HardwareInput[];
  /** Rows that are laid over the job, each a job of its own. */
  readonly sizes?: readonly unknown[];
}

/**
 * What `readJob` takes: data whose type shows what it says is checked as it is typed; what a parser gives (`unknown`,
 * an object of no known keys) is checked when it is read.
 */
export type JobSource<D, F extends AnyFamily> = D extends { readonly units: unknown } ? JobInput<F> : D;
