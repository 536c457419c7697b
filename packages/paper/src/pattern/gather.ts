import { SAME } from './marked.js';

/** Things in groups of one value and key, by value. */
export function gathered<T>(
  things: readonly T[],
  value: (t: T) => number,
  key: (t: T) => string = () => '',
): readonly (readonly T[])[] {
  const found: T[][] = [];
  for (const t of things) {
    const same = found.find(
      ([first]) => Math.abs(value(first as T) - value(t)) < SAME && key(first as T) === key(t),
    );
    if (same === undefined) found.push([t]);
    else same.push(t);
  }
  return found.toSorted((a, b) => value(a[0] as T) - value(b[0] as T));
}

/** Spans in order, those with no more than `gap` between them as one. */
export function joined(
  spans: readonly (readonly [number, number])[],
  gap: number,
): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  for (const [from, to] of spans.toSorted((a, b) => a[0] - b[0])) {
    const last = found.at(-1);
    if (last !== undefined && from - last[1] <= gap) last[1] = Math.max(last[1], to);
    else found.push([from, to]);
  }
  return found;
}

/** The first of things whose numbers are the same. */
export function unique<T>(things: readonly T[], numbers: (t: T) => readonly number[]): readonly T[] {
  const key = (t: T) =>
    numbers(t)
      .map((n) => n.toFixed(6))
      .join();
  return things.filter((t, i) => things.findIndex((u) => key(u) === key(t)) === i);
}
