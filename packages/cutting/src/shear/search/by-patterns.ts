import { lowerBound } from '../bound/lower-bound.js';
import type { Problem } from '../problem.js';
import { type Effort, type Filled, type Packed, pack } from './pack.js';
import { asWhole, partOfProblem } from './part-of-problem.js';
import { patterned } from './patterned.js';

/**
 * A plan of whole patterns, the rest searched for as usual, where that is cheaper than the plan there is.
 * @param wrong can sheets not be cut after all?
 */
export function byPatterns(
  problem: Problem,
  effort: Effort,
  plain: Packed,
  wrong: (sheets: readonly Filled[]) => boolean,
): Packed {
  if (plain.left.length === 0 && plain.cost <= effort.bound * (1 + 1e-9)) return plain;
  const whole = patterned(problem);
  if (whole === null || wrong(whole.sheets)) return plain;
  const { sheets, left } = whole;
  const part = partOfProblem(problem, left, sheets);
  const work = (own: readonly Filled[]) => effort.work([...sheets, ...own.map((s) => asWhole(s, left))]);
  const rest = pack(part, { ...effort, bound: lowerBound(part), work });
  const cost = sheets.reduce((sum, s) => sum + (problem.bins[s.bin]?.cost ?? 0), rest.cost);
  const better =
    rest.left.length < plain.left.length ||
    (rest.left.length === plain.left.length && cost < plain.cost - 1e-9);
  if (!better) return plain;
  return {
    ...rest,
    steps: plain.steps + rest.steps,
    cost,
    sheets: [...sheets, ...rest.sheets.map((s) => asWhole(s, left))],
    left: rest.left.map((i) => left[i] as number),
  };
}
