import { reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { cornerGap } from '../corner-values.js';
import { type Complaint, need, setback } from '../limits.js';

/** An end that carries its own tabs. Outside sizes, mm. */
export const values = {
  width: v.size('over the outside faces of the side tabs'),
  shoulderHeight: v.size('from the lower edge to where the slopes start; the side tabs are as high'),
  height: v.size('from the lower edge to the crown'),
  crownWidth: v.size('width of the flat top'),
  tabs: v.group('tabs along the foot and the sides', {
    length: v.size('outside length of the tabs'),
    gap: cornerGap('kept between neighbouring tabs'),
  }),
  bar: v.maybe(
    v.group('hole for a round bar; leave out for none', {
      diameter: v.size('diameter of the hole', { max: 100 }),
      below: v.size('from the crown to the middle of the hole'),
    }),
  ),
};

export type ToteEndParams = Given<typeof values>;

export function check(p: ToteEndParams, sheet: Sheet): readonly Complaint[] {
  return [
    ...need(
      reaches(p.height, p.shoulderHeight),
      ['shoulderHeight'],
      (say) => `higher than the end of ${say.size(p.height)}`,
    ),
    ...need(
      reaches(p.width - 2 * setback(sheet), p.crownWidth),
      ['crownWidth'],
      (say) => `the bends leave no room for it on an end of ${say.size(p.width)}`,
    ),
  ];
}
