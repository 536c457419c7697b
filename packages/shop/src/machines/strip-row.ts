/**
 * What bent test strips of one metal, thickness and radius gave. Lengths mm, angles degrees.
 * Jobs use it by `rule: test-strip`.
 */
export interface StripRow {
  readonly name: string;
  readonly material: string;
  readonly thickness: number;
  readonly insideRadius: number;
  /** Neutral axis, in thicknesses from the inside, and its uncertainty (one standard error). */
  readonly k: number;
  readonly kError: number;
  /** Degrees a bend of 90° opens again, and their uncertainty. */
  readonly springback: number;
  readonly springbackError: number;
  /** How many strips were measured. */
  readonly strips: number;
}
