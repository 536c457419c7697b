import type { Sheet } from '../../fold/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import {
  CORNER_GAP,
  type Complaint,
  hemFits,
  hemHeight,
  leastFlange,
  need,
  reaches,
  setback,
} from '../limits.js';

const LEAST_REST = 1; // mm left of the base between the bends

/** A channel-shaped handle with tabs. Outside sizes, mm. */
export const values = {
  span: v.size('over the outside faces of the folded tabs'),
  width: v.size('over the outside faces of the sides'),
  sideDepth: v.size('of the sides, over the hem'),
  hem: v.hem('hem along the edge of both sides, folded in; leave out for none'),
  tabs: v.group('tabs at both ends, folded down', {
    length: v.size('outside length of the tabs'),
    gap: v.or(v.size('kept between the tabs and the sides at the corners', { min: 0, max: 20 }), CORNER_GAP),
  }),
};

export type HandleParams = Given<typeof values>;

export function check(p: HandleParams, sheet: Sheet): readonly Complaint[] {
  const end = setback(sheet) + p.tabs.gap;
  const across = Math.max(end, setback(sheet) + hemHeight(p.hem, sheet.thickness));
  const side = { height: p.sideDepth, bend: setback(sheet), path: ['sideDepth'], name: 'side' };
  return [
    ...need(reaches(p.span, 2 * end + LEAST_REST), ['span'], 'the bends of both tabs take up more'),
    ...need(reaches(p.width, 2 * across + LEAST_REST), ['width'], 'the sides and their hems take up more'),
    ...need(
      reaches(p.sideDepth, leastFlange(sheet)),
      ['sideDepth'],
      'a side has to stand clear of its own bend',
    ),
    ...(p.hem === null ? [] : hemFits(['hem'], p.hem, sheet, side)),
    ...need(
      reaches(p.tabs.length, leastFlange(sheet)),
      ['tabs', 'length'],
      'a tab has to reach past its own bend',
    ),
  ];
}

export function derived({ span }: HandleParams, { thickness }: Sheet): readonly DerivedSize[] {
  return [derivedSize('insideSpan', span - 2 * thickness, 'span', 'between the inside faces of the tabs')];
}
