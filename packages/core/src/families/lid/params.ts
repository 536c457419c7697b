import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { cornerGap } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { hemHeight } from '../limits.js';

/** Play a lid gets on every side beyond what its bends and hems take, mm. Common practice, no source. */
const USUAL_PLAY = 0.3;
const USUAL_LEDGE = 10;
/** A lid with a skirt. mm */
export const values = {
  length: v.size('length of what it covers, outside; of the opening it drops into, inside'),
  width: v.size('width of what it covers, outside; of the opening it drops into, inside'),
  depth: v.size('from the top of the plate to the edge of the skirt'),
  fit: v.or(
    v.word('over (the skirt outside of the box) or inside (the skirt in the opening, the plate on its rim)', [
      'over',
      'inside',
    ]),
    'over',
  ),
  clearance: v.or(
    v.sizeOr(
      'play between skirt and box on every side: auto clears the inside of the bend and the hem',
      'auto',
      {
        min: 0,
        max: 20,
      },
    ),
    'auto',
  ),
  hem: v.hem('hem on the edge of the skirt, folded in; leave out for none'),
  ledge: v.or(
    v.size('how far the plate of a lid that drops in reaches past its skirt', { max: 200 }),
    USUAL_LEDGE,
  ),
  corner: v.or(
    v.word('of a lid that goes over: open, or lap (north and south skirts cover the ends of the others)', [
      'open',
      'lap',
    ]),
    'open',
  ),
  gap: cornerGap(),
};

export type LidParams = Given<typeof values>;

/** The lid's plate over its outside, and the outside leg of its skirt. mm */
export interface LidSizes {
  readonly length: number;
  readonly width: number;
  readonly skirt: number;
}

/** Play on every side: given, or as much as keeps a square rim out of the skirt's bend and off a hem folded in. mm */
export function play({ clearance, fit, hem }: LidParams, { insideRadius, thickness }: Sheet): number {
  if (clearance !== 'auto') return clearance;
  return Math.max(insideRadius, fit === 'over' ? hemHeight(hem, thickness) : 0) + USUAL_PLAY;
}

/** The skirt stands off what it covers, or off the opening, by its play. */
export function lidSizes(p: LidParams, sheet: Sheet): LidSizes {
  const { thickness } = sheet;
  const across = p.fit === 'over' ? 2 * (play(p, sheet) + thickness) : 2 * (p.ledge - play(p, sheet));
  const skirt = p.fit === 'over' ? p.depth : p.depth - thickness;
  return { length: p.length + across, width: p.width + across, skirt };
}

/** Leg of the fold under the plate of a lid that drops in: to the mould line of its skirt, on the inner side. mm */
export const ledgeLeg = ({ ledge }: LidParams, { thickness }: Sheet): number => ledge + thickness;

export function derived(p: LidParams, sheet: Sheet): readonly DerivedSize[] {
  const { length, width } = lidSizes(p, sheet);
  const inside = (outside: number) =>
    p.fit === 'over' ? outside - 2 * sheet.thickness : outside - 2 * ledgeLeg(p, sheet);
  const lower = (p.fit === 'over' ? 1 : 2) * sheet.thickness;
  return [
    derivedSize('outsideLength', length, 'length', 'over the plate, along x'),
    derivedSize('outsideWidth', width, 'width', 'over the plate, along y'),
    derivedSize('insideLength', inside(length), 'length', 'between the skirts, along x'),
    derivedSize('insideWidth', inside(width), 'width', 'between the skirts, along y'),
    derivedSize('insideHeight', p.depth - lower, 'depth', 'of the skirt below the plate, or below the ledge'),
  ];
}
