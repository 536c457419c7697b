/** The name of the thing at an index: A, B … Z, AA, AB … */
export function letterOf(i: number): string {
  const last = String.fromCharCode(65 + (i % 26));
  return i < 26 ? last : letterOf(Math.floor(i / 26) - 1) + last;
}
