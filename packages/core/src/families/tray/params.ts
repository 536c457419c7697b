import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { boxCorner, cornerGap, tabGroup } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { type Complaint, need, setback } from '../limits.js';
import {
  boxLength,
  boxMeant,
  boxWidth,
  lengthsInside,
  lengthsOutside,
  outsideWalls,
  tabsMeet,
} from '../upright-box.js';

/** A tray whose rim is returned inwards. mm */
export const values = {
  length: boxLength,
  width: boxWidth,
  height: v.size('height of the walls, over the returns'),
  dimensions: boxMeant('length, width and height'),
  rim: v.group('what is folded in at the rim of every wall', {
    return: v.size('width of the return, from the outside of the wall'),
    lip: v.maybe(v.size('depth of a lip turned down at the edge of the return; leave out for none')),
  }),
  corner: boxCorner('open'),
  tabs: tabGroup('a tabbed tray', 15),
  stack: v.maybe(
    v.group('places at the four corners for angles that hold the tray above; leave out for none', {
      rise: v.size('how far the angles stand over the rim'),
      play: v.or(v.size('kept between the angles of trays that stand on each other', { max: 50 }), 1),
    }),
  ),
  gap: cornerGap(),
};

export type TrayParams = Given<typeof values>;

/** How far the rim reaches down along a wall, mm: a lip stands off the wall, its return's bend does not. */
export const rimDepth = (p: TrayParams, sheet: Sheet): number =>
  Math.max(setback(sheet), p.rim.lip !== null && p.rim.return < p.tabs.length ? p.rim.lip : 0);

export function check(p: TrayParams, sheet: Sheet): readonly Complaint[] {
  const { length, width, height } = outsideWalls(p, sheet);
  const { lip } = p.rim;
  return [
    ...need(
      reaches(Math.min(length, width) / 2 - p.gap - LEAST_METAL, p.rim.return),
      ['rim', 'return'],
      'returns from both sides would meet',
    ),
    ...need(
      lip === null || reaches(height('north') - sheet.thickness - LEAST_METAL, lip),
      ['rim', 'lip'],
      'it would reach the base',
    ),
    ...tabsMeet(p, width),
    ...need(
      p.stack === null || reaches(height('north'), 2 * p.stack.rise + p.stack.play),
      ['stack', 'rise'],
      'the angles would hold no more below the rim than above it',
    ),
  ];
}

export function derived(p: TrayParams, sheet: Sheet): readonly DerivedSize[] {
  const walls = outsideWalls(p, sheet);
  const { length, width } = walls;
  const t = sheet.thickness;
  const high = walls.height('north');
  return [
    ...lengthsInside(walls, t),
    derivedSize(
      'insideHeight',
      high - 2 * t,
      'height',
      'from the inside of the base to the underside of the returns',
    ),
    ...lengthsOutside(walls),
    derivedSize('rimHeight', high, 'height', 'from the outside of the base to the top of the returns'),
    derivedSize('openLength', length - 2 * p.rim.return, 'length', 'between the returns, along x'),
    derivedSize('openWidth', width - 2 * p.rim.return, 'width', 'between the returns, along y'),
    ...(p.stack === null
      ? []
      : [derivedSize('stackCorner', high - p.stack.play, 'height', 'height of the angles at the corners')]),
  ];
}
