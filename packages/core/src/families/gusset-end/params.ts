import type { Problem } from '../../errors/problem.js';
import type { Sheet } from '../../fold/tree.js';
import type { ParamKit, Shape } from '../kit.js';
import { atMost, mm } from '../limits.js';

/** A flat end with sloped shoulders. mm */
export interface GussetEndParams {
  readonly width: number;
  readonly shoulderHeight: number;
  readonly height: number;
  readonly crownWidth: number;
  /** Leg of the 45° cut at the two lower corners. */
  readonly cornerNip: number | 'auto';
}

/** Clearance an automatic nip keeps to the bend, mm. Common practice, no source. */
const NIP_CLEARANCE = 0.3;

export function params(k: ParamKit): Shape<GussetEndParams> {
  return {
    width: k.size(),
    shoulderHeight: k.size(),
    height: k.size(),
    crownWidth: k.size(),
    cornerNip: k.or(k.either<'auto', number>(k.oneOf(['auto']), k.size({ min: 0 })), 'auto'),
  };
}

/**
 * Leg of the nip. A 45° cut clears an arc of radius R in the corner when its leg is at least (2 − √2)·R.
 * The bend it stands in is taken to have the sheet's own inside radius.
 */
export function nipLeg({ cornerNip }: GussetEndParams, sheet: Sheet): number {
  return cornerNip === 'auto' ? (2 - Math.SQRT2) * sheet.insideRadius + NIP_CLEARANCE : cornerNip;
}

export function check(p: GussetEndParams, sheet: Sheet): readonly Problem[] {
  const room = Math.min(p.width / 2, p.shoulderHeight);
  return [
    ...atMost(['shoulderHeight'], p.shoulderHeight, p.height, `higher than the end of ${mm(p.height)}`),
    ...atMost(['crownWidth'], p.crownWidth, p.width, `wider than the end of ${mm(p.width)}`),
    ...atMost(
      ['cornerNip'],
      nipLeg(p, sheet),
      room - 0.5,
      'the nips would leave nothing of the lower edge or the sides',
    ),
  ];
}
