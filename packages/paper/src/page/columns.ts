import { widestWord } from './letter.js';
import type { Typeface } from './typeface.js';

/**
 * A table: a column that grows breaks its texts into lines, the others are as wide as their texts; where that is too
 * much all do, none narrower than its widest word while there is room for that.
 */
export interface PaperTable {
  readonly heading: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** Said under it. */
  readonly notes?: readonly string[];
  /** Least height of a row, mm: to write into. */
  readonly rowHeight?: number;
}

/** A column of a table. */
export interface Column {
  readonly title: string;
  readonly align?: 'start' | 'end';
  readonly grows?: boolean;
  /** Empty, to be written into: a line stands before it. */
  readonly blank?: boolean;
}

/** A text in a table, with the size it states where it states one, and the name of a page it leads to. */
export type Cell = string | { readonly text: string; readonly value?: number; readonly link?: string };

/** How texts of a page are set. */
export interface TypeSetting {
  readonly face: Typeface;
  readonly height: number;
}

/** mm left and right of a cell's text */
export const PAD = 1;
const LEAST = 18; // mm, width of a column that grows

/** What a cell says. */
export const textOf = (cell: Cell): string => (typeof cell === 'string' ? cell : cell.text);

/** A column where it stands. mm */
export interface PlacedBlock extends Column {
  /** Its texts are broken into lines. */
  readonly breaks: boolean;
  readonly x: number;
  readonly width: number;
}

/** Widths of a column with its texts in one line each, and with a line for each word. mm */
export interface Widths {
  readonly whole: number;
  readonly word: number;
}

/** What a table's columns would take. */
export function naturalWidths(
  { columns, rows }: PaperTable,
  { face, height }: TypeSetting,
): readonly Widths[] {
  return columns.map((c, i) => {
    const texts = rows.map((r) => textOf(r[i] ?? ''));
    const whole = texts.map((t) => height * face.width(t, 'regular'));
    const word = texts.map((t) => widestWord(face, t, height));
    return {
      whole: Math.max(height * face.width(c.title, 'bold'), ...whole) + 2 * PAD,
      word: Math.max(widestWord(face, c.title, height, 'bold'), ...word) + 2 * PAD,
    };
  });
}

/** The columns of a table as wide as its column of the page. */
export function placed(
  { columns }: PaperTable,
  natural: readonly Widths[],
  width: number,
): readonly PlacedBlock[] {
  const least = natural.map(({ whole, word }, i) => (columns[i]?.grows ? Math.max(LEAST, word) : whole));
  // with too little room for that every column gives way and breaks its texts
  const tight = sum(least) > width;
  const given = tight ? squeezed(natural, width) : grown(columns, natural, least, width);
  let x = 0;
  return columns.map((c, i) => {
    const own = given[i] as number;
    x += own;
    return { ...c, breaks: tight || c.grows === true, x: x - own, width: own };
  });
}

const sum = (widths: readonly number[]): number => widths.reduce((a, b) => a + b, 0);

/** Columns that grow share what the others leave: alike where it is enough, else none more than its texts take in a line. */
function grown(
  columns: readonly Column[],
  natural: readonly Widths[],
  least: readonly number[],
  width: number,
): readonly number[] {
  const growing = columns.flatMap((c, i) => (c.grows ? [i] : []));
  const free = width - sum(least.filter((_, i) => !columns[i]?.grows));
  const share = free / Math.max(1, growing.length);
  const wholes = growing.map((i) => natural[i]?.whole ?? 0);
  const asked = wholes.every((w) => w <= share) ? growing.map(() => share) : levelled(wholes, free);
  const want = asked.map((w) => w + (free - sum(asked)) / growing.length);
  const over = sum(growing.map((i, k) => Math.max(0, (least[i] as number) - (want[k] as number))));
  const given = new Map(growing.map((i, k) => [i, Math.max(least[i] as number, want[k] as number)]));
  const roomy = growing.filter((i) => (given.get(i) as number) > (least[i] as number));
  const spare = sum(roomy.map((i) => (given.get(i) as number) - (least[i] as number)));
  return least.map((w, i) => {
    const own = given.get(i);
    if (own === undefined) return w;
    return roomy.includes(i) ? own - (over * (own - w)) / spare : own;
  });
}

/** Every column as wide as its widest word, and more by what its texts want; with too little even for words the widest give way. */
function squeezed(natural: readonly Widths[], width: number): readonly number[] {
  const words = natural.map((n) => n.word);
  const free = width - sum(words);
  if (free < 0) return levelled(words, width);
  const wants = natural.map(({ whole, word }) => Math.max(0, Math.min(whole, width / 2) - word));
  const all = sum(wants);
  return words.map((w, i) => w + (all === 0 ? free / words.length : (free * (wants[i] as number)) / all));
}

/** Widths that fill `width`: those that ask for less than an equal share of it get what they ask for. */
function levelled(widths: readonly number[], width: number): readonly number[] {
  const order = widths.map((_, i) => i).toSorted((a, b) => (widths[a] as number) - (widths[b] as number));
  const given: number[] = [];
  order.forEach((i, k) => {
    given[i] = Math.min(
      widths[i] as number,
      (width - sum(given.filter((w) => w !== undefined))) / (widths.length - k),
    );
  });
  return given;
}
