import { frozen } from '@tinwright/core/internal';

/** A sheet of paper by its name, portrait. mm */
export interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** Papers a workshop prints on, smaller first: ISO 216 and ANSI/ASME Y14.1. */
export const PAPERS: readonly Paper[] = frozen([
  { name: 'A4', width: 210, height: 297 },
  { name: 'letter', width: 215.9, height: 279.4 },
  { name: 'A3', width: 297, height: 420 },
  { name: 'tabloid', width: 279.4, height: 431.8 },
]);

/** A paper by its name. @throws RangeError naming those there are */
export function paperNamed(name: string): Paper {
  const found = PAPERS.find((p) => p.name === name);
  if (found !== undefined) return found;
  throw new RangeError(`paper ${name} given, ${PAPERS.map((p) => p.name).join(', ')} allowed`);
}

/** Recommended scales, page over part (ISO 5455), larger first. */
export const SCALES: readonly { readonly text: string; readonly ratio: number }[] = frozen([
  { text: '10:1', ratio: 10 },
  { text: '5:1', ratio: 5 },
  { text: '2:1', ratio: 2 },
  { text: '1:1', ratio: 1 },
  { text: '1:2', ratio: 1 / 2 },
  { text: '1:5', ratio: 1 / 5 },
  { text: '1:10', ratio: 1 / 10 },
  { text: '1:20', ratio: 1 / 20 },
  { text: '1:50', ratio: 1 / 50 },
  { text: '1:100', ratio: 1 / 100 },
]);

/** Those a pattern may be drawn at: 1:3 and 1:4 too, which the standard leaves out and a sheet of paper often gains by. */
export const PATTERN_SCALES: typeof SCALES = frozen(
  [...SCALES, { text: '1:3', ratio: 1 / 3 }, { text: '1:4', ratio: 1 / 4 }].toSorted(
    (a, b) => b.ratio - a.ratio,
  ),
);
