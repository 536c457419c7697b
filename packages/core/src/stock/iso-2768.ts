import { frozen } from '../units/frozen.js';

/** Tolerance classes of ISO 2768-1: fine, medium, coarse, very coarse. */
export type ToleranceClass = 'f' | 'm' | 'c' | 'v';

/** Upper limits of the bands of sizes, mm; the first starts at 0.5. */
export const ISO_2768_BANDS: readonly number[] = frozen([3, 6, 30, 120, 400, 1000, 2000, 4000]);

/**
 * Permitted deviations of linear sizes, ± mm, by band: 0.5–3, >3–6, >6–30, >30–120, >120–400, >400–1000,
 * >1000–2000, >2000–4000; null where the class has none.
 * Source: ISO 2768-1:1989 as copied on scribd 585640440; class c in the first two bands from memory, the copy prints
 * those of DIN 7168.
 */
export const ISO_2768_LINEAR: Readonly<Record<ToleranceClass, readonly (number | null)[]>> = frozen({
  f: [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, null],
  m: [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2],
  c: [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4],
  v: [null, 0.5, 1, 1.5, 2.5, 4, 6, 8],
});

/** Permitted deviation of a linear size, ± mm; null outside the table. @param size mm, from 0.5 to 4000 */
export function linearTolerance(size: number, of: ToleranceClass): number | null {
  const band = ISO_2768_BANDS.findIndex((b) => size <= b);
  return size < 0.5 || band < 0 ? null : (ISO_2768_LINEAR[of][band] ?? null);
}
