import { reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { LEAST_EDGE, NIP_CLEARANCE, nipValue } from '../corner-values.js';
import { type Complaint, need } from '../limits.js';

/** A flat end with sloped shoulders. mm */
export const values = {
  width: v.size('over the straight sides'),
  shoulderHeight: v.size('from the lower edge to where the slopes start'),
  height: v.size('from the lower edge to the crown'),
  crownWidth: v.size('width of the flat top'),
  cornerNip: nipValue('leg of the 45° cut at the lower corners: auto clears the inside radius, 0 for none'),
};

export type GussetEndParams = Given<typeof values>;

/**
 * Leg of the nip, mm. Hard against both walls a 45° cut clears an arc of radius R in the corner when its leg is at
 * least R: a cut of (2 − √2)·R clears the middle of the arc, but not its own two ends. The bend it stands in is taken
 * to have the sheet's own inside radius.
 */
export function nipLeg({ cornerNip }: GussetEndParams, sheet: Sheet): number {
  return cornerNip === 'auto' ? sheet.insideRadius + NIP_CLEARANCE : cornerNip;
}

export function check(p: GussetEndParams, sheet: Sheet): readonly Complaint[] {
  const { width, height, shoulderHeight, crownWidth, cornerNip } = p;
  // an automatic nip is not to blame: the end is too small for it
  const nip = nipLeg(p, sheet);
  const fits = [reaches(width, 2 * (nip + LEAST_EDGE)), reaches(shoulderHeight, nip + LEAST_EDGE)] as const;
  return [
    ...need(
      reaches(height, shoulderHeight),
      ['shoulderHeight'],
      (say) => `higher than the end of ${say.size(height)}`,
    ),
    ...need(reaches(width, crownWidth), ['crownWidth'], (say) => `wider than the end of ${say.size(width)}`),
    ...(cornerNip === 'auto'
      ? [
          ...need(fits[0], ['width'], 'the nips at its lower corners take up more'),
          ...need(fits[1], ['shoulderHeight'], 'the nips at the lower corners reach higher'),
        ]
      : need(fits[0] && fits[1], ['cornerNip'], 'nothing would be left of the lower edge or the sides')),
  ];
}
