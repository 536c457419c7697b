import { distance } from 'fastest-levenshtein';

/** The known word most like `word`: one it begins, or one a slip of the pen away; null when none is near. */
export function nearest(word: string, known: readonly string[]): string | null {
  const lower = word.toLowerCase();
  const begun = known.filter((k) => lower.length > 1 && k.toLowerCase().startsWith(lower));
  const limit = Math.ceil(word.length / 2);
  const best = (begun.length > 0 ? begun : known)
    .map((k) => ({ k, d: distance(lower, k.toLowerCase()) }))
    .toSorted((a, b) => a.d - b.d)[0];
  return best !== undefined && (begun.length > 0 || best.d <= limit) ? best.k : null;
}

/** The tail of an error about a name: the nearest known one, if any is near, and the list of all. */
export function suggestion(word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  const list = `Known: ${known.join(', ')}`;
  return near === null ? list : `Did you mean "${near}"? ${list}`;
}
