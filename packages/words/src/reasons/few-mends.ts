import type { Mend } from '@tinwright/shop';

const MOST = 2;

/** Those that a finding has room for: the nearest of the part, and of what the shop might get. */
export const fewMends = (mends: readonly Mend[]): readonly Mend[] =>
  (['part', 'machine'] as const).flatMap((of) => mends.filter((m) => m.of === of).slice(0, MOST));
