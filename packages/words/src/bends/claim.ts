import { plainNumber } from '@tinwright/core/internal';
import type { Sequence } from '@tinwright/shop';
import type { Language } from '../language.js';
import { BENDS } from './tell-bend.js';

/** What an order claims of itself, in a line: its operations, what a piece takes, and whether another order may take less. */
export function claimText(
  {
    status,
    proved,
    toolsKept,
    steps,
    seconds,
    gap,
  }: Pick<Sequence, 'status' | 'proved' | 'toolsKept' | 'steps' | 'seconds' | 'gap'>,
  language: Language,
): string {
  const words = BENDS[language].claim;
  const tools = toolsKept ? 'kept' : 'any';
  if (status === 'infeasible') return words.none(proved ? 'proved' : 'not-found');
  if (steps.length === 0) return words.flat;
  const best = proved ? words.best(tools) : words.less(`${plainNumber(100 * gap, 0)} %`, tools);
  return `${words.steps(steps.length, duration(seconds))}; ${best}`;
}

/** `40 s`, `3 min 20 s` */
export function duration(seconds: number): string {
  const all = Math.round(seconds);
  return all < 60 ? `${all} s` : `${Math.floor(all / 60)} min ${all % 60} s`;
}
