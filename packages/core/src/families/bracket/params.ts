import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { holeRow, rowEdge } from '../hole-row.js';

/** A bracket: an angle, a Z or a U, with holes in its two outer legs. Outside sizes, mm and degrees. */
export const values = {
  profile: v.or(
    v.word('angle (one bend), z (two, the second back) or u (two the same way)', ['angle', 'z', 'u']),
    'angle',
  ),
  width: v.size('width along the bends'),
  base: v.size('outside leg that lies flat, from its free end to the first bend'),
  web: v.or(v.size('outside leg between the bends of a z or a u'), 40),
  leg: v.size('outside leg that ends the bracket'),
  angle: v.or(v.angle('every bend, bent through from flat', 1, 135), 90),
  holes: v.maybe(
    v.group('holes in a row across the base and the last leg; leave out for none', {
      diameter: v.size('diameter of each hole', { max: 100 }),
      count: v.or(v.count('in each leg', 1, 40), 1),
      inset: v.size('from the free end of a leg to the middle of its holes'),
      edge: rowEdge,
    }),
  ),
};

export type BracketParams = Given<typeof values>;
/** Holes in a leg. mm */
export type Holes = NonNullable<BracketParams['holes']>;

/** Middles of the holes across the width, mm. */
export const across = ({ width }: BracketParams, { count, edge }: Holes): readonly number[] =>
  holeRow(width, count, edge);

export function derived(p: BracketParams, { thickness }: Sheet): readonly DerivedSize[] {
  if (p.profile !== 'u' || p.angle !== 90) return [];
  return [
    derivedSize('insideWidth', p.web - 2 * thickness, 'web', 'between the inside faces of base and last leg'),
  ];
}
