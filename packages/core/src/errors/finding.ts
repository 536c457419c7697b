import type { Path } from './problem.js';
import type { Source } from './source.js';

/** How much a finding weighs: `error` will not work as drawn, `warning` may not, `note` is good to know. */
export type Severity = 'error' | 'warning' | 'note';

/** Where a finding holds. Names are those of panels and bends. */
export interface Where {
  /** On the flat of the part, mm, origin lower left, +y up; null where no place shows it. */
  readonly at: readonly [number, number] | null;
  /** What is there. */
  readonly names: readonly string[];
  /** The same at every other place where it holds, less badly. */
  readonly others: readonly (readonly string[])[];
  /** Joints it holds for. */
  readonly joints: readonly string[];
}

/**
 * A value of the job that would pass, found by trying it, everything else as it is: a size, mm, and whether more or less
 * of it passes too, or words of a list.
 */
export type Change =
  | {
      readonly path: Path;
      readonly given: number;
      readonly found: number;
      readonly bound: 'least' | 'most';
    }
  | { readonly path: Path; readonly given: string; readonly words: readonly string[] };

/** Words a finding brings along: those of a check from outside, whose code nobody here knows. */
export interface OwnWords {
  readonly message: string;
  readonly source: string;
  readonly fix: string;
}

/**
 * Something a maker should know about a part that can be made, as data: a teller of words puts it into a language.
 * Lengths mm, angles degrees. `Values` is what its words need besides value and limit.
 */
export interface Finding<Code extends string = string, Values extends object = object> {
  readonly code: Code;
  readonly severity: Severity;
  /** Name of the part in the job, null for the whole job. */
  readonly part: string | null;
  readonly where: Where;
  /** Number found and the limit it is held against, in `unit`; null where no number tells it. */
  readonly value: number | null;
  readonly limit: number | null;
  readonly unit: 'mm' | 'deg' | 'kg' | 'kN' | null;
  readonly values: Values;
  readonly source: readonly Source[];
  readonly changes: readonly Change[];
  readonly words: OwnWords | null;
}

/** A finding before it is known which part it belongs to. */
export type Remark<Code extends string = string, Values extends object = object> = Omit<
  Finding<Code, Values>,
  'part'
>;

/** The findings a map from code to values stands for. */
export type FindingsOf<Map> = { [C in keyof Map & string]: Finding<C, Map[C] & object> }[keyof Map & string];

/** What a remark has to say; the rest is none. */
export interface RemarkData<Values> {
  readonly values: Values;
  readonly source: readonly Source[];
  readonly where?: Partial<Where>;
  readonly value?: number;
  readonly limit?: number;
  readonly unit?: 'mm' | 'deg' | 'kg' | 'kN';
}

/**
 * A remark of any code about one part, as data; lengths mm, angles degrees. Who has codes of their own binds it to them.
 */
export function remarkOf<Code extends string, Values extends object>(
  code: Code,
  severity: Severity,
  { values, source, where = {}, value, limit, unit }: RemarkData<Values>,
): Remark<Code, Values> {
  return {
    code,
    severity,
    where: { at: null, names: [], others: [], joints: [], ...where },
    value: value ?? null,
    limit: limit ?? null,
    unit: unit ?? null,
    values,
    source,
    changes: [],
    words: null,
  };
}

const WEIGHT: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

/** Order of two findings, the worse one first. */
export const worseFirst = (a: Pick<Finding, 'severity'>, b: Pick<Finding, 'severity'>): number =>
  WEIGHT[a.severity] - WEIGHT[b.severity];

/** Findings by part in the given order of parts, worst first within a part; stable. */
export function sortFindings<F extends Pick<Finding, 'part' | 'severity'>>(
  findings: readonly F[],
  parts: readonly string[],
): readonly F[] {
  const rank = (f: F) => (f.part === null ? -1 : parts.indexOf(f.part));
  return findings.toSorted((a, b) => rank(a) - rank(b) || worseFirst(a, b));
}
