/** What bent test strips of one metal, thickness and inside radius gave. mm */
export interface StripBend {
  readonly name: string;
  readonly material: string;
  readonly thickness: number;
  readonly insideRadius: number;
  /** Neutral axis, in thicknesses from the inside, and its uncertainty (one standard error). */
  readonly k: number;
  readonly kError: number;
  /** How many strips were measured. */
  readonly strips: number;
}
