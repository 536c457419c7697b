import type { Remark } from '../errors/finding.js';
import type { Source } from '../errors/source.js';
import type { Gives, ParamKit } from '../schema/kit.js';
import type { Material } from '../stock/materials.js';
import { withMethods } from '../units/with-methods.js';

/** A sheet a fastener goes through. Thickness mm. */
export interface StackSheet {
  readonly part: string;
  readonly thickness: number;
  readonly material: Material;
}

/** What a fastener needs of the place it stands in. mm */
export interface FastenerNeeds {
  /** Least distance of its centre from a free edge. */
  readonly edge: number;
  readonly edgeSource: readonly Source[];
  /** Least distance between centres. */
  readonly pitch: number;
  readonly pitchSource: readonly Source[];
  /** Distance between centres aimed at when the job gives neither count nor pitch. */
  readonly usualPitch: number;
  /** Least distance of its centre from a bend's tangent line: room for electrode, nose or head. */
  readonly bend: number;
  readonly bendSource: readonly Source[];
  /** Hole in each sheet of the stack; null where there is none. */
  readonly holes: readonly (number | null)[];
}

/** What is found where a joint's fasteners stand. */
export interface FastenerPlace {
  /** Sheets that lie on each other there, all pieces counted. */
  readonly layers: number;
  /** How far a tool's arms have to reach over the two pieces to the fastener furthest in, mm. */
  readonly reach: () => number;
}

/** Count and pitch a job may ask for; a kind may add its own values. */
export interface FastenerAsk {
  readonly count: number | null;
  readonly pitch: number | null;
}

/** A way of fastening sheets. One file a kind, listed in `kinds.ts`. */
export interface FastenerKind<Ask extends FastenerAsk = FastenerAsk, N extends string = string> {
  /** Name in a job file. */
  readonly name: N;
  /** Schemas of values a joint may give beside count and pitch. */
  readonly options: (kit: ParamKit) => {
    readonly [K in Exclude<keyof Ask, keyof FastenerAsk>]-?: Gives<Ask[K]>;
  };
  /**
   * What it needs of its place in a stack.
   * @param layers sheets that lie on each other where it goes: more than the stack where a hem or tab lies there too
   */
  readonly needs: (stack: readonly StackSheet[], ask: Ask, layers: number) => FastenerNeeds;
  /** What to know about such a stack before fastening it. */
  readonly remarks: (stack: readonly StackSheet[], ask: Ask, place: FastenerPlace) => readonly Remark[];
}

/** A kind with its own values' type put aside, as lists and jobs hold it. */
export interface AnyFastenerKind extends FastenerKind<never> {}

/** A kind that still knows its name and its values, so that joints with it are checked as they are typed. */
export interface NamedFastenerKind<N extends string, Ask extends FastenerAsk> extends AnyFastenerKind {
  readonly name: N;
  /** Carries the type only. */
  readonly ask?: Ask;
}

/** Keep a kind's own values together with what uses them. */
export function fastenerKind<const N extends string, Ask extends FastenerAsk>(
  kind: FastenerKind<Ask, N>,
): NamedFastenerKind<N, Ask> {
  const { name, ...methods } = kind;
  return withMethods({ name }, methods) as unknown as NamedFastenerKind<N, Ask>;
}

/** Thickness of the whole stack, mm. */
export const stackThickness = (stack: readonly StackSheet[]): number =>
  stack.reduce((s, x) => s + x.thickness, 0);

/** Thinnest and thickest sheet of a stack, mm. */
export function extremes(stack: readonly StackSheet[]): readonly [number, number] {
  const all = stack.map((s) => s.thickness);
  return [Math.min(...all), Math.max(...all)];
}
