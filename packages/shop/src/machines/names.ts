import type { Problem } from '@tinwright/core';
import type { Gives } from '@tinwright/core/family';
import { quoted } from '@tinwright/core/internal';
import * as z from 'zod/mini';

const LONGEST_LINE = 200;

/** A line of text, which may be empty. */
export const lineOf = (): Gives<string> =>
  z.string().check(z.maxLength(LONGEST_LINE, { error: `longer than ${LONGEST_LINE} characters` }));

/** A name others are told apart by. */
export const nameOf = (): Gives<string> =>
  z
    .string()
    .check(
      z.minLength(1, { error: 'an empty name given' }),
      z.maxLength(LONGEST_LINE, { error: `longer than ${LONGEST_LINE} characters` }),
    );

/** Entries of a list that have a name another has before them. */
export function twinProblems(
  path: Problem['path'],
  list: readonly { readonly name: string }[],
): readonly Problem[] {
  return list.flatMap(({ name }, i): readonly Problem[] => {
    const first = list.findIndex((o) => o.name === name);
    if (first === i) return [];
    const message = `the name ${quoted(name)} is taken by number ${first + 1}`;
    return [{ code: 'name-twice', path: [...path, i, 'name'], message, fix: 'Give each a name of its own' }];
  });
}
