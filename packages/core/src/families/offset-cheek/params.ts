import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { radians } from '../../units/angle.js';
import { cornerGap } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { type Complaint, need, setback } from '../limits.js';

/** One flat cheek of a duct's offset. mm, degrees */
export const values = {
  offset: v.size('how far the duct steps aside, square to its straight ends'),
  angle: v.or(v.angle('both its bends, from straight on', 5, 75), 45),
  height: v.size('over the outside of the tabs, all along: of the duct between its wrappers'),
  straight: v.size('of the shorter straight edge, at either end'),
  tabs: v.group('tabs along both sides, inside the wrappers', {
    length: v.size('outside length of the tabs'),
    gap: cornerGap('that tabs stand back from the mitre at each corner'),
  }),
  hand: v.or(
    v.word('right (its right end steps up, tabs towards you) or left; a duct takes one of each', [
      'right',
      'left',
    ]),
    'right',
  ),
};

export type OffsetCheekParams = Given<typeof values>;

/** Lengths along an offset of constant width, whose corners are mitred at half the bend. mm, radians */
export interface OffsetLengths {
  readonly bend: number;
  /** Along the straight ends, of the slant. */
  readonly run: number;
  readonly slant: number;
  /** Of the longer straight edge: across the mitre from the shorter one. */
  readonly long: number;
  /** What a wrapper's leg is longer by than the edge it lies on: its outside is a sheet further out. */
  readonly further: number;
  /** Bends end so far from the corners. */
  readonly back: number;
  /** A tab's far end is so much shorter at an inner corner. */
  readonly mitre: number;
}

export function lengthsOf(p: OffsetCheekParams, sheet: Sheet): OffsetLengths {
  const bend = radians(p.angle);
  const half = Math.tan(bend / 2);
  return {
    bend,
    run: p.offset / Math.tan(bend),
    slant: p.offset / Math.sin(bend),
    long: p.straight + p.height * half,
    further: sheet.thickness * half,
    back: setback(sheet) * half + p.tabs.gap,
    mitre: p.tabs.length * half,
  };
}

export function check(p: OffsetCheekParams, sheet: Sheet): readonly Complaint[] {
  const { slant, back, mitre } = lengthsOf(p, sheet);
  return [
    ...need(
      reaches(slant, 2 * back + mitre + LEAST_METAL),
      ['offset'],
      'nothing is left of the slanted tabs',
    ),
    ...need(
      reaches(p.straight, back + mitre + LEAST_METAL),
      ['straight'],
      'nothing is left of the tabs at its ends',
    ),
    ...need(
      reaches(p.height, 2 * (setback(sheet) + sheet.thickness) + LEAST_METAL),
      ['height'],
      'the bends of its tabs and the notches beside them take up more',
    ),
  ];
}

export function derived(p: OffsetCheekParams, sheet: Sheet): readonly DerivedSize[] {
  const { bend, long, slant, further } = lengthsOf(p, sheet);
  return [
    derivedSize(
      'longLeg',
      long + further,
      'straight',
      'first leg of a wrapper of the same sheet, laid round it',
    ),
    {
      ...derivedSize(
        'slantLeg',
        slant + further,
        'offset',
        'slanted leg of a wrapper of the same sheet, laid round it',
      ),
      rate: 1 / Math.sin(bend),
    },
    derivedSize('shortLeg', p.straight, 'straight', 'last leg of a wrapper, laid round it'),
  ];
}
