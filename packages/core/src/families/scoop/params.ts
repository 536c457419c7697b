import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { degrees } from '../../units/angle.js';
import { cornerGap } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { type Complaint, need, setback } from '../limits.js';
import { wireFits } from '../wire-fits.js';

/** A scoop with a back, two sides that open towards the lip, and a lip. Outside sizes, mm. */
export const values = {
  length: v.size('from the outside of the back to the lip'),
  width: v.size('over the outside faces of the sides, at the back'),
  height: v.size('height of the back and the sides'),
  flare: v.or(v.size('how far each side stands out over the length', { min: 0 }), 0),
  slope: v.maybe(
    v.size('how far behind the lip the sides reach their height; half the length when left out', { min: 0 }),
  ),
  lip: v.or(
    v.choice(
      'front edge of the bottom: plain, hem (folded under) or wire (rolled under)',
      'plain, hem or wire',
      {
        plain: {},
        hem: { length: v.size('finished width of the hem') },
        wire: { diameter: v.size('diameter of the wire', { max: 20 }) },
      },
    ),
    { type: 'plain' },
  ),
  tabs: v.or(
    v.group('tabs of the back, inside the sides', { length: v.size('outside length of the tabs') }),
    { length: 15 },
  ),
  gap: cornerGap(),
};

export type ScoopParams = Given<typeof values>;

/** The sides as they are laid out. mm, radians */
export interface ScoopSide {
  /** Off the middle line, in plan. */
  readonly splay: number;
  /** Along the bottom, slanting. */
  readonly length: number;
  /** Of the length, taken off the top at the front. */
  readonly slope: number;
}

export function scoopSide({ length, flare, slope }: ScoopParams): ScoopSide {
  return {
    splay: Math.atan2(flare, length),
    length: Math.hypot(flare, length),
    slope: slope ?? length / 2,
  };
}

/** Of the back over its tabs, which stand a sheet and the gap inside the sides. mm */
export const backWidth = (p: ScoopParams, { thickness }: Sheet): number =>
  p.width - (2 * (thickness + p.gap)) / Math.cos(scoopSide(p).splay);

/** Tabs turn by the angle in plan between back and sides, degrees. */
export const tabAngle = ({ splay }: ScoopSide): number => 90 - degrees(splay);

/** Room of a tab along the end of the back: over the bottom, and kept off the side it lies beside on the flat. mm */
export function tabRoom(p: ScoopParams, side: ScoopSide, sheet: Sheet) {
  return { low: sheet.thickness + p.gap, off: setback(sheet) + p.gap, beside: Math.PI / 2 - side.splay };
}

export function check(p: ScoopParams, sheet: Sheet): readonly Complaint[] {
  const side = scoopSide(p);
  const { off, beside } = tabRoom(p, side, sheet);
  const cut = (p.tabs.length * Math.cos(beside) + off) / Math.sin(beside);
  return [
    ...need(
      reaches(side.length - setback(sheet) - LEAST_METAL, side.slope),
      ['slope'],
      'nothing would be left of the upper edge of the sides',
    ),
    ...need(reaches(p.height, cut + LEAST_METAL), ['tabs', 'length'], 'nothing would be left of its end'),
    ...need(
      reaches(side.length - side.slope, p.tabs.length),
      ['tabs', 'length'],
      'the sides slope down before the tabs end',
    ),
    ...(p.lip.type === 'wire'
      ? wireFits(
          { diameter: p.lip.diameter, allowance: null },
          sheet.thickness,
          ['lip', 'diameter'],
          'bottom',
        )
      : []),
  ];
}

export function derived(p: ScoopParams, sheet: Sheet): readonly DerivedSize[] {
  const inset = sheet.thickness / Math.cos(scoopSide(p).splay);
  return [
    derivedSize(
      'insideLength',
      p.length - sheet.thickness,
      'length',
      'from the inside of the back to the lip',
    ),
    derivedSize('insideWidth', p.width - 2 * inset, 'width', 'between the sides, at the back'),
    derivedSize('insideHeight', p.height - sheet.thickness, 'height', 'from the bottom to the rim'),
    derivedSize('backWidth', backWidth(p, sheet), 'width', 'of the back, over its tabs'),
    derivedSize('mouthWidth', p.width + 2 * p.flare, 'width', 'over the sides, at the lip'),
  ];
}
