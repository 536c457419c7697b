import type { PartPlan } from '@tinwright/core';
import type { Flowing } from '../page/flow.js';
import { letter } from '../page/letter.js';
import type { Block, Item, Page, Words } from '../page/page.js';
import { notesFlow, tableFlow } from '../page/table.js';
import { bendNumber, runsAcross } from '../pattern/features.js';
import type { PacketKit } from './kit.js';

/** A size left out of a pattern: the letter in its place. mm */
export interface LetteredSize {
  readonly letter: string;
  readonly value: number;
  /** Numbers of the bends whose line it places, '' for an edge. */
  readonly bends: string;
}

const LETTERS = [...'abcdefghknpqrstuvxyz']; // no wider than a figure
const MOST = 6; // sizes left out of a pattern
const SAME = 1e-6; // mm
const ROW = 14; // mm, to write a working in

/**
 * Sizes to leave out of a part's plan: those of bend lines, else of edges; every one can be worked out from what stays.
 * @param wanted bends whose sizes are left out, by number or name; some of them all when empty
 */
export function blanksFor(
  { flat }: PartPlan,
  pages: readonly Page[],
  pictures: readonly string[],
  wanted: readonly string[] = [],
): readonly LetteredSize[] {
  const printed = unique(
    pages.flatMap((p) =>
      p.blocks
        .filter((b) => b.alt !== null && pictures.includes(b.alt))
        .flatMap((b) =>
          b.items.flatMap((i) => (i.kind === 'words' && i.value !== undefined ? [i.value] : [])),
        ),
    ),
  ).filter((v) => v > SAME && !flat.blank.max.some((m) => near(m, v)));
  const bendsAt = (value: number) =>
    flat.bends
      .flatMap(({ line: [from, to] }, i) =>
        ([0, 1] as const).some((k) => runsAcross({ from, to }, k) && near(from[k], value))
          ? [bendNumber(i)]
          : [],
      )
      .join(' ');
  const names = wanted.flatMap((n) => [
    n,
    ...flat.bends.flatMap((b, i) => (b.id === n ? [bendNumber(i)] : [])),
  ]);
  const isWanted = (bends: string) => wanted.length === 0 || bends.split(' ').some((b) => names.includes(b));
  const onBends = printed.filter((v) => bendsAt(v) !== '' && isWanted(bendsAt(v)));
  if (wanted.length > 0 && onBends.length === 0) return [];
  const chosen = onBends.length > 0 ? spread(onBends) : spread(printed);
  return chosen.map((value, i) => ({ letter: LETTERS[i] as string, value, bends: bendsAt(value) }));
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < SAME;

const unique = (values: readonly number[]): readonly number[] =>
  values.filter((v, i) => values.findIndex((o) => near(o, v)) === i).toSorted((a, b) => a - b);

/** At most so many of a list, evenly. */
const spread = <T>(list: readonly T[]): readonly T[] =>
  list.length <= MOST
    ? list
    : Array.from({ length: MOST }, (_, i) => list[Math.round((i * (list.length - 1)) / (MOST - 1))] as T);

/** Pages with letters in place of sizes, on the pictures named by what they show. */
export function blankedPages(
  pages: readonly Page[],
  blanks: readonly LetteredSize[],
  pictures: readonly string[],
  { setting: { face } }: PacketKit,
): readonly Page[] {
  const blanked = (item: Item): Item => {
    if (item.kind !== 'words' || item.value === undefined) return item;
    const value = item.value;
    const found = blanks.find((b) => near(b.value, value));
    return found === undefined ? item : lettered(item, found.letter);
  };
  const lettered = ({ at: [x, y], width, height, turn }: Words, text: string): Words => {
    const middle = width / 2;
    return letter(face, text, turn === 0 ? [x + middle, y] : [x, y + middle], {
      height,
      turn,
      bold: true,
      align: 'middle',
    });
  };
  const block = (b: Block): Block =>
    b.alt !== null && pictures.includes(b.alt) ? { ...b, items: b.items.map(blanked) } : b;
  return pages.map((p) => ({ ...p, blocks: p.blocks.map(block) }));
}

/** What a student fills in. */
export function worksheetFlows(
  { name, flat }: PartPlan,
  blanks: readonly LetteredSize[],
  set: string,
  { words, dims, setting }: PacketKit,
): readonly Flowing[] {
  const w = words.worksheet;
  const letters = blanks.map((b) => b.letter);
  return [
    notesFlow(
      set,
      [w.name, w.ask(letters.join(', '), dims.unit), w.datum, ...(flat.bends.length > 0 ? w.bends : [])],
      setting,
    ),
    tableFlow(
      {
        heading: w.title(name),
        columns: [
          { title: w.columns.letter },
          { title: w.columns.working, grows: true },
          { title: `${w.columns.size}, ${dims.unit}${'\u00A0'.repeat(12)}`, blank: true },
        ],
        rows: letters.map((l) => [l, '', '']),
        rowHeight: ROW,
      },
      setting,
    ),
  ];
}

/** Answers to the worksheets of all parts. */
export function answerFlows(
  all: readonly { readonly part: string; readonly blanks: readonly LetteredSize[] }[],
  { words, dims, setting }: PacketKit,
): readonly Flowing[] {
  const { answerColumns: c, answersNote, bendLine, edge } = words.worksheet;
  return [
    notesFlow(null, [answersNote], setting),
    tableFlow(
      {
        heading: words.sections.answers,
        columns: [
          { title: c.part },
          { title: c.letter },
          { title: c.what, grows: true },
          { title: `${c.size}, ${dims.unit}`, align: 'end' },
        ],
        rows: all.flatMap(({ part, blanks }) =>
          blanks.map((b) => [
            part,
            b.letter,
            b.bends === '' ? edge : bendLine(b.bends),
            { text: dims.text(b.value), value: b.value },
          ]),
        ),
      },
      setting,
    ),
  ];
}
