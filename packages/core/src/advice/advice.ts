import { changeOf, type Found, nearestSize, type Room, type SearchBudget } from './nearest-size.js';
import { type Leaf, sizesIn, withValue, wordsIn } from './values.js';

/** A change of one size with which a part works, the others left as they are: `found` has itself been tried. */
export interface SizeAdvice extends Leaf<number>, Found {}

/** Words of a list, each of which works in place of the one given. */
export interface WordAdvice extends Leaf<string> {
  readonly words: readonly string[];
}

/** Something to change that has been tried and works. Words for it are a language's; no sentence in it. */
export type Advice = SizeAdvice | WordAdvice;

/** Tries parameters: see `Room`. */
export type Trial = (params: unknown) => Room;

/**
 * Sizes of a part with which it works, the least change first: each is searched by itself, the others as they are.
 * What is printed of it (`found`, a multiple of the budget's step) has itself been tried.
 * @param room tries parameters; null where they cannot be made at all
 * @param sizes those that may change; default: every number there is
 */
export function sizeAdvice(
  params: unknown,
  room: Trial,
  budget: (size: Leaf<number>) => SearchBudget,
  sizes: readonly Leaf<number>[] = sizesIn(params),
): readonly SizeAdvice[] {
  const found = sizes.flatMap((size): readonly SizeAdvice[] => {
    const { path, given } = size;
    const near = nearestSize(given, (v) => room(withValue(params, path, v)), budget(size));
    return near === null ? [] : [{ path, given, ...near }];
  });
  return found.toSorted((a, b) => changeOf(a.given, a.found) - changeOf(b.given, b.found));
}

/**
 * Words with which a part works, in the order of the list: `relief: hole`.
 * @param words those a parameter takes, by its path; [] for one that takes none
 */
export function wordAdvice(
  params: unknown,
  room: Trial,
  words: (word: Leaf<string>) => readonly string[],
): readonly WordAdvice[] {
  return wordsIn(params).flatMap((leaf): readonly WordAdvice[] => {
    const good = words(leaf).filter((w) => {
      const found = w === leaf.given ? null : room(withValue(params, leaf.path, w));
      return found !== null && found >= 0;
    });
    return good.length === 0 ? [] : [{ ...leaf, words: good }];
  });
}
