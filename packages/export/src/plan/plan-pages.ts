import {
  type Box,
  ISO_2768_BANDS,
  linearTolerance,
  MM_PER_INCH,
  type PartPlan,
  plainNumber,
  type ToleranceClass,
} from '@tinwright/core';
import type { Figure } from '../page/figure.js';
import { type Flowing, flow, type Strip } from '../page/flow.js';
import { type Block, moved, type Page } from '../page/page.js';
import { PAPERS, type Paper } from '../page/paper.js';
import { columnsIn, frameLine, roomOf, type Sheet, sheetOf } from '../page/sheet.js';
import { headingStrip, notesFlow, type Setting } from '../page/table.js';
import { typeface } from '../page/typeface.js';
import { detailFigure } from './detail-figure.js';
import { type Dims, dimsOf } from './dims.js';
import { ENGLISH } from './english.js';
import { featuresOf, isRectangle } from './features.js';
import { firstSheet } from './first-sheet.js';
import { formedFigure } from './formed-figure.js';
import { type Marking, markings } from './marking.js';
import { markingTable } from './marking-table.js';
import type { BrakeMarks, PlanOptions } from './options.js';
import { type Ordinate, ordinatesOf } from './ordinates.js';
import { bendTable, finishedTable, roundedTable } from './part-tables.js';
import type { PatternAsk } from './pattern-ask.js';
import { sightLines } from './sight-lines.js';
import { type Title, titleBlock, titleHeight } from './title-block.js';
import type { PlanWords } from './words.js';

const LETTERING = 2.5; // mm, height of capitals on these papers (ISO 3098)
const COLUMN = 168; // mm, least width of a column of tables
const BETWEEN = 10; // mm between columns

/** A plan: its sheets, and the scale of its pattern. */
export interface Plan {
  readonly pages: readonly Page[];
  readonly scale: string;
}

/**
 * The plan of a part, to mark it out and bend it by hand: the pattern with ordinates from one datum corner (ISO 129-1),
 * the formed part, its sizes and bends, and what to scribe in order; on as many sheets as it takes.
 * @param job name of the job, '' for none
 * @throws JobError when the pattern cannot be read on the paper
 */
export function partPlan(job: string, part: PartPlan, options: PlanOptions, brake: BrakeMarks = {}): Plan {
  const { words = ENGLISH, face = typeface(), lettering = LETTERING, tolerance = 'm' } = options;
  const setting: Setting = { face, height: lettering };
  const dims = dimsOf(options.dims);
  const paper = PAPERS.find((p) => p.name === options.paper) as Paper;
  const features = featuresOf(part.flat);
  const sights = sightLines(part.flat.bends, brake.sights ?? []);
  const ask: PatternAsk = {
    name: part.name,
    flat: part.flat,
    features,
    ordinates: ordinatesOf(part.flat, features, dims),
    sights,
    dims,
    words,
    ...setting,
  };
  const title = titleOf(job, part, options, dims, words);
  const heightOf = (width: number) => titleHeight(title, width, setting);
  const first = firstSheet(ask, paper, options.scale, heightOf);
  const rest = sheetOf(paper, paper.width * paper.height < 100_000 ? 'portrait' : 'landscape');
  const places = columnPlaces(first.left, rest, heightOf);
  const list = markings(ask);
  const passages = [
    detailsFlow(
      first.figure.details.map((d) => detailFigure(ask, d)),
      words,
      setting,
    ),
    part.flat.bends.length === 0 ? null : formedFlow(part, dims, words, setting),
    finishedTable(part, dims, words, setting),
    bendTable(part, brake.setAngles ?? {}, dims, words, setting),
    markingTable(part.flat, list, dims, words, setting),
    roundedTable(roundable(part, ask.ordinates, list), dims, tolerance, words, setting),
    notesFlow(words.notes.heading, notesOf(part, words), setting),
  ].filter((f) => f !== null);
  const sets = flow(passages, (i) => places(i).box);
  const count = 1 + Math.max(0, ...sets.map((s) => places(s.column).page));
  const pages = Array.from({ length: count }, (_, n): Page => {
    const sheet = n === 0 ? first.sheet : rest;
    const { min, max } = sheet.frame;
    const pattern: readonly Block[] =
      n === 0 ? [{ alt: first.figure.alt, items: moved(first.figure.items, first.at) }] : [];
    const of = {
      sheet: words.sheet(n + 1, count),
      scale: n === 0 ? words.patternScale(first.scale) : '',
    };
    const strip = titleBlock(title, of, min, max[0] - min[0], setting);
    return {
      title: words.title(part.name, job),
      width: sheet.width,
      height: sheet.height,
      blocks: [
        ...pattern,
        ...sets.filter((s) => places(s.column).page === n).map(({ alt, items }): Block => ({ alt, items })),
        { alt: null, items: [frameLine(sheet.frame), ...strip] },
      ],
    };
  });
  return { pages, scale: first.scale };
}

interface Place {
  readonly page: number;
  readonly box: Box;
}

/** Columns in order: those the pattern leaves on its sheet, then those of further sheets. */
function columnPlaces(
  left: Box | null,
  rest: Sheet,
  titleHeightAt: (width: number) => number,
): (index: number) => Place {
  const own = left === null ? [] : columnsIn(left, COLUMN, BETWEEN);
  const others = columnsIn(
    roomOf(rest, titleHeightAt(rest.frame.max[0] - rest.frame.min[0])),
    COLUMN,
    BETWEEN,
  );
  return (index) => {
    if (index < own.length) return { page: 0, box: own[index] as Box };
    const later = index - own.length;
    return { page: 1 + Math.floor(later / others.length), box: others[later % others.length] as Box };
  };
}

/** Details beside each other, as many as a column holds. */
function detailsFlow(figures: readonly Figure[], words: PlanWords, setting: Setting): Flowing | null {
  if (figures.length === 0) return null;
  const rows: Figure[][] = [];
  const wide = ({ box }: Figure) => box.max[0] - box.min[0];
  for (const figure of figures) {
    const last = rows.at(-1);
    const taken = (last ?? []).reduce((sum, f) => sum + wide(f) + BETWEEN, 0);
    if (last !== undefined && taken + wide(figure) <= COLUMN) last.push(figure);
    else rows.push([figure]);
  }
  const strip = (row: readonly Figure[]): Strip => {
    let x = 0;
    const items = row.flatMap((f) => {
      x += wide(f) + BETWEEN;
      return moved(f.items, [x - BETWEEN - wide(f) - f.box.min[0], -f.box.max[1]]);
    });
    return { height: Math.max(...row.map((f) => f.box.max[1] - f.box.min[1])), items };
  };
  const strips = rows.map(strip);
  const alt = figures.map((f) => f.alt).join('; ');
  return () => ({ alt, heading: headingStrip(words.details, setting), head: null, rows: strips });
}

function formedFlow(part: PartPlan, dims: Dims, words: PlanWords, setting: Setting): Flowing {
  const ask = { name: part.name, formed: part.formed, dims, words, ...setting };
  return (width) => {
    const { alt, items, box } = formedFigure(ask, width);
    const hung = moved(items, [(width - (box.max[0] - box.min[0])) / 2 - box.min[0], -box.max[1]]);
    return {
      alt,
      heading: headingStrip(words.formed, setting),
      head: null,
      rows: [{ height: box.max[1] - box.min[1], items: hung }],
    };
  };
}

function notesOf({ note, sheet, flat }: PartPlan, { notes }: PlanWords): readonly string[] {
  const outside = flat.bends.some((b) => b.direction === 'down');
  return [
    ...(note === '' ? [] : [note]),
    [
      notes.cuts,
      ...(flat.bends.length > 0 ? [notes.bends] : []),
      ...(isRectangle(flat) ? [] : [notes.blank]),
    ].join(' '),
    notes.datum,
    ...(outside ? [notes.pencil] : []),
    ...(flat.bends.length > 0 && sheet.rule.compensates ? [notes.strip] : []),
    ...(flat.bends.length > 0 && !sheet.rule.compensates ? [notes.nominal] : []),
  ];
}

/** Sizes that are marked or measured, mm. */
function roundable(
  { part, formed, flat }: PartPlan,
  ordinates: readonly Ordinate[],
  list: readonly Marking[],
): readonly number[] {
  return [
    ...part.asked.map((a) => a.value),
    ...(flat.bends.length === 0 ? [] : formed.size),
    ...ordinates.map((o) => o.value),
    ...list.flatMap((m) => ('offset' in m ? [m.offset, ...(m.kind === 'points' ? m.at : [])] : [])),
  ];
}

function titleOf(job: string, part: PartPlan, options: PlanOptions, dims: Dims, words: PlanWords): Title {
  const [x, y] = part.flat.blank.max;
  const { thickness } = part.sheet;
  const inches = dims.unit === 'in';
  const bar = inches
    ? { length: 4 * MM_PER_INCH, parts: 8, said: '4' }
    : { length: 100, parts: 10, said: '100' };
  const sheet = inches ? `${plainNumber(thickness / MM_PER_INCH, 4)} in` : `${plainNumber(thickness, 2)} mm`;
  const mass = inches ? `${plainNumber(part.mass / KG_PER_POUND, 2)} lb` : `${plainNumber(part.mass, 3)} kg`;
  return {
    caution: part.material.zinc ? `${words.caution} ${words.cautionZinc}` : words.caution,
    name: part.name,
    what: part.family.describe.title,
    job: words.job(job),
    date: options.date ?? '',
    stock: words.stock(part.material.title, sheet, dims.text(x), dims.text(y), dims.unit),
    make: words.make(part.quantity, mass),
    sizes: `${words.sizes(options.dims)} ${toleranceText(Math.max(x, y), options.tolerance ?? 'm', dims, words)}`,
    bar: { length: bar.length, parts: bar.parts, text: words.measure(bar.said, dims.unit) },
  };
}

const KG_PER_POUND = 0.45359237; // exact, international avoirdupois pound

/** The steps of ISO 2768-1 up to a size, equal ones as one. */
function toleranceText(size: number, of: ToleranceClass, dims: Dims, words: PlanWords): string {
  const steps: { limit: number; to: number }[] = [];
  for (const [i, to] of ISO_2768_BANDS.entries()) {
    if (i > 0 && (ISO_2768_BANDS[i - 1] as number) >= size) break;
    const limit = linearTolerance(to, of);
    const last = steps.at(-1);
    if (limit === null) continue;
    if (last?.limit === limit) last.to = to;
    else steps.push({ limit, to });
  }
  const said = (mm: number, digits: number) =>
    dims.unit === 'mm' ? plainNumber(mm, 2) : plainNumber(mm / MM_PER_INCH, digits);
  return words.tolerance(
    of,
    steps.map((s) => [said(s.limit, 3), said(s.to, 2)] as const),
    dims.unit,
  );
}
