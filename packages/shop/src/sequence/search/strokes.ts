import type { Ahead } from './precedence.js';
import type { Way } from './ways.js';

/** Least seconds of a stroke with the way to it by each lie, shared among the steps it does; infinite where it cannot be made so. */
export type ByLie = readonly number[];

/** Something that has to be done, and its least seconds in a choice of lies by bits. */
export type Due = (lies: number) => number;

/** Every way to lie, by bits. */
export const ANY = -1;

/** Seconds of a step in every lie, by some of its ways. @param slide seconds of the way to it */
export function byLie(
  ways: readonly Way[],
  count: number,
  lieOf: (way: Way) => number,
  slide: number,
): ByLie {
  const seconds = new Array<number>(count).fill(Infinity);
  for (const way of ways) {
    const lie = lieOf(way);
    seconds[lie] = Math.min(seconds[lie] as number, (way.bare + slide) / way.operation.steps.length);
  }
  return seconds;
}

/** Every way that does a step. */
export const waysFor = (ways: readonly (readonly Way[])[], step: number): readonly Way[] =>
  ways.flat().filter((w) => w.operation.steps.includes(step));

/** The least of a choice of lies. */
function leastIn(seconds: ByLie, lies: number): number {
  let least = Infinity;
  for (let i = 0; i < seconds.length; i++)
    if ((lies & (1 << i)) !== 0) least = Math.min(least, seconds[i] as number);
  return least;
}

/** Steps as tasks, those that take the same together. A step that no machine can make is no part of a bound. */
export function kindsOf(steps: readonly ByLie[]): (left: readonly number[]) => readonly Due[] {
  const names = steps.map((s) => s.join(' '));
  const kinds = [...new Set(names)];
  const kindOf = names.map((n) => kinds.indexOf(n));
  const leasts = kinds.map((k): Due => {
    const seconds = steps[names.indexOf(k)] as ByLie;
    const known = new Map<number, number>();
    return (lies) => {
      const before = known.get(lies);
      if (before !== undefined) return before;
      const least = seconds.every((s) => s === Infinity) ? 0 : leastIn(seconds, lies);
      known.set(lies, least);
      return least;
    };
  });
  return (left) => {
    const counts = new Int32Array(kinds.length);
    for (const s of left) counts[kindOf[s] as number] = (counts[kindOf[s] as number] as number) + 1;
    const tasks: Due[] = [];
    leasts.forEach((least, i) => {
      const count = counts[i] as number;
      if (count > 0) tasks.push((lies) => count * least(lies));
    });
    return tasks;
  };
}

/**
 * Steps left as tasks. Two rivals, each of which takes ways from the other when it goes first, are one task: whichever comes
 * first, one of them does without. Rivals are paired so that the most is known for certain, the dearest first; a step is
 * in one pair alone (disjoint parts of a problem add up: additive bounds, Felner, Korf, Hanan 2004).
 */
export function tasksOf(
  { open, rivals }: Pick<Ahead, 'open' | 'rivals'>,
  vector: (ways: readonly Way[]) => ByLie,
): readonly Due[] {
  const vectors = open.map((list) => (list === null ? null : vector(list.map((c) => c.way))));
  const pairs = rivals.flatMap(({ steps: [a, b], after }) => {
    const [own, other] = [vectors[a], vectors[b]];
    if (own == null || other == null) return [];
    const [late, later] = [vector(after(open, a, b)), vector(after(open, b, a))];
    const task: Due = (lies) =>
      Math.min(leastIn(own, lies) + leastIn(later, lies), leastIn(other, lies) + leastIn(late, lies));
    const more = task(ANY) - leastIn(own, ANY) - leastIn(other, ANY);
    return more > 1e-9 ? [{ a, b, task, more }] : [];
  });
  const paired = new Set<number>();
  const tasks: Due[] = [];
  for (const { a, b, task } of pairs.toSorted((p, q) => q.more - p.more)) {
    if (paired.has(a) || paired.has(b)) continue;
    paired.add(a).add(b);
    tasks.push(task);
  }
  vectors.forEach((own, s) => {
    if (own !== null && !paired.has(s)) tasks.push((lies) => leastIn(own, lies));
  });
  return tasks;
}
