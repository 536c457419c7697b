import { atOnce } from '@tinwright/core/internal';
import { subtree } from '../part/fold-tree.js';
import { type Mask, maskOf, sameMask, within, without } from '../part/mask.js';
import type { LineStroke, Work } from '../part/operations.js';
import { dive } from '../search/dive.js';
import { fromEnd } from '../search/from-end.js';
import type { BendProblem } from '../search/states.js';

const MOST_DIVES = 200; // subsets looked at
const MOST_STATES = 3000; // of one
const LARGEST = 4; // bends tried together before bends are taken away one by one

/** A problem in which only some steps have to be done; the others stay flat. */
function onlySteps(problem: BendProblem, steps: Mask): BendProblem {
  const { work } = problem;
  const operations = work.operations.filter((o) => within(o.mask, steps));
  return { ...problem, work: { ...work, operations, all: steps } };
}

/** True when it is proved that these steps cannot all be done. */
function impossible(problem: BendProblem, steps: Mask): boolean {
  const end = atOnce(fromEnd(problem, steps, MOST_STATES));
  if (end === 'none') return true;
  const only = onlySteps(problem, steps);
  // where what is bent in one stroke is not bent one by one there may still be none
  if (end !== 'unknown' && only.work.operations.every((o) => o.steps.length === 1)) return false;
  const { moves, bound } = dive(only, MOST_STATES);
  return moves === null && bound === Infinity;
}

/**
 * Steps of some panels' bends and of all that hangs on them: a wall is as high as its hem leaves it. And of what may be bent
 * in one stroke with them, as it would be in the way of them alone.
 */
export function stepsWith(work: Work, panels: readonly number[]): Mask {
  const own = new Set(panels);
  // a set takes on the way what is put into it
  for (const p of own) {
    const joined = work.operations.filter((o) => o.panels.includes(p)).flatMap((o) => o.panels);
    for (const q of [...subtree(work.tree, p), ...joined]) own.add(q);
  }
  return maskOf(work.steps.filter((s) => own.has(s.panel)).map((s) => s.index));
}

/**
 * The smallest sets of bends that cannot all be made, with what hangs on them, the others left flat: every single one,
 * else one pair, and so on; past four, bends are taken away one by one as long as the rest stays impossible. Panels whose
 * bends they are; empty when nothing was proved within the effort.
 */
export function smallestCores(problem: BendProblem): readonly (readonly number[])[] {
  const { steps, tree } = problem.work;
  const panels = [...new Set(steps.map((s) => s.panel))];
  let dives = 0;
  const fails = (list: readonly number[]) => {
    dives += 1;
    return impossible(problem, stepsWith(problem.work, list));
  };
  /** The first few that fail together. */
  const few = (list: readonly number[]): readonly number[] | null => {
    for (let size = 2; size <= Math.min(LARGEST, list.length); size++)
      for (const some of choose(list, size)) {
        if (dives > MOST_DIVES) return null;
        if (fails(some)) return some;
      }
    return null;
  };
  const alone = panels.filter((p) => fails([p]));
  // what fails because of something that hangs on it is not told, nor where some that hang on it fail together
  const lowest = alone.filter((p) => !subtree(tree, p).some((q) => q !== p && alone.includes(q)));
  const same = (p: number) => (q: number) =>
    sameMask(stepsWith(problem.work, [p]), stepsWith(problem.work, [q]));
  const own = lowest.filter((p, i) => lowest.findIndex(same(p)) === i);
  if (own.length > 0) return own.map((p) => few(subtree(tree, p).filter((q) => q !== p)) ?? [p]);
  const found = few(panels);
  return found === null ? fewer(panels, fails) : [found];
}

/** Taken away one by one. */
function fewer(
  panels: readonly number[],
  fails: (list: readonly number[]) => boolean,
): readonly (readonly number[])[] {
  if (!fails(panels)) return [];
  return [
    panels.reduce<readonly number[]>((kept, p) => {
      const without = kept.filter((k) => k !== p);
      return without.length > 0 && fails(without) ? without : kept;
    }, panels),
  ];
}

/** Every choice of so many, in order. */
export function* choose<T>(list: readonly T[], count: number): Generator<readonly T[]> {
  if (count === 0) yield [];
  else
    for (let i = 0; i <= list.length - count; i++)
      for (const rest of choose(list.slice(i + 1), count - 1)) yield [list[i] as T, ...rest];
}

/** What is done when a stroke is the last of a set: the others, and all that hangs on them or on it. */
export function othersDone(problem: BendProblem, core: readonly number[], { panels }: LineStroke): Mask {
  const own = maskOf(problem.work.steps.filter((s) => panels.includes(s.panel)).map((s) => s.index));
  return without(stepsWith(problem.work, core), own);
}
