import { reaches } from '../../fold/least.js';
import type { Sheet } from '../../fold/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { CORNER_GAP, type Complaint, need, setback } from '../limits.js';

const RIM = 3; // mm, least metal round the hole of the bar; common practice, no source

/** An end that carries its own tabs. Outside sizes, mm. */
export const values = {
  width: v.size('over the outside faces of the side tabs'),
  shoulderHeight: v.size('from the lower edge to where the slopes start; the side tabs are as high'),
  height: v.size('from the lower edge to the crown'),
  crownWidth: v.size('of the flat top'),
  tabs: v.group('tabs along the foot and the sides', {
    length: v.size('outside length of the tabs'),
    gap: v.or(v.size('kept between neighbouring tabs', { min: 0, max: 20 }), CORNER_GAP),
  }),
  bar: v.maybe(
    v.group('hole for a round bar; leave out for none', {
      diameter: v.size('of the hole', { max: 100 }),
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
    ...(p.bar === null ? [] : barFits(p, p.bar)),
  ];
}

function barFits(
  p: ToteEndParams,
  { diameter, below }: NonNullable<ToteEndParams['bar']>,
): readonly Complaint[] {
  const around = diameter / 2 + RIM;
  // distance of the hole's centre from the slope beside the crown
  const [run, rise] = [(p.width - p.crownWidth) / 2, p.height - p.shoulderHeight];
  const long = Math.hypot(run, rise);
  const aside = rise === 0 ? p.width / 2 : (p.crownWidth / 2) * (rise / long) + below * (run / long);
  return [
    ...need(
      reaches(aside, around) && reaches(p.height, below + around),
      ['bar', 'diameter'],
      'too little metal would be left beside it',
    ),
    ...need(reaches(below, around), ['bar', 'below'], 'too little metal would be left above the hole'),
  ];
}
