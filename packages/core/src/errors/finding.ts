import type { Unit } from '../units/length.js';
import { inWords, sayIn, type Wording } from './problem.js';

/** How much a finding weighs: `error` will not work as drawn, `warning` may not, `note` is good to know. */
export type Severity = 'error' | 'warning' | 'note';

/**
 * Something a maker should know about a part that can be made.
 * Lengths mm, angles degrees, `at` in the flat frame of the part (origin lower left, +y up).
 */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  /** Name of the part in the job, '' for the whole job. */
  readonly part: string;
  readonly at?: readonly [number, number];
  /** Number found and the limit it is held against, in `unit`. */
  readonly value?: number;
  readonly limit?: number;
  readonly unit?: 'mm' | 'deg' | 'kg' | '';
  readonly message: string;
  /** Published source of the limit, or 'common practice, no source'. */
  readonly source: string;
  /** The change that would pass. */
  readonly fix: string;
}

/** A finding whose words wait for the unit of the job. */
export interface Unsaid extends Omit<Finding, 'message' | 'source' | 'fix'> {
  readonly message: Wording;
  readonly source: Wording;
  readonly fix: Wording;
}

/** A finding before it is told which part it belongs to. */
export type Remark = Omit<Unsaid, 'part'>;

/** The finding in the words of a unit; numbers stay mm. */
export function saidIn(unit: Unit, { message, source, fix, ...rest }: Unsaid): Finding {
  const say = sayIn(unit);
  return {
    ...rest,
    message: inWords(message, say),
    source: inWords(source, say),
    fix: inWords(fix, say),
  };
}

const WEIGHT: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

/** Findings by part in the given order of parts, worst first within a part; stable. */
export function sortFindings(findings: readonly Finding[], parts: readonly string[]): readonly Finding[] {
  const rank = (f: Finding) => parts.indexOf(f.part);
  return findings.toSorted((a, b) => rank(a) - rank(b) || WEIGHT[a.severity] - WEIGHT[b.severity]);
}
