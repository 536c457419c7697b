/** Throw unless it holds. */
export function holds(it: boolean, what: string): void {
  if (!it) throw new Error(what);
}

/** Throw unless two numbers are within a distance of each other. */
export function near(
  found: number | undefined,
  wanted: number | undefined,
  what: string,
  within = 1e-6,
): void {
  holds(
    Math.abs((found ?? Number.NaN) - (wanted ?? Number.NaN)) <= within,
    `${what}: ${found}, not ${wanted}`,
  );
}
