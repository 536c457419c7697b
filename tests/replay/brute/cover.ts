// Whether tools of a rack cover the bent stretches of a line that nothing is in the way of: by trying every choice.
import type { Span } from '../step.js';

export interface RackOf {
  readonly pieces: readonly number[];
  readonly gaps: { readonly end: number; readonly inner: number };
}

const SURE = 0.5; // mm kept from every limit, so that what is found holds

/** Where tools stand, or null. @param blocked stretches that something of the part takes */
export function cover(
  line: Span,
  blocked: readonly Span[] | null,
  { pieces, gaps }: RackOf,
): readonly Span[] | null {
  if (blocked === null) return null;
  const open = freeOf(line, blocked);
  if (open.length === 0) return null;
  if (blocked.length === 0) {
    // the whole rack where it reaches
    const all = pieces.reduce((a, b) => a + b, 0);
    return all >= line[1] - line[0] - 2 * (gaps.end - SURE) ? [[-3000, 3000]] : null;
  }
  const between = open.slice(1).map((s, i) => s[0] - (open[i] as Span)[1]);
  if (between.some((b) => b > gaps.inner - SURE)) return null;
  const [first, last] = [open[0] as Span, open.at(-1) as Span];
  const bare = [Math.max(0, first[0] - line[0]), Math.max(0, line[1] - last[1])] as const;
  if (bare.some((b) => b > gaps.end - SURE)) return null;
  // stretches beside each other share what may stay bare between them: all of it is asked of the gap itself
  return fill(open, pieces, (i, wide) => {
    const room = (i === 0 ? gaps.end - bare[0] : 0) + (i === open.length - 1 ? gaps.end - bare[1] : 0);
    return [wide - Math.max(0, room - SURE), wide] as const;
  });
}

/** What of a line is left, widened to either side where the machine is free. */
function freeOf([a, b]: Span, blocked: readonly Span[]): readonly Span[] {
  const cuts = blocked.filter((s) => s[1] > a && s[0] < b);
  const left = cuts.reduce<readonly Span[]>(
    (open, [from, to]) =>
      open.flatMap(([p, q]): readonly Span[] => [
        ...(from > p ? [[p, Math.min(q, from)] as const] : []),
        ...(to < q ? [[Math.max(p, to), q] as const] : []),
      ]),
    [[a, b]],
  );
  return left
    .filter(([p, q]) => q - p > 0.01)
    .filter(([p, q], i, all) => all.findIndex((o) => o[0] === p && o[1] === q) === i);
}

type Asked = (index: number, wide: number) => readonly [number, number];

function fill(
  open: readonly Span[],
  pieces: readonly number[],
  asked: Asked,
  at = 0,
): readonly Span[] | null {
  const span = open[at];
  if (span === undefined) return [];
  const [least, most] = asked(at, span[1] - span[0]);
  for (const chosen of choices(pieces, most)) {
    const sum = chosen.reduce((s, i) => s + (pieces[i] as number), 0);
    if (sum < least || sum > most) continue;
    const rest = fill(
      open,
      pieces.filter((_, i) => !chosen.includes(i)),
      asked,
      at + 1,
    );
    if (rest === null) continue;
    const from =
      at === 0 && open.length > 1
        ? span[1] - sum
        : span[0] + (open.length === 1 ? (span[1] - span[0] - sum) / 2 : 0);
    return [[from, from + sum], ...rest];
  }
  return null;
}

/** Indices of every choice of pieces no wider than `most`. */
function* choices(pieces: readonly number[], most: number, from = 0): Generator<readonly number[]> {
  yield [];
  for (let i = from; i < pieces.length; i++)
    if ((pieces[i] as number) <= most)
      for (const rest of choices(pieces, most - (pieces[i] as number), i + 1)) yield [i, ...rest];
}
