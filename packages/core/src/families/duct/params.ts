import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { type Complaint, need, setback } from '../limits.js';

/** Play in the seam, mm. Common practice, no source. */
const USUAL_PLAY = 0.2;

/** A straight piece of rectangular duct. Outside sizes, mm. */
export const values = {
  length: v.size('of the piece, over flanges or folds at its ends'),
  width: v.size('across, over the outside'),
  height: v.size('over the outside'),
  piece: v.or(
    v.word('wrap (all four sides of one sheet) or half (two sides; two of the same make the duct)', [
      'wrap',
      'half',
    ]),
    'half',
  ),
  seam: v.size('of the tab that closes the seam, inside the duct'),
  play: v.or(v.size('between the tab and the side it lies on', { min: 0, max: 5 }), USUAL_PLAY),
  ends: v.or(
    v.choice(
      'ends: plain, flanged (every side turned out) or slip (the upright sides folded back out for drive slips, the others plain for flat slips)',
      'plain, flanged or slip',
      {
        plain: {},
        flanged: { width: v.size('how far the flanges stand out') },
        slip: { fold: v.size('width of the folds') },
      },
    ),
    { type: 'plain' },
  ),
  crossBreak: v.or(
    v.word('none, or scribed: lines from corner to corner of every side, to break it along', [
      'none',
      'scribed',
    ]),
    'none',
  ),
};

export type DuctParams = Given<typeof values>;

/** Sides in the order they are folded; the first is the base. */
export const sidesOf = ({ piece }: DuctParams): readonly string[] =>
  piece === 'half' ? ['bottom', 'north'] : ['bottom', 'north', 'top', 'south'];

/** Of the side that carries the tab: the tab lies a sheet and the play inside. mm */
export const lastSide = ({ height, play }: DuctParams, { thickness }: Sheet): number =>
  height - thickness - play;

/** Extent of a side across the duct, mm. */
export function acrossOf(p: DuctParams, side: string, sheet: Sheet): number {
  if (side === 'bottom' || side === 'top') return p.width;
  return side === sidesOf(p).at(-1) ? lastSide(p, sheet) : p.height;
}

export function check(p: DuctParams, sheet: Sheet): readonly Complaint[] {
  const bend = setback(sheet);
  const { ends } = p;
  const cross = Math.min(p.length, p.width, lastSide(p, sheet));
  return [
    ...need(
      reaches(p.width - sheet.thickness - bend, p.seam + LEAST_METAL),
      ['seam'],
      'it would meet the other side',
    ),
    ...(ends.type === 'flanged'
      ? need(
          reaches(ends.width + sheet.thickness, bend + LEAST_METAL),
          ['ends', 'width'],
          'the flanges would end in their bends',
        )
      : []),
    ...(ends.type === 'slip'
      ? need(
          reaches(p.length / 2 - LEAST_METAL, ends.fold),
          ['ends', 'fold'],
          'folds from both ends would meet',
        )
      : []),
    ...need(
      p.crossBreak === 'none' || reaches(cross, 4 * bend),
      ['length'],
      'too small for a cross-break between its bends',
    ),
  ];
}

export function derived(p: DuctParams, sheet: Sheet): readonly DerivedSize[] {
  const t = sheet.thickness;
  return [
    derivedSize('insideLength', p.length, 'length', 'from end to end'),
    derivedSize('insideWidth', p.width - 2 * t, 'width', 'between the sides'),
    derivedSize('insideHeight', p.height - 2 * t, 'height', 'between bottom and top'),
    derivedSize('seamSide', lastSide(p, sheet), 'height', 'of the side that carries the tab'),
  ];
}
