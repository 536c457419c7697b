import type { Flowing, Strip } from './flow.js';
import { letter, lines } from './letter.js';
import type { Item } from './page.js';
import type { Typeface } from './typeface.js';

/**
 * A table: a column that grows breaks its texts into lines, the others are as wide as their texts; where that is too
 * much all do.
 */
export interface Table {
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
export interface Setting {
  readonly face: Typeface;
  readonly height: number;
}

const PAD = 1; // mm left and right of a cell's text
const FIRST = 1.3; // from a row's top to the first base line, in heights of text
const LEAD = 1.6; // from base line to base line
const LAST = 0.45; // from the last base line to the row's bottom
const LEAST = 18; // mm, width of a column that grows

const textOf = (cell: Cell): string => (typeof cell === 'string' ? cell : cell.text);

/** A table as wide as its column. */
export function tableFlow(table: Table, setting: Setting): Flowing {
  const natural = naturalWidths(table, setting);
  return (width) => {
    const columns = placed(table, natural, width);
    const strip = (cells: readonly Cell[], bold: boolean) =>
      rowStrip(cells, columns, width, bold, setting, table.rowHeight ?? 0);
    return {
      alt: null,
      heading: headingStrip(table.heading, setting),
      head: strip(
        table.columns.map((c) => c.title),
        true,
      ),
      rows: [
        ...table.rows.map((cells) => strip(cells, false)),
        ...(table.notes ?? []).map((note) => noteStrip(note, width, setting)),
      ],
    };
  };
}

/** A heading over a passage. */
export function headingStrip(text: string, { face, height }: Setting): Strip {
  const own = 1.2 * height;
  return {
    height: own + 0.9 * height,
    items: [letter(face, text, [0, -own], { height: own, bold: true })],
  };
}

/** Paragraphs, perhaps under a heading, as wide as their column. */
export function notesFlow(heading: string | null, notes: readonly string[], setting: Setting): Flowing {
  return (width) => ({
    alt: null,
    heading: heading === null ? null : headingStrip(heading, setting),
    head: null,
    rows: notes.map((note) => noteStrip(note, width, setting)),
  });
}

function noteStrip(note: string, width: number, { face, height }: Setting): Strip {
  const broken = lines(face, note, width, height);
  return {
    height: LEAD * height * broken.length + 0.4 * height,
    items: broken.map((text, i) => letter(face, text, [0, -(FIRST + LEAD * i) * height], { height })),
  };
}

interface Placed extends Column {
  /** Its texts are broken into lines. */
  readonly breaks: boolean;
  readonly x: number;
  readonly width: number;
}

function naturalWidths({ columns, rows }: Table, { face, height }: Setting): readonly number[] {
  return columns.map(
    (c, i) =>
      Math.max(
        height * face.width(c.title, 'bold'),
        ...rows.map((r) => height * face.width(textOf(r[i] ?? ''), 'regular')),
      ) +
      2 * PAD,
  );
}

function placed({ columns }: Table, natural: readonly number[], width: number): readonly Placed[] {
  const fixed = natural.reduce((sum, w, i) => sum + (columns[i]?.grows ? 0 : w), 0);
  const growing = columns.filter((c) => c.grows).length;
  const free = (width - fixed) / Math.max(1, growing);
  // with too little room for that every column gives way and breaks its texts
  const tight = fixed + LEAST * growing > width;
  const all = natural.reduce((sum, w) => sum + Math.min(w, width / 2), 0);
  let x = 0;
  return columns.map((c, i) => {
    const own = natural[i] as number;
    const given = tight ? (Math.min(own, width / 2) * width) / all : c.grows ? free : own;
    x += given;
    return { ...c, breaks: tight || c.grows === true, x: x - given, width: given };
  });
}

function rowStrip(
  cells: readonly Cell[],
  columns: readonly Placed[],
  width: number,
  bold: boolean,
  { face, height }: Setting,
  least: number,
): Strip {
  const weight = bold ? 'bold' : 'regular';
  const broken = cells.map((cell, i) => {
    const column = columns[i] as Placed;
    const text = textOf(cell);
    return column.breaks ? lines(face, text, column.width - 2 * PAD, height, weight) : [text];
  });
  const count = Math.max(1, ...broken.map((b) => b.length));
  const text = (FIRST + LEAD * (count - 1) + LAST) * height;
  const own = Math.max(text, bold ? 0 : least);
  const down = (own - text) / 2;
  const items = broken.flatMap((texts, i) => {
    const { x, width: w, align = 'start' } = columns[i] as Placed;
    const cell = cells[i] as Cell;
    const { text: _, ...states } = typeof cell === 'string' ? { text: cell } : cell;
    return texts
      .filter((t) => t !== '')
      .map((text, k) =>
        letter(face, text, [align === 'start' ? x + PAD : x + w - PAD, -down - (FIRST + LEAD * k) * height], {
          height,
          align,
          bold,
          ...states,
        }),
      );
  });
  const rule: Item = {
    kind: 'stroke',
    pen: bold ? 'narrow' : 'faint',
    points: [
      [0, -own],
      [width, -own],
    ],
  };
  const uprights = columns
    .filter((c) => c.blank)
    .map(
      ({ x }): Item => ({
        kind: 'stroke',
        pen: 'faint',
        points: [
          [x, 0],
          [x, -own],
        ],
      }),
    );
  return { height: own, items: [...items, rule, ...uprights] };
}
