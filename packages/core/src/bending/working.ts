const SCALE = 1e4; // four decimals
const FINEST = 1e9;

/** Number as it stands in a line of working: up to four decimals. */
export function workingNumber(v: number): string {
  return String(Math.round(v * SCALE) / SCALE);
}

/**
 * A line of working, `BA = … = 3.7699`: a formula with its numbers in it, and what it comes to. The numbers are printed
 * as finely as it takes for the printed result to follow from them.
 * @param formula in words, a # for each of the numbers
 * @param value the same formula computed
 */
export function workingLine(
  formula: string,
  numbers: readonly number[],
  value: (...numbers: readonly number[]) => number,
): string {
  const result = Math.round(value(...numbers) * SCALE);
  for (let scale = SCALE; ; scale *= 10) {
    const printed = numbers.map((v) => Math.round(v * scale) / scale);
    if (scale === FINEST || Math.round(value(...printed) * SCALE) === result) {
      const words = formula.split('#').reduce((text, part, i) => `${text}${printed[i - 1]}${part}`);
      return `${words} = ${result / SCALE}`;
    }
  }
}
