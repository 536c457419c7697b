import type { Point } from '@tinwright/core';
import { fitted, letter, lines } from './letter.js';
import { type Item, moved } from './page.js';
import type { TypeSetting } from './table.js';

/** What a title block says. All texts ready to print. */
export interface Title {
  readonly caution: string;
  readonly name: string;
  readonly what: string;
  readonly job: string;
  /** Only where one is given: a sheet says the same whenever it is printed. */
  readonly date: string;
  readonly stock: string;
  readonly make: string;
  readonly sizes: string;
  /** Length of the bar to measure, mm, and what stands beside it; null on sheets without a scale. */
  readonly bar: Bar | null;
  /** The longest texts that stand in its two fields that change: they are as wide on every sheet. */
  readonly widest: SheetOf;
}

/** A bar to lay a rule on. */
export interface Bar {
  readonly length: number;
  readonly parts: number;
  readonly text: string;
}

/** What changes from sheet to sheet. */
export interface SheetOf {
  readonly sheet: string;
  readonly scale: string;
}

const PAD = 1.2; // mm
const LEAD = 1.55; // from base line to base line, in heights of text
const BAR = 1.4; // mm, height of the bar

interface Row {
  readonly height: number;
  /** Texts and lines with the row's upper left corner at (0, 0). */
  readonly items: readonly Item[];
}

/** Height of a title block, mm. */
export function titleHeight(title: Title, width: number, setting: TypeSetting): number {
  return rowsOf(title, { sheet: '', scale: '' }, width, setting).reduce((sum, r) => sum + r.height, 0);
}

/** A title block as wide as the frame, its lower left corner at `at`. mm of the page */
export function titleBlock(
  title: Title,
  of: SheetOf,
  at: Point,
  width: number,
  setting: TypeSetting,
): readonly Item[] {
  const rows = rowsOf(title, of, width, setting);
  let y = at[1] + rows.reduce((sum, r) => sum + r.height, 0);
  return rows.flatMap((row, i): readonly Item[] => {
    const top = y;
    y -= row.height;
    const rule: Item = {
      kind: 'stroke',
      pen: i === 0 ? 'wide' : 'narrow',
      points: [
        [at[0], top],
        [at[0] + width, top],
      ],
    };
    return [rule, ...moved(row.items, [at[0], top])];
  });
}

function rowsOf(t: Title, { sheet, scale }: SheetOf, width: number, setting: TypeSetting): readonly Row[] {
  return [
    paragraph(t.caution, width, setting),
    nameRow(t, sheet, width, setting),
    ...(t.job === '' && t.date === '' ? [] : [pair(t.job, t.date, width, setting)]),
    ...(t.stock === '' && t.make === '' ? [] : [sidesRow(t.stock, t.make, width, setting)]),
    ...(t.sizes === '' ? [] : [paragraph(t.sizes, width, setting)]),
    ...(t.bar === null ? [] : barRows(t.bar, scale, t.widest.scale, width, setting)),
  ];
}

function paragraph(text: string, width: number, { face, height }: TypeSetting): Row {
  const broken = lines(face, text, width - 2 * PAD, height);
  return {
    height: (1.4 + LEAD * Math.max(0, broken.length - 1) + 0.5) * height,
    items: broken.map((l, i) => letter(face, l, [PAD, -(1.4 + LEAD * i) * height], { height })),
  };
}

/** A text that may be cut short, and one to its right behind a line that is not. */
function pair(left: string, right: string, width: number, { face, height }: TypeSetting): Row {
  const own = 1.9 * height;
  const base = -1.4 * height;
  const taken = right === '' ? 0 : height * face.width(right, 'regular') + 2 * PAD;
  const free = width - taken - 2 * PAD;
  return {
    height: own,
    items: [
      ...(left === '' ? [] : [letter(face, fitted(face, left, free, { height }), [PAD, base], { height })]),
      ...(right === ''
        ? []
        : [upright(width - taken, own), letter(face, right, [width - PAD, base], { height, align: 'end' })]),
    ],
  };
}

/** Two texts with a line between them, neither cut short: the left one goes on in further lines. */
function sidesRow(left: string, right: string, width: number, { face, height }: TypeSetting): Row {
  const taken = right === '' ? 0 : height * face.width(right, 'regular') + 2 * PAD;
  const row = paragraph(left, width - taken, { face, height });
  if (right === '') return row;
  const said = letter(face, right, [width - PAD, -1.4 * height], { height, align: 'end' });
  const own = Math.max(row.height, 1.9 * height);
  return { height: own, items: [...row.items, upright(width - taken, own), said] };
}

/** The name in large letters, what it is, and the sheet's number. */
function nameRow(
  { name, what, widest }: Title,
  sheet: string,
  width: number,
  { face, height }: TypeSetting,
): Row {
  const large = 1.4 * height;
  const own = 1.9 * large;
  const base = -1.4 * large;
  const taken = height * face.width(widest.sheet, 'regular') + 2 * PAD;
  const title = fitted(face, name, width - taken - 2 * PAD, { height: large, bold: true });
  const named = letter(face, title, [PAD, base], { height: large, bold: true });
  const next = PAD + named.width + 2;
  const free = width - taken - PAD - next;
  return {
    height: own,
    items: [
      named,
      ...(free < 10 || what === ''
        ? []
        : [letter(face, fitted(face, what, free, { height }), [next, base], { height })]),
      upright(width - taken, own),
      ...(sheet === '' ? [] : [letter(face, sheet, [width - PAD, base], { height, align: 'end' })]),
    ],
  };
}

/** A bar to lay a rule on, with the scale before it where there is room: prints are often made larger or smaller. */
function barRows(
  bar: Bar,
  scale: string,
  widest: string,
  width: number,
  setting: TypeSetting,
): readonly Row[] {
  const { face, height } = setting;
  const taken = bar.length + 2 + height * face.width(bar.text, 'regular');
  // told the same on every sheet, whether it has a scale or not
  const room = width - 3 * PAD - taken - height * face.width(widest, 'regular');
  if (room > 0) return [barRow(bar, scale, width, setting)];
  return [paragraph(scale, width, setting), barRow(bar, '', width, setting)];
}

function barRow(bar: Bar, scale: string, width: number, { face, height }: TypeSetting): Row {
  const own = 2.6 * height;
  const base = -1.75 * height;
  const left = width - PAD - 2 - bar.length - height * face.width(bar.text, 'regular');
  const y = base + (height - BAR) / 2;
  const step = bar.length / bar.parts;
  const piece = (i: number): Item => {
    const [a, b] = [left + i * step, left + (i + 1) * step];
    const points: readonly Point[] = [
      [a, y],
      [b, y],
      [b, y + BAR],
      [a, y + BAR],
    ];
    return i % 2 === 0 ? { kind: 'fill', points } : { kind: 'stroke', pen: 'narrow', points, closed: true };
  };
  return {
    height: own,
    items: [
      ...(scale === '' ? [] : [letter(face, scale, [PAD, base], { height })]),
      ...Array.from({ length: bar.parts }, (_, i) => piece(i)),
      letter(face, bar.text, [left + bar.length + 2, base], { height, value: bar.length }),
    ],
  };
}

const upright = (x: number, height: number): Item => ({
  kind: 'stroke',
  pen: 'narrow',
  points: [
    [x, 0],
    [x, -height],
  ],
});
