import type { Path } from '../errors/problem.js';

/** A value in a tree of parameters and the way to it. */
export interface Leaf<T> {
  readonly path: Path;
  readonly given: T;
}

/** Every number in parameters, with the way to it, in the order they are given. */
export function sizesIn(params: unknown): readonly Leaf<number>[] {
  return leaves(params, []).filter((l): l is Leaf<number> => typeof l.given === 'number');
}

/** Every word in parameters, with the way to it, in the order they are given. */
export function wordsIn(params: unknown): readonly Leaf<string>[] {
  return leaves(params, []).filter((l): l is Leaf<string> => typeof l.given === 'string');
}

function leaves(value: unknown, path: Path): readonly Leaf<unknown>[] {
  if (Array.isArray(value)) return value.flatMap((v, i) => leaves(v, [...path, i]));
  if (typeof value !== 'object' || value === null) return [{ path, given: value }];
  return Object.entries(value).flatMap(([k, v]) => leaves(v, [...path, k]));
}

/** The value a path leads to; undefined where it leads nowhere. */
export function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (d, step) => (d as Record<string | number, unknown> | null | undefined)?.[step],
    data,
  );
}

/** A copy with one value changed. */
export function withValue(data: unknown, [step, ...rest]: Path, value: unknown): unknown {
  if (step === undefined) return value;
  if (Array.isArray(data)) return data.map((d: unknown, i) => (i === step ? withValue(d, rest, value) : d));
  const group = data as Record<string | number, unknown> | undefined; // left out, it is made
  return { ...group, [step]: withValue(group?.[step], rest, value) };
}
