import { type FindingsOf, type Remark, type RemarkData, remarkOf, type Severity } from './finding.js';

/** A panel, or a bend, of a piece of the object. */
export interface Spot {
  readonly piece: string;
  readonly panel: string;
  readonly what: 'panel' | 'bend';
}

/** What the words of every finding of the core need besides value and limit, by its code. Lengths mm. */
export interface CoreFindings {
  readonly 'radius-small': { readonly material: string; readonly thickness: number };
  readonly 'no-compensation': object;
  /** How many edges are shorter than the table cuts sharp. */
  readonly 'edge-short': { readonly count: number };
  readonly 'measured-far': { readonly size: string; readonly measured: number; readonly computed: number };
  /** The first of a part, and how many more of it. */
  readonly 'piece-loose': { readonly piece: string; readonly more: number };
  readonly 'pieces-differ': { readonly quantity: number };
  readonly 'loop-open': {
    readonly ends: readonly [string, string];
    /** How the joint fails: degrees, then mm; null where it does not in this way. */
    readonly tilt: number | null;
    readonly into: number | null;
    readonly gap: number | null;
    readonly aside: number | null;
  };
  readonly 'joint-empty': { readonly ends: readonly [string, string] };
  readonly 'joint-overhang': { readonly panel: string; readonly piece: string; readonly over: string };
  readonly 'overlap-narrow': {
    readonly faces: readonly [string, string];
    readonly toBend: number;
    readonly bend: number;
    /** Overlap that is missing; null where the places are cut already. */
    readonly more: number | null;
  };
  readonly 'joint-turns': {
    readonly faces: readonly [string, string];
    /** How much longer the overlap would have to be for a second fastener; null where there is room for one. */
    readonly more: number | null;
  };
  readonly 'pitch-close': {
    readonly count: number;
    /** Fasteners there is room for; null where the places are cut already. */
    readonly most: number | null;
  };
  readonly 'fastener-left-out': { readonly pitch: number };
  readonly 'drill-after-bending': object;
  readonly 'hole-crowded': { readonly parts: readonly string[] };
  readonly 'fastener-lost': { readonly made: string; readonly other: string };
  readonly 'fastener-apart': { readonly pieces: readonly [string, string] };
  /** The pieces that are made; the value is how far their places may lie from where they are taken to be. */
  readonly 'fastener-doubt': { readonly made: readonly string[] };
  readonly 'fit-tight': { readonly between: readonly [Spot, Spot] };
  readonly 'fastener-in-way': { readonly piece: string; readonly kind: string; readonly count: number };
  readonly clash: {
    readonly between: readonly [Spot, Spot];
    /** By how much one of them has to give way. */
    readonly by: number;
    /** Those of the two that are made, not bought: what can be made smaller. */
    readonly made: readonly string[];
  };
  readonly 'hinge-swing': { readonly hinge: string; readonly between: readonly [Spot, Spot] };
  readonly 'weld-zinc': { readonly weld: 'spot-weld' | 'plug-weld' };
  readonly 'weld-ratio': { readonly thin: number; readonly thick: number };
  readonly 'weld-thickness': { readonly least: number; readonly most: number };
  readonly 'weld-stack': object;
  readonly 'weld-schedule': { readonly material: string; readonly weldable: boolean };
  readonly 'weld-layers': object;
  readonly 'weld-throat': object;
  readonly 'rivet-grip': {
    readonly rivet: string;
    readonly grips: readonly (readonly [number, number])[];
    /** Size that holds the stack; null when none listed does. */
    readonly take: string | null;
  };
  readonly 'rivet-thin': { readonly rivet: string };
  readonly 'rivet-layers': object;
}

/** A finding of the core. */
export type CoreFinding = FindingsOf<CoreFindings>;

/** A remark of the core, typed by its code. */
export function remark<C extends keyof CoreFindings & string>(
  code: C,
  severity: Severity,
  data: RemarkData<CoreFindings[C]>,
): Remark<C, CoreFindings[C] & object> {
  return remarkOf(code, severity, data);
}
