import type { Say } from '@tinwright/core';

const MOST_NAMES = 3;

/** The first of a list of bends, and how many more there are. */
export const shortened = (bends: readonly string[]): readonly [first: string, more: number] => [
  bends.slice(0, MOST_NAMES).join(', '),
  Math.max(0, bends.length - MOST_NAMES),
];

/** To a tenth of a millimetre, no finer: the sections of the machine are not known better. */
export const tenths = (mm: number, say: Say): string => say.size(Math.round(mm * 10) / 10);
