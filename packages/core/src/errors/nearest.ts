/** The known word most like `word`: one it begins, or one a slip of the pen away; null when none is near. */
export function nearest(word: string, known: readonly string[]): string | null {
  const lower = here(word.toLowerCase());
  const begun = known.filter((k) => lower.length > 1 && k.toLowerCase().startsWith(lower));
  const limit = Math.ceil(word.length / 2);
  // words that differ in length by more are not near; so a very long word costs nothing
  const near = known.filter((k) => Math.abs(k.length - word.length) <= limit);
  const best = (begun.length > 0 ? begun : near)
    .map((k) => ({ k, d: slips(lower, k.toLowerCase()), mixed: letters(lower) === letters(k.toLowerCase()) }))
    // letters that changed places are one slip of the pen, though two are counted
    .toSorted((a, b) => a.d - b.d || Number(b.mixed) - Number(a.mixed))[0];
  return best !== undefined && (begun.length > 0 || best.d <= limit) ? best.k : null;
}

const letters = (word: string): string => word.split('').toSorted().join('');

/** Spellings and units that are written differently elsewhere, as they are written here. */
const ELSEWHERE: readonly (readonly [RegExp, string])[] = [
  [/^inch(es)?$/, 'in'],
  [/^millimet(er|re)s?$/, 'mm'],
  [/aluminum/, 'aluminium'],
  [/galvanized/, 'galvanised'],
];

const here = (word: string): string => ELSEWHERE.reduce((w, [from, to]) => w.replace(from, to), word);

/** Letters put in, left out or replaced between two words, the least number that makes one the other (Levenshtein 1966). */
export function slips(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (const letter of a.split('')) {
    const last = row;
    row = [(last[0] as number) + 1];
    for (let j = 1; j <= b.length; j++) {
      const [aside, above, over] = [row[j - 1], last[j], last[j - 1]] as [number, number, number];
      row.push(Math.min(aside + 1, above + 1, letter === b[j - 1] ? over : over + 1));
    }
  }
  return row.at(-1) as number;
}

/** The tail of an error about a name: the nearest known one, if any is near, and the list of all. */
export function suggestion(word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  const list = `Known: ${known.join(', ') || 'none'}`;
  return near === null ? list : `Did you mean "${near}"? ${list}`;
}
