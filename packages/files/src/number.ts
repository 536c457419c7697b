const LARGEST = 1e6; // mm

/**
 * A coordinate for a file: six decimals, so that it never prints with an exponent, and no minus zero.
 * @throws RangeError for anything but a finite number up to a kilometre
 */
export function coordinate(value: number): number {
  if (!Number.isFinite(value) || Math.abs(value) > LARGEST)
    throw new RangeError(`coordinate ${value} given, a finite number up to ${LARGEST} mm allowed`);
  return Math.round(value * 1e6) / 1e6 + 0;
}

/** A bulge for a file. Ten decimals: 1e-6 mm on a ten-metre arc, and never an exponent. */
export function bulgeValue(bulge: number): number {
  const value = Math.round(bulge * 1e10) / 1e10;
  return Math.abs(value) < 1e-6 ? 0 : value;
}
