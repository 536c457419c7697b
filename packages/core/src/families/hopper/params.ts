import { LEAST_METAL, reaches } from '../../fold/least.js';
import type { Sheet } from '../../fold/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import type { DerivedSize } from '../derived.js';
import * as pan from '../flared-pan/params.js';
import { type Complaint, need, setback } from '../limits.js';

/** A pan with walls that lean out, its corners folded unless said, and a throat through its bottom. mm */
export const values = {
  ...pan.values,
  corner: v.or(
    v.word('mitred, or folded (tabs of the north and south walls inside the other two)', [
      'mitred',
      'folded',
    ]),
    'folded',
  ),
  throat: v.group('rectangular opening in the middle of the bottom', {
    length: v.size('of the opening, along x'),
    width: v.size('of the opening, along y'),
  }),
};

export type HopperParams = Given<typeof values>;

/** A ledge stays round the throat, past the bends of the walls. */
export function check(p: HopperParams, sheet: Sheet): readonly Complaint[] {
  const ledge = setback(sheet, pan.panWall(p, sheet).angle) + LEAST_METAL;
  const fits = (name: 'length' | 'width') =>
    need(
      reaches(p.bottom[name], p.throat[name] + 2 * ledge),
      ['throat', name],
      'too little of the bottom would be left beside it',
    );
  return [...pan.check(p, sheet), ...fits('length'), ...fits('width')];
}

export const derived = (p: HopperParams, sheet: Sheet): readonly DerivedSize[] => pan.derived(p, sheet);
