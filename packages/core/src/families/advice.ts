import type { Path, Refusal } from '../errors/problem.js';
import { LONGEST } from '../schema/kit.js';
import type { Complaint } from './limits.js';

/** Finds what is wrong with a family's parameters. */
export type Checker = (params: unknown) => readonly Complaint[];

const DOWN = [0.98, 0.9, 0.75, 0.5, 0.3, 0.1, 0.03, 0.01, 0.001];
const UP = [1.02, 1.1, 1.3, 1.6, 2, 3, 5, 10, 30, 100, 1000, 10_000];
const HALVINGS = 60; // to the last bit

/** Complaints as refusals, each with the nearest size that would work, found by trying it. */
export function advised(params: unknown, check: Checker): readonly Refusal[] {
  return check(params).map((complaint): Refusal => {
    const { path, why, fix } = complaint;
    const given = valueAt(params, path);
    const code = 'size-impossible';
    const words = (w: typeof why, say: Parameters<Extract<typeof why, (...a: never[]) => string>>[0]) =>
      typeof w === 'string' ? w : w(say);
    if (typeof given !== 'number' || fix !== undefined) return { code, path, message: why, fix: fix ?? '' };
    const found = nearestThatWorks(params, path, given, check);
    return {
      code,
      path,
      message: (say) => `${say.size(given)} given, ${words(why, say)}`,
      fix: (say) => {
        if (found === null) return 'No size works here while the others stay as they are';
        return found < given ? `Use ${say.most(found)} or less` : `Use ${say.least(found)} or more`;
      },
    };
  });
}

/** The nearest value with which nothing is complained of, or at least nothing but what others were before. */
function nearestThatWorks(params: unknown, path: Path, given: number, check: Checker): number | null {
  const others = check(params).filter((c) => !samePath(c.path, path));
  const known = (c: Complaint) => others.some((o) => samePath(o.path, c.path));
  const works = (v: number) => check(withValue(params, path, v)).every(known);
  return (
    nearestSize(given, (v) => check(withValue(params, path, v)).length === 0) ?? nearestSize(given, works)
  );
}

/**
 * The size nearest to the given one that works, tried downwards and upwards; null when none does. mm
 * @param halvings how sharply the edge of what works is found
 * @param tries most sizes tried either way, nearest first
 */
export function nearestSize(
  given: number,
  works: (v: number) => boolean,
  halvings: number = HALVINGS,
  tries: number = UP.length,
): number | null {
  const start = Math.max(given, 1e-3);
  const below = boundary(
    given,
    DOWN.slice(0, tries).map((f) => start * f),
    works,
    halvings,
  );
  const above = boundary(
    given,
    UP.slice(0, tries)
      .map((f) => start * f)
      .filter((v) => v <= LONGEST),
    works,
    halvings,
  );
  if (below === null || above === null) return below ?? above;
  return given / below <= above / given ? below : above;
}

/** Between the last of these values that fails and the first that works, the edge of what works. */
function boundary(
  given: number,
  tries: readonly number[],
  works: (v: number) => boolean,
  halvings: number,
): number | null {
  const index = tries.findIndex(works);
  if (index < 0) return null;
  let [fails, good] = [index === 0 ? given : (tries[index - 1] as number), tries[index] as number];
  for (let i = 0; i < halvings; i++) {
    const middle = (fails + good) / 2;
    if (works(middle)) good = middle;
    else fails = middle;
  }
  return good;
}

const samePath = (a: Path, b: Path) => a.length === b.length && a.every((step, i) => step === b[i]);

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (d, step) => (d as Record<string | number, unknown> | null | undefined)?.[step],
    data,
  );
}

/** A copy with one value changed. */
export function withValue(data: unknown, [step, ...rest]: Path, value: number): unknown {
  if (step === undefined) return value;
  if (Array.isArray(data)) return data.map((d: unknown, i) => (i === step ? withValue(d, rest, value) : d));
  const group = data as Record<string | number, unknown>;
  return { ...group, [step]: withValue(group[step], rest, value) };
}

/** Every number in parameters, with the way to it, in the order they are given. */
export function sizesIn(
  value: unknown,
  path: Path = [],
): readonly { readonly path: Path; readonly given: number }[] {
  if (typeof value === 'number') return [{ path, given: value }];
  if (Array.isArray(value)) return value.flatMap((v, i) => sizesIn(v, [...path, i]));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([k, v]) => sizesIn(v, [...path, k]));
}
