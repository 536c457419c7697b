import type { FlatPattern, Line, Point } from '@tinwright/core';
import type { PlanWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { Flowing } from '../page/flow.js';
import { type Cell, type TypeSetting, tableFlow } from '../page/table.js';
import { bendNumber } from '../pattern/features.js';
import { bendText } from './marking-table.js';
import { folded } from './mirrored.js';
import { axisOf } from './program.js';
import type { BlankEdge, MarkingRow } from './row.js';
import { NEAR } from './strokes.js';

/** The marking program as a table: what to set, from which edges, what to scribe and how far. */
export function programTable(
  flat: FlatPattern,
  program: readonly MarkingRow[],
  dims: Dims,
  words: PlanWords,
  setting: TypeSetting,
): Flowing {
  const w = words.program;
  const [x, y] = flat.blank.max;
  const blank: readonly Cell[] = [
    '',
    '',
    words.marking.blank(dims.text(x), dims.text(y)),
    words.marking.square(dims.text(Math.hypot(x, y))),
  ];
  const rows = program.map((r) => [
    setOf(r, dims),
    edges(r.from, flat, words),
    what(r, flat, dims, words),
    where(r, flat, dims, words),
  ]);
  return tableFlow(
    {
      heading: w.heading,
      columns: [
        { title: w.columns.number, align: 'end' },
        { title: w.columns.set, align: 'end' },
        { title: w.columns.from },
        { title: w.columns.what, grows: true },
        { title: w.columns.where, grows: true },
      ],
      rows: [blank, ...rows].map((cells, i) => [String(i + 1), ...cells]),
      notes: [w.mirrored],
    },
    setting,
  );
}

function setOf({ kind, set, angle }: MarkingRow, dims: Dims): Cell {
  if (angle !== null) return dims.angle(angle);
  if (set === null) return '';
  return kind === 'circle' ? `Ø${dims.fine(set)}` : { text: dims.text(set), value: set };
}

/** Edges by their pairs: both long edges, both ends, all edges. */
function edges(from: readonly BlankEdge[], { blank }: FlatPattern, { program: w }: PlanWords): string {
  if (from.length === 4) return w.all;
  const [x, y] = blank.max;
  const pair = (a: BlankEdge, b: BlankEdge) => from.includes(a) && from.includes(b);
  const ends = x >= y ? ['west', 'east'] : ['south', 'north'];
  const [long, short] =
    x >= y ? [pair('south', 'north'), pair('west', 'east')] : [pair('west', 'east'), pair('south', 'north')];
  const left = from.filter((e) => (ends.includes(e) ? !short : !long));
  return [...(long ? [w.long] : []), ...(short ? [w.ends] : []), ...left.map((e) => w.edges[e])].join(', ');
}

/** What the strokes of a row are for; bends that are alike by their numbers. */
function what(r: MarkingRow, { bends }: FlatPattern, dims: Dims, words: PlanWords): string {
  const groups = new Map<string, { readonly numbers: string[]; readonly index: number }>();
  for (const [index, b] of bends.entries()) {
    if (!r.for.includes(`bend ${b.id}`)) continue;
    const key = `${b.direction} ${b.angle} ${b.hem}`;
    const group = groups.get(key) ?? { numbers: [], index };
    group.numbers.push(bendNumber(index));
    groups.set(key, group);
  }
  const named = [...groups.values()].map(({ numbers, index }) =>
    bendText(numbers, bends[index] as (typeof bends)[number], dims, words),
  );
  const others = r.for.flatMap((f): readonly string[] => {
    if (f.startsWith('bend ')) return [];
    if (f === 'notch') return [words.marking.cut];
    if (f === 'scribe') return [words.marking.scribe];
    const sight = /^sight line (.*)$/.exec(f)?.[1];
    if (sight !== undefined) return [words.marking.sight(bendNumber(bends.findIndex((b) => b.id === sight)))];
    if (f === 'relief' || f === 'hole') return [words.program.hole];
    return [words.mark(r.strokes.length, words.fastener(f))];
  });
  return [...named, ...others].join('; ');
}

function where(r: MarkingRow, { blank }: FlatPattern, dims: Dims, words: PlanWords): string {
  const w = words.program;
  const size = blank.max;
  const { strokes, mirrored } = folded(r.strokes, size);
  const point = ([x, y]: Point) => `${dims.text(x)}\u00A0|\u00A0${dims.text(y)}`;
  const unique = (list: readonly string[]) => [...new Set(list)].join('; ');
  const images =
    mirrored.some((m) => m) && strokes.length < r.strokes.length
      ? ` (${w.count(r.strokes.length, mirrored)})`
      : '';
  if (r.kind === 'parallel') return `${spans(r.strokes, size, dims, words)}`;
  if (r.kind === 'punch') return punched(r, blank.max, dims, words);
  const told = strokes.map(([a, b]) => (r.kind === 'circle' ? point(a) : w.points(point(a), point(b))));
  return unique(told) + images;
}

/** How far lines run, from the near or left edge; the same on both sides told once. */
function spans(
  strokes: readonly Line[],
  size: Point,
  dims: Dims,
  { program: w, marking }: PlanWords,
): string {
  const told = ([0, 1] as const).flatMap((axis) => {
    const other = axis === 0 ? 1 : 0;
    const own = strokes.filter((s) => axisOf(s) === axis);
    if (own.length === 0) return [];
    const length = size[other];
    const ranges = own.map(([a, b]) => [Math.min(a[other], b[other]), Math.max(a[other], b[other])] as const);
    const has = (from: number, to: number) =>
      ranges.some(([a, b]) => Math.abs(a - from) < NEAR && Math.abs(b - to) < NEAR);
    const mirrored = ranges.every(([a, b]) => has(length - b, length - a));
    const kept = ranges.filter(([a, b]) => !mirrored || a + b <= length + NEAR);
    const texts = kept.map(([a, b]) =>
      a < NEAR && b > length - NEAR ? w.whole : marking.span(dims.text(a), dims.text(b)),
    );
    const all = [...new Set(texts)].join('; ');
    const images = mirrored && kept.length < ranges.length ? ` ${w.both}` : '';
    return [`${w.lines[axis]} ${all}${images}`];
  });
  return told.join('. ');
}

/** Where points lie along the lines they are set on; which lines those are where there are both. */
function punched(
  { strokes, set, from }: MarkingRow,
  size: Point,
  dims: Dims,
  { program: w }: PlanWords,
): string {
  const axes = ([0, 1] as const).filter((axis) => from.some((e) => AXIS[e] === axis));
  const told = axes.map((axis) => {
    const on = strokes.filter(([p]) =>
      [p[axis], size[axis] - p[axis]].some((v) => Math.abs(v - (set ?? 0)) < NEAR),
    );
    const values = on.map(([p]) => p[1 - axis] as number).toSorted((a, b) => a - b);
    const at = w.at([...new Set(values.map((v) => dims.text(v)))]);
    return axes.length === 1 ? at : `${w.lines[axis]} ${at}`;
  });
  return told.join('; ');
}

const AXIS: Readonly<Record<BlankEdge, 0 | 1>> = { west: 0, east: 0, south: 1, north: 1 };
