import type { Remark } from '../errors/finding.js';
import type { Source } from '../errors/source.js';
import { inRange, ROOM, SIZE } from '../schema/in-range.js';
import type { Gives, ParamKit } from '../schema/kit.js';
import type { Material } from '../stock/materials.js';
import { frozen } from '../units/frozen.js';
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

/** What a fastener that is set stands out by, as round bodies on the outer faces. mm */
export interface FastenerEnds {
  readonly head: { readonly diameter: number; readonly height: number };
  readonly tail: { readonly diameter: number; readonly height: number };
}

/** Count and pitch a job may ask for; a kind may add its own values. */
export interface FastenerAsk {
  readonly count: number | null;
  readonly pitch: number | null;
}

/** What fasteners are set with. */
export type FastenerTool =
  | 'drill'
  | 'file'
  | 'hammer'
  | 'mallet'
  | 'spot-welder'
  | 'welder'
  | 'rivet-gun'
  | 'pliers'
  | 'screwdriver'
  | 'eyes'
  | 'gloves';

/** Words for a kind of one's own; the built-in ones have theirs in every language. */
export interface FastenerWords {
  /** In the middle of a sentence. */
  readonly one: string;
  readonly more: string;
  /** How one is tried on scrap, and what a good one looks like: whole sentences. */
  readonly trial: readonly string[];
}

/**
 * What is known of a kind before any joint. Tools, cautions, checks and words follow from it, never from its name.
 * Plain data: it goes where a plan goes.
 */
export interface FastenerFacts {
  /** `through`: it stands in a hole in every sheet; `filled`: one in the outer sheet is welded shut; `none`. */
  readonly hole: 'through' | 'filled' | 'none';
  readonly heat: 'resistance' | 'arc' | 'none';
  /** `blind`: drill and length are those of the tables by its `diameter`, and its mandrel snaps off. */
  readonly rivet: 'blind' | 'none';
  readonly tools: readonly FastenerTool[];
  readonly words?: FastenerWords;
}

/** A kind as plans, operations and words know it: its name and what is known of it. */
export type KnownFastener = Pick<FastenerKind, 'name' | 'facts'>;

/** A way of fastening sheets. One file a kind, listed in `kinds.ts`. */
export interface FastenerKind<Ask extends FastenerAsk = FastenerAsk, N extends string = string> {
  /** Name in a job file. */
  readonly name: N;
  readonly facts: FastenerFacts;
  /** Schemas of values a joint may give beside count and pitch. */
  readonly options: (kit: ParamKit) => {
    readonly [K in Exclude<keyof Ask, keyof FastenerAsk>]-?: Gives<Ask[K]>;
  };
  /**
   * What it needs of its place in a stack.
   * @param layers sheets that lie on each other where it goes: more than the stack where a hem or tab lies there too
   */
  readonly needs: (stack: readonly StackSheet[], ask: Ask, layers: number) => FastenerNeeds;
  /** What stands out on either side once it is set; left out where nothing does. */
  readonly ends?: (ask: Ask) => FastenerEnds;
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
  const { name, facts, ...methods } = kind;
  const needs: typeof kind.needs = (...place) => soundNeeds(name, kind.needs(...place));
  return withMethods({ name, facts: frozen(facts) }, { ...methods, needs }) as unknown as NamedFastenerKind<
    N,
    Ask
  >;
}

/** Needs that a place can be looked for with. @throws JobError `code-unsound` */
function soundNeeds(name: string, needs: FastenerNeeds): FastenerNeeds {
  for (const key of ['edge', 'pitch', 'usualPitch', 'bend'] as const)
    inRange(needs[key], ROOM, () => `${key} that a ${name} needs`, 'fastener');
  for (const hole of needs.holes)
    if (hole !== null) inRange(hole, SIZE, () => `hole that a ${name} needs`, 'fastener');
  return needs;
}

/** Thickness of the whole stack, mm. */
export const stackThickness = (stack: readonly StackSheet[]): number =>
  stack.reduce((s, x) => s + x.thickness, 0);

/** Thinnest and thickest sheet of a stack, mm. */
export function extremes(stack: readonly StackSheet[]): readonly [number, number] {
  const all = stack.map((s) => s.thickness);
  return [Math.min(...all), Math.max(...all)];
}
