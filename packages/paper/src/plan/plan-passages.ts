import type { PartPlan } from '@tinwright/core';
import type { PlanWords } from '@tinwright/words/internal';
import type { Figure } from '../page/figure.js';
import type { Flowing, Strip } from '../page/flow.js';
import { moved } from '../page/page.js';
import { headingStrip, type TypeSetting } from '../page/table.js';
import type { Dims } from './dims.js';
import { isRectangle } from './features.js';
import { formedFigure } from './formed-figure.js';
import type { PlanOptions } from './options.js';
import type { Projection } from './projection-symbol.js';

const COLUMN = 168; // mm that every column is wide at least
const BETWEEN = 10; // mm between details

/** The part bent; null for one that stays flat. */
export function formedFlow(
  part: PartPlan,
  dims: Dims,
  words: PlanWords,
  setting: TypeSetting,
  projection: Projection,
): Flowing | null {
  if (part.flat.bends.length === 0) return null;
  const ask = { name: part.name, formed: part.formed, dims, words, projection, ...setting };
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

const wide = ({ box }: Figure) => box.max[0] - box.min[0];
const high = ({ box }: Figure) => box.max[1] - box.min[1];

/** Details beside each other, as many as a column holds; null without any. */
export function detailsFlow(
  figures: readonly Figure[],
  words: PlanWords,
  setting: TypeSetting,
): Flowing | null {
  if (figures.length === 0) return null;
  const rows: Figure[][] = [];
  for (const figure of figures) {
    const last = rows.at(-1);
    const taken = (last ?? []).reduce((sum, f) => sum + wide(f) + BETWEEN, 0);
    if (last !== undefined && taken + wide(figure) <= COLUMN) last.push(figure);
    else rows.push([figure]);
  }
  const strips = rows.map(rowOf);
  const alt = figures.map((f) => f.alt).join('; ');
  return () => ({ alt, heading: headingStrip(words.details, setting), head: null, rows: strips });
}

function rowOf(figures: readonly Figure[]): Strip {
  let x = 0;
  const items = figures.flatMap((f) => {
    const left = x;
    x += wide(f) + BETWEEN;
    return moved(f.items, [left - f.box.min[0], -f.box.max[1]]);
  });
  return { height: Math.max(...figures.map(high)), items };
}

/** What to know for marking out and bending this part. */
export function notesOf(
  { note, sheet, flat }: PartPlan,
  { notes }: PlanWords,
  marking: PlanOptions['marking'],
): readonly string[] {
  const bent = flat.bends.length > 0;
  const lines = [notes.cuts, ...(bent ? [notes.bends] : []), ...(isRectangle(flat) ? [] : [notes.blank])];
  return [
    ...(note === '' ? [] : [note]),
    lines.join(' '),
    ...(marking === 'program' ? [] : [notes.datum]),
    ...(flat.bends.some((b) => b.direction === 'down') ? [notes.pencil] : []),
    ...(bent ? [sheet.rule.compensates ? notes.strip : notes.nominal] : []),
  ];
}
