import { distance } from 'fastest-levenshtein';

/** The known word most like `word`, or null when none is close enough to be a slip of the pen. */
export function nearest(word: string, known: readonly string[]): string | null {
  const limit = Math.ceil(word.length / 2);
  const best = known
    .map((k) => ({ k, d: distance(word.toLowerCase(), k.toLowerCase()) }))
    .toSorted((a, b) => a.d - b.d)[0];
  return best !== undefined && best.d <= limit ? best.k : null;
}

/** The tail of an error about a name: the nearest known one, if any is near, and the list of all. */
export function suggestion(word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  const list = `Known: ${known.join(', ')}`;
  return near === null ? list : `Did you mean "${near}"? ${list}`;
}
