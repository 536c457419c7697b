import type { Box, Point } from '@tinwright/core';
import { type Item, moved } from './page.js';

/** Something as wide as a column: `items` hang down from (0, 0), `height` mm of it. */
export interface Strip {
  readonly height: number;
  readonly items: readonly Item[];
  /** What a picture shows, where the strip is one by itself. */
  readonly alt?: string;
  /** It is never parted from the row behind it. */
  readonly withNext?: boolean;
}

/** Something to set in columns: its heading stays with its first row, its head stands over the rows of every column. */
export interface Passage {
  readonly alt: string | null;
  readonly heading: Strip | null;
  readonly head: Strip | null;
  readonly rows: readonly Strip[];
}

/** A passage laid out for a column's width; the number of its rows does not depend on it. */
export type Flowing = (width: number) => Passage;

/** A part of a passage where it stands in a column. */
export interface SetPassage {
  /** Which passage it is of, from 0. */
  readonly passage: number;
  readonly column: number;
  readonly alt: string | null;
  readonly strips: readonly Strip[];
  /** Upper left corner of the first strip, mm of the page. */
  readonly at: Point;
}

/** A passage with what of it is set already. */
interface Waiting {
  readonly flowing: Flowing;
  readonly passage: number;
  readonly from: number;
}

const APART = 5; // mm between passages
const TINY = 1e-9;
const SHORT = 8; // rows; a passage of no more is not torn apart
const FEW = 3; // rows that a longer one leaves behind at least,
const HIGH = 30; // mm, or as much of it
const EMPTY = 3; // columns a row may find too low before it is given up

/**
 * Set passages one after the other in columns, broken only between rows. One that does not fit into the rest of a
 * column lets a later one of its chapter that does go first. Columns come from `columnAt` as they are needed.
 * @param chapters the passages that begin a chapter, in their order: none of it stands before the end of the one before
 * @throws RangeError for a row that is higher than every column
 */
export function flow(
  passages: readonly Flowing[],
  columnAt: (index: number) => Box,
  chapters: readonly number[] = [],
): readonly SetPassage[] {
  const found: SetPassage[] = [];
  const chapterOf = (passage: number) => chapters.findLast((first) => first <= passage) ?? 0;
  let waiting: readonly Waiting[] = passages.map((flowing, passage) => ({
    flowing: once(flowing),
    passage,
    from: 0,
  }));
  let empty = 0;
  for (let column = 0; waiting.length > 0; column++) {
    const filled = fill(waiting, column, columnAt(column), chapterOf);
    found.push(...filled.sets);
    waiting = filled.waiting;
    empty = filled.sets.length === 0 ? empty + 1 : 0;
    if (empty > EMPTY) throw new RangeError('a row is higher than a column');
  }
  return found;
}

/** A passage that is laid out once for each width. */
export function once(flowing: Flowing): Flowing {
  const known = new Map<number, Passage>();
  return (width) => {
    const passage = known.get(width) ?? flowing(width);
    known.set(width, passage);
    return passage;
  };
}

interface Filled {
  readonly sets: readonly SetPassage[];
  readonly waiting: readonly Waiting[];
}

/** One column filled from the top with what is waiting; what is left over. */
function fill(
  waiting: readonly Waiting[],
  column: number,
  box: Box,
  chapterOf: (passage: number) => number,
): Filled {
  const sets: SetPassage[] = [];
  const left: Waiting[] = [];
  const isLate = (passage: number) =>
    left[0] !== undefined && chapterOf(left[0].passage) < chapterOf(passage);
  let y = box.max[1];
  for (const one of waiting) {
    const passage = one.flowing(box.max[0] - box.min[0]);
    const above = sets.length > 0 ? APART : 0;
    const part = partOf(passage, one.from, y - above - box.min[1]);
    const place = left.length > 0 ? 'late' : sets.length > 0 ? 'next' : 'alone';
    if (isLate(one.passage) || !mayStand(part, passage, one.from, place)) {
      if (passage.rows.length > one.from) left.push(one);
      continue;
    }
    y -= above;
    for (const run of runsOf(part.strips, passage.alt)) {
      sets.push({ passage: one.passage, column, alt: run.alt, strips: run.strips, at: [box.min[0], y] });
      y -= heightOf(run.strips);
    }
    if (part.next < passage.rows.length) left.push({ ...one, from: part.next });
  }
  return { sets, waiting: left };
}

/** True for rows that may stand here: what can stand whole in a column of its own is not torn for a few of them, nor behind something that waits. */
function mayStand(
  { strips, next }: RowsSet,
  { rows }: Passage,
  from: number,
  place: 'alone' | 'next' | 'late',
): boolean {
  if (next <= from) return false;
  if (place === 'alone' || next === rows.length) return true;
  const little = next - from < FEW && heightOf(strips) < HIGH;
  return place === 'next' && rows.length > SHORT && !little;
}

/** Rows set, with what stands over them, and the first that is not. */
interface RowsSet {
  readonly strips: readonly Strip[];
  readonly next: number;
}

/** As many rows from one on as fit, with what stands over them. */
function partOf({ heading, head, rows }: Passage, from: number, room: number): RowsSet {
  const over = [from === 0 ? heading : null, head].filter((s) => s !== null);
  let free = room - heightOf(over);
  let next = from;
  for (const [i, row] of rows.entries()) {
    if (i < from) continue;
    free -= row.height;
    if (free < -TINY) break;
    if (row.withNext !== true) next = i + 1;
  }
  return { strips: [...over, ...rows.slice(from, next)], next };
}

/** Strips in runs: pictures by themselves, what stands between them together. */
function runsOf(
  strips: readonly Strip[],
  alt: string | null,
): readonly { readonly alt: string | null; readonly strips: readonly Strip[] }[] {
  const runs: { alt: string | null; strips: Strip[] }[] = [];
  for (const strip of strips) {
    const last = runs.at(-1);
    if (strip.alt !== undefined || last === undefined || last.strips.at(-1)?.alt !== undefined)
      runs.push({ alt: strip.alt ?? alt, strips: [strip] });
    else last.strips.push(strip);
  }
  return runs;
}

const heightOf = (strips: readonly Strip[]): number => strips.reduce((sum, s) => sum + s.height, 0);

/** What stands in a column, where it stands on the page. */
export function setItems({ strips, at: [x, top] }: SetPassage): readonly Item[] {
  let y = top;
  return strips.flatMap((s) => {
    const set = moved(s.items, [x, y]);
    y -= s.height;
    return set;
  });
}
