import type { Box } from '@tinwright/core';
import { type Flowing, flow, type SetPassage, setItems } from './flow.js';
import type { Anchor, Block } from './page.js';
import type { PendingPage } from './pending.js';
import { COLUMN, columnsIn, frameLine, type PaperSheet, roomOf } from './sheet.js';
import type { TypeSetting } from './table.js';
import { type Title, titleBlock, titleHeight } from './title-block.js';

/** Sheets to set passages on. mm */
export interface SheetsAsk {
  /** Title of every page, for the file. */
  readonly name: string;
  readonly title: Title;
  /** A sheet with something on it already, and what it leaves free; null to start on an empty one. */
  readonly first: {
    readonly sheet: PaperSheet;
    readonly blocks: readonly Block[];
    readonly left: Box | null;
    readonly scale: string;
  } | null;
  /** Sheets after that, as many as it takes. */
  readonly rest: PaperSheet;
  readonly passages: readonly Flowing[];
  /** Runs of passages that begin at one: each sheet is named after those on it, and can be led to where one starts. */
  readonly chapters?: readonly Chapter[];
  readonly setting: TypeSetting;
  readonly sheet: (n: number, of: number) => string;
}

/** A run of passages: the first of them, its name to lead to (null for one nothing leads to), its title. */
export interface Chapter {
  readonly first: number;
  readonly name: string | null;
  readonly title: string;
}

const BETWEEN = 10; // mm between columns

/** Passages set on framed sheets with a title block, each with its number. */
export function setSheets({
  name,
  title,
  first,
  rest,
  passages,
  chapters = [],
  setting,
  sheet,
}: SheetsAsk): readonly PendingPage[] {
  const heightOf = (width: number) => titleHeight(title, width, setting);
  const places = columnPlaces(first === null ? null : { left: first.left }, rest, heightOf);
  const sets = flow(
    passages,
    (i) => places(i).box,
    chapters.map((c) => c.first),
  );
  const count = 1 + Math.max(0, ...sets.map((s) => places(s.column).page));
  const onPage = (n: number) => sets.filter((s) => places(s.column).page === n);
  return Array.from({ length: count }, (_, n): PendingPage => {
    const on = n === 0 && first !== null ? first : null;
    const { width, height, frame } = on?.sheet ?? rest;
    const own = onPage(n);
    const here = chaptersOn(own, chapters);
    const before = chaptersOn(sets.slice(0, sets.indexOf(own[0] as SetPassage)), chapters);
    const begun = here.flatMap(({ name, title }): readonly Anchor[] =>
      name === null || before.some((c) => c.name === name) ? [] : [{ name, title, level: 0 }],
    );
    const of = { sheet: sheet(n + 1, count), scale: on?.scale ?? '' };
    const named = here.length === 0 ? title : { ...title, name: here.map((c) => c.title).join(', ') };
    return {
      title: name,
      ...(begun.length > 0 && { anchors: begun }),
      width,
      height,
      draw: () => {
        const strip = titleBlock(named, of, frame.min, frame.max[0] - frame.min[0], setting);
        return [
          ...(on?.blocks ?? []),
          ...own.map((s): Block => ({ alt: s.alt, items: setItems(s) })),
          { alt: null, items: [frameLine(frame), ...strip] },
        ];
      },
    };
  });
}

/** Chapters that some of these passages are of, in their order. */
function chaptersOn(sets: readonly SetPassage[], chapters: readonly Chapter[]): readonly Chapter[] {
  const found = new Set(sets.map((s) => chapters.findLast((c) => c.first <= s.passage)));
  return chapters.filter((c) => found.has(c));
}

interface Place {
  readonly page: number;
  readonly box: Box;
}

/** Columns in order: those left on the first sheet where it is taken, then those of the others. */
function columnPlaces(
  first: { readonly left: Box | null } | null,
  rest: PaperSheet,
  titleHeightAt: (width: number) => number,
): (index: number) => Place {
  const own = first === null || first.left === null ? [] : columnsIn(first.left, COLUMN, BETWEEN);
  const height = titleHeightAt(rest.frame.max[0] - rest.frame.min[0]);
  const others = columnsIn(roomOf(rest, height), COLUMN, BETWEEN);
  return (index) => {
    if (index < own.length) return { page: 0, box: own[index] as Box };
    const later = index - own.length;
    const page = (first === null ? 0 : 1) + Math.floor(later / others.length);
    return { page, box: others[later % others.length] as Box };
  };
}
