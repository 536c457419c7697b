import type { StripBend } from '@tinwright/core';

/**
 * What bent test strips of one metal, thickness and radius gave. Lengths mm, angles degrees.
 * Jobs use it by `rule: test-strip`.
 */
export interface StripRow extends StripBend {
  /** Degrees a bend of 90° opens again, below 0 where it closes further; null when that was not measured. */
  readonly springback: number | null;
  /** Uncertainty of it, one standard error. */
  readonly springbackError: number;
}
