import type { PartPlan } from '@tinwright/core';
import type { PlanWords } from '@tinwright/words/internal';
import type { Projection } from '../figure/projection-symbol.js';
import type { Dims } from '../page/dims.js';
import type { Figure } from '../page/figure.js';
import { figureRows } from '../page/figure-rows.js';
import { type Flowing, once } from '../page/flow.js';
import { moved } from '../page/page.js';
import { headingStrip, type TypeSetting } from '../page/table.js';
import { isRectangle } from '../pattern/features.js';
import { formedFigure } from './formed-figure.js';
import { formedViews } from './formed-views.js';
import type { PlanOptions } from './options.js';

/** The part bent, as large as may be and then lower; null for one that stays flat. */
export function formedFlows(
  part: PartPlan,
  dims: Dims,
  words: PlanWords,
  setting: TypeSetting,
  projection: Projection,
): readonly (Flowing | null)[] {
  if (part.flat.bends.length === 0) return [null];
  const { name, formed } = part;
  const ask = { name, formed, views: formedViews(formed), dims, words, projection, ...setting };
  return (['whole', 'low'] as const).map((size) =>
    once((width) => {
      const { alt, items, box } = formedFigure({ ...ask, size }, width);
      const hung = moved(items, [(width - (box.max[0] - box.min[0])) / 2 - box.min[0], -box.max[1]]);
      return {
        alt,
        heading: headingStrip(words.formed, setting),
        head: null,
        rows: [{ height: box.max[1] - box.min[1], items: hung }],
      };
    }),
  );
}

/** Details beside each other, as many as a column holds; null without any. */
export function detailsFlow(
  figures: readonly Figure[],
  words: PlanWords,
  setting: TypeSetting,
): Flowing | null {
  if (figures.length === 0) return null;
  const alt = figures.map((f) => f.alt).join('; ');
  return (width) => ({
    alt,
    heading: headingStrip(words.details, setting),
    head: null,
    rows: figureRows(figures, width),
  });
}

/** What to know for marking out and bending this part. */
export function notesOf(
  part: PartPlan,
  words: PlanWords,
  options: Pick<PlanOptions, 'marking' | 'leftOut'>,
): readonly string[] {
  const own = part.note === '' ? [] : [part.note];
  return options.leftOut?.includes('notes')
    ? own
    : [...own, readingNotes(part, words, options.marking).join(' ')];
}

/** What helps to read the plan of a part, sentence by sentence. */
export function readingNotes(
  { sheet, flat }: PartPlan,
  { notes }: PlanWords,
  marking: PlanOptions['marking'],
): readonly string[] {
  const bent = flat.bends.length > 0;
  return [
    notes.cuts,
    ...(bent ? [notes.bends] : []),
    ...(isRectangle(flat) ? [] : [notes.blank]),
    ...(marking === 'program' ? [] : [notes.datum]),
    ...(flat.bends.some((b) => b.direction === 'down') ? [notes.pencil] : []),
    ...(bent ? [sheet.rule.compensates ? notes.strip : notes.nominal] : []),
  ];
}
