import {
  type Cell,
  naturalWidths,
  PAD,
  type PaperTable,
  type PlacedBlock,
  placed,
  type TypeSetting,
  textOf,
} from './columns.js';
import type { Flowing, Strip } from './flow.js';
import { letter, lines } from './letter.js';
import type { Item } from './page.js';
import { shortRows } from './short-rows.js';

const FIRST = 1.3; // from a row's top to the first base line, in heights of text
const LEAD = 1.6; // from base line to base line
const LAST = 0.45; // from the last base line to the row's bottom

export type { Cell, Column, PaperTable, TypeSetting } from './columns.js';

/** A row that goes on in the next one has no rule under it. */
type RowKind = 'head' | 'row' | 'goes-on';

/** A table as wide as its column. */
export function tableFlow(table: PaperTable, setting: TypeSetting): Flowing {
  const natural = naturalWidths(table, setting);
  return (width) => {
    const columns = placed(table, natural, width);
    const strip = (cells: readonly Cell[], kind: RowKind) =>
      rowStrip(cells, columns, width, kind, setting, table.rowHeight ?? 0);
    return {
      alt: null,
      heading: headingStrip(table.heading, setting),
      head: strip(
        table.columns.map((c) => c.title),
        'head',
      ),
      rows: [
        ...table.rows.flatMap((row) =>
          shortRows(row).map((cells, i, all) => strip(cells, i < all.length - 1 ? 'goes-on' : 'row')),
        ),
        ...(table.notes ?? []).map((note) => noteStrip(note, width, setting)),
      ],
    };
  };
}

/** A heading over a passage. */
export function headingStrip(text: string, { face, height }: TypeSetting): Strip {
  const own = 1.2 * height;
  return {
    height: own + 0.9 * height,
    items: [letter(face, text, [0, -own], { height: own, bold: true })],
  };
}

/** Paragraphs, perhaps under a heading, as wide as their column. */
export function notesFlow(heading: string | null, notes: readonly string[], setting: TypeSetting): Flowing {
  return (width) => ({
    alt: null,
    heading: heading === null ? null : headingStrip(heading, setting),
    head: null,
    rows: notes.map((note) => noteStrip(note, width, setting)),
  });
}

function noteStrip(note: string, width: number, { face, height }: TypeSetting): Strip {
  const broken = lines(face, note, width, height);
  return {
    height: LEAD * height * broken.length + 0.4 * height,
    items: broken.map((text, i) => letter(face, text, [0, -(FIRST + LEAD * i) * height], { height })),
  };
}

function rowStrip(
  cells: readonly Cell[],
  columns: readonly PlacedBlock[],
  width: number,
  kind: RowKind,
  { face, height }: TypeSetting,
  least: number,
): Strip {
  const bold = kind === 'head';
  const weight = bold ? 'bold' : 'regular';
  const broken = cells.map((cell, i) => {
    const column = columns[i] as PlacedBlock;
    const text = textOf(cell);
    return column.breaks ? lines(face, text, column.width - 2 * PAD, height, weight) : [text];
  });
  const count = Math.max(1, ...broken.map((b) => b.length));
  const text = (FIRST + LEAD * (count - 1) + LAST) * height;
  const own = Math.max(text, bold ? 0 : least);
  const down = (own - text) / 2;
  const items = broken.flatMap((texts, i) => {
    const { x, width: w, align = 'start' } = columns[i] as PlacedBlock;
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
  return { height: own, items: [...items, ...(kind === 'goes-on' ? [] : [rule]), ...uprights] };
}
