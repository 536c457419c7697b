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
