/** Upper ends of the bands of sizes, mm: 0–3, 3–10, 10–35, 35–125, 125–315, 315–1000, 1000–2000, 2000–4000. */
const BANDS: readonly number[] = [3, 10, 35, 125, 315, 1000, 2000, 4000];

interface Row {
  /** Thickness up to and including, mm. */
  readonly upTo: number;
  readonly deviations: readonly number[];
}

/**
 * Limit deviations of ISO 9013 for thermal cuts, ± mm, classes 1 and 2. Laser usually holds class 1, plasma class 2.
 * Source: modulusmetal.com, ISO 9013 thermal cutting dimensional tolerances; class 2 there up to 3.15 mm.
 */
export const ISO_9013: Readonly<Record<1 | 2, readonly Row[]>> = {
  1: [
    { upTo: 1, deviations: [0.075, 0.1, 0.1, 0.2, 0.2, 0.3, 0.4, 0.65] },
    { upTo: 3.15, deviations: [0.1, 0.15, 0.2, 0.25, 0.25, 0.35, 0.4, 0.65] },
    { upTo: 6.3, deviations: [0.2, 0.2, 0.25, 0.25, 0.3, 0.4, 0.45] },
  ],
  2: [
    { upTo: 1, deviations: [0.5, 0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 0.9] },
    { upTo: 3.15, deviations: [0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 1, 1.1] },
  ],
};

/** Deviation of a cut size, ± mm; null outside the table. @param size and @param thickness mm */
export function cutDeviation(of: 1 | 2, size: number, thickness: number): number | null {
  const band = BANDS.findIndex((b) => size <= b);
  const row = ISO_9013[of].find((r) => thickness <= r.upTo + 1e-9);
  return band < 0 ? null : (row?.deviations[band] ?? null);
}
