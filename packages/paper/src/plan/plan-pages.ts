import type { PartPlan } from '@tinwright/core';
import { LANGUAGES } from '@tinwright/words/internal';
import { markings } from '../marking/marking.js';
import { markingTable } from '../marking/marking-table.js';
import { markingProgram } from '../marking/program.js';
import { programTable } from '../marking/program-table.js';
import type { MarkingRow } from '../marking/row.js';
import { dimsIn, dimsOf, heldApart } from '../page/dims.js';
import { type Flowing, once } from '../page/flow.js';
import { moved, type Page } from '../page/page.js';
import { paperNamed } from '../page/paper.js';
import { drawn, type PendingPage } from '../page/pending.js';
import { setSheets } from '../page/set-sheets.js';
import { readingSheet } from '../page/sheet.js';
import { notesFlow, type TypeSetting } from '../page/table.js';
import { titleHeight } from '../page/title-block.js';
import { LETTERING, typeface } from '../page/typeface.js';
import { featuresOf } from '../pattern/features.js';
import type { Marking } from '../pattern/marked.js';
import { type Ordinate, ordinatesOf } from '../pattern/ordinates.js';
import type { PatternAsk } from '../pattern/pattern-ask.js';
import { detailFigure } from './detail-figure.js';
import { type FirstSheet, firstSheets } from './first-sheet.js';
import type { BrakeMarks, PlanOptions } from './options.js';
import { bendTable, finishedTable, roundedTable } from './part-tables.js';
import { detailsFlow, formedFlows, notesOf } from './plan-passages.js';
import { planTitle } from './plan-title.js';
import { printedSizes } from './printed-sizes.js';
import { roundingOf } from './rounding.js';

/** A plan: its sheets, and the scale of its pattern. */
export interface Plan {
  readonly pages: readonly Page[];
  readonly scale: string;
  /** What to set and scribe on the blank, in order. */
  readonly program: readonly MarkingRow[];
}

/**
 * The plan of a part, to mark it out and bend it by hand: the pattern with ordinates from one datum corner (ISO 129-1),
 * the formed part, its sizes and bends, and what to scribe in order; on as many sheets as it takes.
 * @param job name of the job, '' for none
 * @throws JobError when the pattern cannot be read on the paper; RangeError for a paper there is none of
 */
export function partPlan(job: string, part: PartPlan, options: PlanOptions, brake: BrakeMarks = {}): Plan {
  const {
    language = 'en',
    face = typeface(),
    lettering = LETTERING,
    tolerance = 'm',
    marking = 'program',
    leftOut = [],
  } = options;
  const { plans: words } = LANGUAGES[language];
  const setting: TypeSetting = { face, height: lettering };
  const { sights = [] } = brake;
  const dims = dimsIn(heldApart(dimsOf(options.dims), printedSizes(part, sights)), language);
  const paper = paperNamed(options.paper);
  const { flat } = part;
  const features = featuresOf(flat);
  const ordinates = ordinatesOf(flat, features, dims);
  const ask: PatternAsk = { name: part.name, flat, features, ordinates, sights, dims, words, ...setting };
  const list = markings(ask);
  const sizes = roundable(part, ordinates, list);
  const title = planTitle(job, part, options, dims, words, roundingOf(sizes, dims, tolerance));
  const program = markingProgram(flat, sights);
  const said = notesOf(part, words, { marking, leftOut });
  const tables = [
    leftOut.includes('finished') ? null : finishedTable(part, dims, words, setting),
    bendTable(part, brake.setAngles ?? {}, dims, words, setting),
    ...(marking === 'none'
      ? []
      : [
          marking === 'all'
            ? markingTable(flat, list, dims, words, setting)
            : programTable(flat, program, dims, words, setting),
          roundedTable(sizes, dims, tolerance, words, setting),
        ]),
    said.length === 0 ? null : notesFlow(words.notes.heading, said, setting),
  ].map((f) => (f === null ? null : once(f)));
  const projection = INCH_PAPERS.includes(paper.name) ? 'third' : 'first';
  const formed = formedFlows(part, dims, words, setting, projection);
  const set = ({ sheet, figure, at, left, scale }: FirstSheet, picture: Flowing | null): PendingPlan => {
    const details = detailsFlow(
      figure.details.map((d) => detailFigure(ask, d)),
      words,
      setting,
    );
    const pages = setSheets({
      name: words.title(part.name, job),
      title,
      first: {
        sheet,
        blocks: [{ alt: figure.alt, items: moved(figure.items, at) }],
        left,
        scale: words.patternScale(scale),
      },
      rest: readingSheet(paper),
      passages: [details, picture, ...tables].filter((f) => f !== null),
      setting,
      sheet: words.sheet,
    });
    return { pages, scale, program };
  };
  const sheets = firstSheets(ask, paper, options.scale, (width) => titleHeight(title, width, setting));
  return fewest(formed.flatMap((picture) => sheets.map((sheet) => () => set(sheet, picture))));
}

/** A plan whose pages are not drawn yet. */
interface PendingPlan extends Omit<Plan, 'pages'> {
  readonly pages: readonly PendingPage[];
}

/** The plan on fewest sheets; of as few the one before the others. */
function fewest(ways: readonly (() => PendingPlan)[]): Plan {
  let best: PendingPlan | null = null;
  for (const way of ways) {
    if (best?.pages.length === 1) break;
    const plan = way();
    if (best === null || plan.pages.length < best.pages.length) best = plan;
  }
  const { pages, ...rest } = best as PendingPlan;
  return { pages: pages.map(drawn), ...rest };
}

const INCH_PAPERS = ['letter', 'tabloid'];

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
