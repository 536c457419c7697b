import type { JobPlan, PartPlan } from '@tinwright/core';
import { COMMON, PART_KEYS, quoted, suggestion } from '@tinwright/core/internal';

/** What keeps a lock from locking anything, told; null when all of them name a place of the job. */
export function strayLock(locks: readonly string[], { parts }: Pick<JobPlan, 'parts'>): string | null {
  for (const lock of locks) {
    const [root, name, parameter] = lock.split('.');
    if (root !== 'parts' || name === undefined) continue;
    const part = parts.find((p) => p.name === name);
    if (part === undefined)
      return stray(
        lock,
        name,
        'no part of the job',
        parts.map((p) => p.name),
      );
    const known = keysOf(part);
    if (parameter !== undefined && !known.includes(parameter))
      return stray(lock, parameter, `nothing that part ${quoted(name)} has`, known);
  }
  return null;
}

const keysOf = ({ family }: PartPlan): readonly string[] => [
  ...PART_KEYS,
  ...Object.keys(family.values),
  ...Object.keys(COMMON),
];

const stray = (lock: string, word: string, is: string, known: readonly string[]): string =>
  `--lock ${lock}: ${quoted(word)} is ${is}. ${suggestion(word, known)}`;
