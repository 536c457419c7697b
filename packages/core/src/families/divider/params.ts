import { reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { LEAST_EDGE, NIP_CLEARANCE, nipValue } from '../corner-values.js';
import { type Complaint, need } from '../limits.js';

/** Play of a slot, 0.1 mm a side. Source: fabricators' design guides, 0.05 to 0.12 mm a side for a snug tab. */
const USUAL_PLAY = 0.2;
const MOST_SLOTS = 50;

/** A flat divider, with tabs at its ends if wanted. Outside sizes, mm. */
export const values = {
  length: v.size('over the outside faces of the tabs, or from end to end'),
  height: v.size('height of the plate'),
  tabs: v.maybe(
    v.group('tabs at both ends; leave out for none', { length: v.size('outside length of the tabs') }),
  ),
  slots: v.maybe(
    v.group('slots for dividers that cross; leave out for none', {
      at: v.list('middle of each slot, from the west end, in order', v.size(''), [1, MOST_SLOTS]),
      from: v.or(
        v.word('top or bottom: the edge they are cut from; what crosses has the other', ['top', 'bottom']),
        'top',
      ),
      crossing: v.maybe(v.size('thickness of what crosses; one sheet when left out', { max: 20 })),
      clearance: v.or(v.size('play across a slot and below it', { min: 0, max: 10 }), USUAL_PLAY),
    }),
  ),
  cornerNip: nipValue(
    'how far the lower corners are cut back: auto clears the inside radius of the box, 0 for none',
  ),
};

export type DividerParams = Given<typeof values>;
/** Slots for dividers that cross. mm */
export type Slots = NonNullable<DividerParams['slots']>;

/** How far the lower corners are cut back, to clear the inside of a bend with the sheet's radius, or the leg given. mm */
export function nipLeg({ cornerNip, tabs }: DividerParams, { insideRadius }: Sheet): number {
  if (cornerNip !== 'auto') return cornerNip;
  // a tab stands straight beside the bend, a cut corner slants past it
  return (tabs === null ? 2 - Math.SQRT2 : 1) * insideRadius + NIP_CLEARANCE;
}

/** Width and depth of a slot: half the height, and half the play more. mm */
export function slotSize(
  { height }: DividerParams,
  slots: Slots,
  { thickness }: Sheet,
): readonly [number, number] {
  return [(slots.crossing ?? thickness) + slots.clearance, (height + slots.clearance) / 2];
}

export function check(p: DividerParams, sheet: Sheet): readonly Complaint[] {
  const nip = nipLeg(p, sheet);
  return [
    ...need(
      p.tabs !== null || reaches(p.length, 2 * (nip + LEAST_EDGE)),
      ['length'],
      'its ends take up more',
    ),
    ...need(reaches(p.height, nip + LEAST_EDGE), ['height'], 'the cut at the lower corners reaches higher'),
  ];
}
