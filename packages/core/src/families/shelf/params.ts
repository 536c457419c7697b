import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { cornerGap } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { holeRow, rowEdge } from '../hole-row.js';
import { type Complaint, need, setback } from '../limits.js';

/** A shelf with doubled edges and tabbed ends. Outside sizes, mm. */
export const values = {
  length: v.size('over the outside faces of the end tabs'),
  depth: v.size('over the outside faces of the front and the back edge'),
  edge: v.group('front and back edge, turned down and doubled', {
    height: v.size('from the top of the shelf to the fold'),
    fold: v.maybe(
      v.size('how far the metal comes back up on the inside; as high as the bend leaves room when left out'),
    ),
  }),
  ends: v.maybe(
    v.group('tabs at both ends, turned down; leave out for none', {
      length: v.size('outside length of the tabs'),
      holes: v.maybe(
        v.group('a row of holes in each tab; leave out for none', {
          diameter: v.size('diameter of each hole', { max: 100 }),
          count: v.or(v.count('in each tab', 1, 20), 2),
          edge: rowEdge,
        }),
      ),
    }),
  ),
  gap: cornerGap(),
};

export type ShelfParams = Given<typeof values>;
type Ends = NonNullable<ShelfParams['ends']>;

/** Width of the fold inside an edge: given, or up to a thickness under the bend. mm */
export function foldOf({ edge }: ShelfParams, sheet: Sheet): number {
  return edge.fold ?? edge.height - setback(sheet) - sheet.thickness;
}

/** Middles of the holes of an end tab, across the depth. mm */
export const endHoles = (p: ShelfParams, { holes }: Ends): readonly number[] =>
  holes === null ? [] : holeRow(p.depth, holes.count, holes.edge);

/** Up a tab, from the top of the shelf to the middle of its holes: the middle of what is straight. mm */
export const holeHeight = ({ length }: Ends, sheet: Sheet): number => (setback(sheet) + length) / 2;

/** Holes keep off the sides of their tab, which are cut back for the front and the back edge. */
export function check(p: ShelfParams, sheet: Sheet): readonly Complaint[] {
  const { ends } = p;
  if (ends === null || ends.holes === null) return [];
  const { diameter, edge } = ends.holes;
  const [first = 0] = endHoles(p, ends);
  const side = Math.min(first, p.depth - first) - setback(sheet) - sheet.thickness - p.gap;
  return need(
    reaches(side, diameter / 2 + LEAST_METAL),
    ['ends', 'holes', edge === null ? 'diameter' : 'edge'],
    'too little metal would be left at the sides of the tab',
  );
}

export function derived(p: ShelfParams, { thickness }: Sheet): readonly DerivedSize[] {
  return [
    derivedSize(
      'insideLength',
      p.length - (p.ends === null ? 0 : 2 * thickness),
      'length',
      'between the inside faces of the end tabs, or from end to end',
    ),
    derivedSize('insideWidth', p.depth - 4 * thickness, 'depth', 'between the doubled edges'),
    derivedSize(
      'insideHeight',
      p.edge.height - thickness,
      'edge.height',
      'below the shelf, inside its edges',
    ),
  ];
}
