/** Sizes are in bands, mm: from the lower end on, to just under the upper one; the first starts at 0, the last ends at 4000. */
const BANDS: readonly number[] = [3, 10, 35, 125, 315, 1000, 2000, 4000];

/** Limit deviations of one range of thickness, ± mm by band; null where none is given. */
export interface CutRow {
  /** Thickness up to and including, mm. */
  readonly upTo: number;
  readonly deviations: readonly (number | null)[];
  /** Set for a row from memory, of the edition of 2002 over 6.3 mm: it asks for less than the page that is cited. */
  readonly basis?: 'memory';
}

/**
 * Limit deviations of ISO 9013 for thermal cuts, ± mm, classes 1 and 2. Laser usually holds class 1, plasma class 2.
 * Source: modulusmetal.com, ISO 9013 thermal cutting dimensional tolerances; thicker rows from memory of the older
 * edition, which asks for less.
 */
export const ISO_9013: Readonly<Record<1 | 2, readonly CutRow[]>> = {
  1: [
    { upTo: 1, deviations: [0.075, 0.1, 0.1, 0.2, 0.2, 0.3, 0.4, 0.65] },
    { upTo: 3.15, deviations: [0.1, 0.15, 0.2, 0.25, 0.25, 0.35, 0.4, 0.65] },
    { upTo: 6.3, deviations: [0.2, 0.2, 0.25, 0.25, 0.3, 0.4, 0.45, null] },
    { upTo: 10, deviations: [null, 0.5, 0.6, 0.6, 0.7, 0.7, 0.7, 0.8], basis: 'memory' },
    { upTo: 50, deviations: [null, 0.6, 0.7, 0.7, 0.8, 1, 1.6, 2.5], basis: 'memory' },
  ],
  2: [
    { upTo: 1, deviations: [0.5, 0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 0.9] },
    { upTo: 3.15, deviations: [0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 1, 1.1] },
    { upTo: 6.3, deviations: [0.7, 0.8, 0.9, 0.9, 1.1, 1.2, 1.3, 1.3], basis: 'memory' },
    { upTo: 10, deviations: [null, 1, 1.1, 1.3, 1.4, 1.5, 1.6, 1.7], basis: 'memory' },
    { upTo: 50, deviations: [null, 1.8, 1.8, 1.8, 1.9, 2.3, 3, 4.2], basis: 'memory' },
  ],
};

/** A deviation and where it comes from. */
export interface CutDeviation {
  readonly value: number;
  readonly basis: 'memory' | 'second-hand';
}

/** Deviation of a cut size, ± mm; null outside the table. @param size and @param thickness mm */
export function cutDeviation(of: 1 | 2, size: number, thickness: number): CutDeviation | null {
  const band = BANDS.findIndex((upper) => size < upper);
  const row = ISO_9013[of].find((r) => thickness <= r.upTo + 1e-9);
  const value = row?.deviations[band] ?? null;
  return value === null ? null : { value, basis: row?.basis ?? 'second-hand' };
}
