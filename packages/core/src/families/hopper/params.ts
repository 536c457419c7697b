import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import type { Point } from '../../plane/point.js';
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
  throat: v.group('rectangular opening in the bottom', {
    length: v.size('of the opening, along x'),
    width: v.size('of the opening, along y'),
    west: v.maybe(v.size('from the west edge of the bottom to the opening; in the middle when left out')),
    south: v.maybe(v.size('from the south edge of the bottom to the opening; in the middle when left out')),
  }),
};

export type HopperParams = Given<typeof values>;

/** Middle of the throat, in the frame of the bottom. mm */
export function throatAt({ bottom, throat }: HopperParams): Point {
  const along = (off: number | null, opening: number, whole: number) =>
    off === null ? whole / 2 : off + opening / 2;
  return [along(throat.west, throat.length, bottom.length), along(throat.south, throat.width, bottom.width)];
}

/** A ledge stays round the throat, past the bends of the walls. */
export function check(p: HopperParams, sheet: Sheet): readonly Complaint[] {
  const ledge = setback(sheet, pan.panWall(p, sheet).angle) + LEAST_METAL;
  const [x, y] = throatAt(p);
  const fits = (name: 'length' | 'width', off: 'west' | 'south', middle: number) => {
    const [least, most] = [ledge + p.throat[name] / 2, p.bottom[name] - ledge - p.throat[name] / 2];
    if (p.throat[off] === null || !reaches(most, least))
      return need(reaches(most, least), ['throat', name], 'too little of the bottom would be left beside it');
    return need(
      reaches(middle, least) && reaches(most, middle),
      ['throat', off],
      'too little of the bottom would be left beside the opening',
    );
  };
  return [...pan.check(p, sheet), ...fits('length', 'west', x), ...fits('width', 'south', y)];
}

export const derived = (p: HopperParams, sheet: Sheet): readonly DerivedSize[] => pan.derived(p, sheet);
