import type { Problem } from '@tinwright/core';
import { quoted } from '@tinwright/core/internal';

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
