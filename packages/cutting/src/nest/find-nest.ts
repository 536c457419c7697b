import type { StopSignal } from '@tinwright/core';
import type { NestAsk } from './ask.js';
import type { Bench } from './fill.js';
import { metalsOf } from './prepare.js';
import type { NestLayout } from './problem.js';
import { compareLayouts } from './rank.js';
import { type Nest, nestFrom } from './result.js';
import { benchOf, searchNest } from './search-nest.js';
import type { Spend } from './strip.js';

/** A budget counted in moves of one piece, so that the same one always ends at the same place. */
export function movesBudget(moves: number): Spend {
  let done = 0;
  return (more) => {
    done += more;
    return done / moves;
  };
}

/** The best of layouts found with several seeds; of equal ones the first. */
export function bestLayout({ problem, kit }: Bench, layouts: readonly NestLayout[]): NestLayout {
  return layouts.reduce((best, l) => (compareLayouts(problem, kit, l, best) < 0 ? l : best));
}

/**
 * Nest parts on the sheets of a rack, one seed after the other with the same number of moves, and keep the best.
 * The same question gives the same nest. A signal is asked
 * before every few moves. @throws RangeError spacing not above 0, edge below 0, no seeds; what the signal was aborted for
 */
export function findNest(
  ask: NestAsk,
  search: { readonly seeds: readonly number[]; readonly moves: number; readonly signal?: StopSignal },
): Nest {
  if (!(ask.spacing > 0)) throw new RangeError(`spacing ${ask.spacing} mm given, above 0 allowed`);
  if (!(ask.edge >= 0)) throw new RangeError(`edge ${ask.edge} mm given, 0 or more allowed`);
  if (search.seeds.length === 0) throw new RangeError('no seeds given, one or more needed');
  const metals = metalsOf(ask);
  const layouts = metals.map(({ problem }) => {
    const bench = benchOf(problem);
    return bestLayout(
      bench,
      search.seeds.map((seed) =>
        searchNest(bench, { seed, spend: heard(movesBudget(search.moves), search.signal), better: () => {} }),
      ),
    );
  });
  return nestFrom(ask, metals, layouts);
}

/** The budget, which asks a signal each time something is spent of it. */
const heard =
  (spend: Spend, signal?: StopSignal): Spend =>
  (more) => {
    signal?.throwIfAborted();
    return spend(more);
  };
