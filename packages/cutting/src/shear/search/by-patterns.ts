import { lowerBound } from '../bound/lower-bound.js';
import type { ShearProblem } from '../problem.js';
import { generated } from './generated.js';
import { type Effort, type Filled, type Packed, pack } from './pack.js';
import { asWhole, partOfProblem } from './part-of-problem.js';
import { type Patterned, patterned } from './patterned.js';

/**
 * A plan of whole patterns, the rest searched for as usual, where that is cheaper than the plan there is.
 * @param wrong can sheets not be cut after all?
 */
export function byPatterns(
  problem: ShearProblem,
  effort: Effort,
  plain: Packed,
  wrong: (sheets: readonly Filled[]) => boolean,
): Packed {
  const ways = [() => patterned(problem), () => (effort.cover ? generated(problem, effort.cover) : null)];
  return ways.reduce((best, way) => {
    if (best.left.length === 0 && best.cost <= effort.bound * (1 + 1e-9)) return best;
    const whole = way();
    if (whole === null || wrong(whole.sheets)) return best;
    const found = completed(problem, { ...effort, steps: { ...effort.steps, offcut: 0, neat: 0 } }, whole);
    const better =
      found.left.length < best.left.length ||
      (found.left.length === best.left.length && found.cost < best.cost - 1e-9);
    const kept = better ? completed(problem, effort, whole) : best; // only what is kept is made neat
    return { ...kept, steps: best.steps + found.steps };
  }, plain);
}

/** Sheets of patterns, and the items they leave on further ones. */
function completed(problem: ShearProblem, effort: Effort, { sheets, left }: Patterned): Packed {
  const part = partOfProblem(problem, left, sheets);
  const work = (own: readonly Filled[]) => effort.work([...sheets, ...own.map((s) => asWhole(s, left))]);
  const rest = pack(part, { ...effort, bound: lowerBound(part), work });
  return {
    ...rest,
    cost: sheets.reduce((sum, s) => sum + (problem.bins[s.bin]?.cost ?? 0), rest.cost),
    sheets: [...sheets, ...rest.sheets.map((s) => asWhole(s, left))],
    left: rest.left.map((i) => left[i] as number),
  };
}
