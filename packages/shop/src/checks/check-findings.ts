import { type Remark, type RemarkData, remarkOf, type Severity } from '@tinwright/core';

/** Nothing but value, limit and place. */
type Plain = object;

/** A size as it is likely to come out. mm, degrees */
export interface ExpectedSize {
  readonly on: 'bent' | 'cut';
  readonly size: number;
  readonly deviation: number;
  readonly angle: number | null;
}

/** What the words of every check of a shop need besides value, limit and place, by its code. Lengths mm. */
export interface CheckFindings {
  readonly 'blank-large': { readonly x: number; readonly y: number };
  readonly 'cut-large': { readonly machine: string };
  readonly 'sheet-thick': { readonly machine: string; readonly material: string };
  readonly 'leg-short': Plain;
  readonly 'flange-low': { readonly panel: number };
  readonly 'radius-made': {
    readonly asked: number;
    readonly made: number;
    /** What both legs together come out longer by. */
    readonly longer: number;
    readonly machine: string;
    /** Least inside radius of the metal. */
    readonly least: number;
  };
  readonly 'radius-strict': { readonly material: string; readonly thickness: number };
  readonly 'hem-tight': { readonly material: string; readonly thickness: number };
  readonly 'hem-short': Plain;
  readonly 'hem-near-bend': Plain;
  readonly 'offset-small': Plain;
  readonly 'corner-gap': Plain;
  readonly 'relief-shallow': { readonly corners: number; readonly drill: number };
  readonly 'relief-narrow': Plain;
  readonly 'hole-near-bend': {
    readonly bend: string;
    /** null for a cut-out of another shape. */
    readonly diameter: number | null;
    readonly of: 'part' | 'joint';
  };
  readonly 'slot-near-bend': { readonly bend: string };
  readonly 'hole-small': { readonly material: string };
  readonly 'hole-under-table': { readonly table: string };
  readonly 'gap-under-kerf': { readonly table: string };
  readonly 'web-narrow': { readonly beside: 'hole' | 'edge' };
  readonly 'notch-narrow': Plain;
  readonly 'notch-deep': { readonly deep: number; readonly most: number };
  readonly 'tab-narrow': Plain;
  readonly 'tab-long': { readonly long: number; readonly most: number };
  readonly 'weld-electrode': {
    readonly bend: string;
    /** Electrode that would have room; null where none has. */
    readonly electrode: number | null;
  };
  readonly grain: {
    /** Axis of the blank to lay along the long side of the sheet. */
    readonly axis: 'x' | 'y';
    readonly runs: 'across' | 'along';
  };
  readonly tolerance: { readonly expected: readonly ExpectedSize[] };
  readonly 'welder-missing': Plain;
  readonly 'welder-sheet': { readonly machine: string; readonly least: number; readonly most: number };
  readonly 'welder-throat': { readonly machine: string };
  readonly 'riveter-missing': Plain;
  readonly 'riveter-size': { readonly machine: string; readonly sets: readonly number[] };
  readonly 'strip-contradicts': {
    readonly in: 'lengths' | 'springback';
    readonly k: number;
    /** Degrees it would open by at 90 degrees, and the fit does. */
    readonly opens: number;
    readonly fit: number;
  };
  readonly 'strip-closes': { readonly set: number };
  readonly 'strip-narrow': Plain;
  readonly 'strip-few': Plain;
}

/** A remark of a shop, typed by its code. */
export function remark<C extends keyof CheckFindings & string>(
  code: C,
  severity: Severity,
  data: RemarkData<CheckFindings[C]>,
): Remark<C, CheckFindings[C] & object> {
  return remarkOf(code, severity, data);
}
