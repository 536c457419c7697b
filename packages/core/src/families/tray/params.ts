import { LEAST_METAL, reaches } from '../../fold/least.js';
import type { Sheet } from '../../fold/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { CORNER_GAP, type Complaint, need, setback } from '../limits.js';
import type { Walls } from '../walls.js';

/** A tray whose rim is returned inwards. mm */
export const values = {
  length: v.size('over the west and east walls, or between them where inside sizes are given'),
  width: v.size('over the south and north walls, or between them'),
  height: v.size('height of the walls, over the returns'),
  dimensions: v.or(
    v.word('outside or inside: how length, width and height are meant', ['outside', 'inside']),
    'outside',
  ),
  rim: v.group('what is folded in at the rim of every wall', {
    return: v.size('width of the return, from the outside of the wall'),
    lip: v.maybe(v.size('depth of a lip turned down at the edge of the return; leave out for none')),
  }),
  corner: v.or(
    v.word('open (square notch) or tabbed (tabs of the north and south walls behind the other two)', [
      'open',
      'tabbed',
    ]),
    'open',
  ),
  tabs: v.or(
    v.group('corner tabs of a tabbed tray', { length: v.size('outside length of the corner tabs') }),
    { length: 15 },
  ),
  stack: v.maybe(
    v.group('places at the four corners for angles that hold the tray above; leave out for none', {
      rise: v.size('how far the angles stand over the rim'),
      play: v.or(v.size('kept between the angles of trays that stand on each other', { max: 50 }), 1),
    }),
  ),
  gap: v.or(v.size('kept between neighbours at the corners', { min: 0, max: 20 }), CORNER_GAP),
};

export type TrayParams = Given<typeof values>;

/** Outside sizes: inside ones become two thicknesses longer across, one higher. mm */
export function trayWalls(p: TrayParams, { thickness }: Sheet): Walls {
  const [across, up] = p.dimensions === 'inside' ? [2 * thickness, thickness] : [0, 0];
  return { length: p.length + across, width: p.width + across, height: () => p.height + up };
}

/** How far the rim reaches down along a wall, mm: a lip stands off the wall, its return's bend does not. */
export const rimDepth = (p: TrayParams, sheet: Sheet): number =>
  Math.max(setback(sheet), p.rim.lip !== null && p.rim.return < p.tabs.length ? p.rim.lip : 0);

export function check(p: TrayParams, sheet: Sheet): readonly Complaint[] {
  const { length, width, height } = trayWalls(p, sheet);
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
    ...need(
      p.corner !== 'tabbed' || reaches(width / 2 - p.gap, p.tabs.length),
      ['tabs', 'length'],
      (say) => `tabs from both sides would meet across a width of ${say.size(width)}`,
    ),
    ...need(
      p.stack === null || reaches(height('north'), 2 * p.stack.rise + p.stack.play),
      ['stack', 'rise'],
      'the angles would hold no more below the rim than above it',
    ),
  ];
}

export function derived(p: TrayParams, sheet: Sheet): readonly DerivedSize[] {
  const { length, width, height } = trayWalls(p, sheet);
  const t = sheet.thickness;
  const high = height('north');
  return [
    derivedSize(
      'insideLength',
      length - 2 * t,
      'length',
      'between the inside faces of the west and east walls',
    ),
    derivedSize(
      'insideWidth',
      width - 2 * t,
      'width',
      'between the inside faces of the south and north walls',
    ),
    derivedSize(
      'insideHeight',
      high - 2 * t,
      'height',
      'from the inside of the base to the underside of the returns',
    ),
    derivedSize('outsideLength', length, 'length', 'over the west and east walls'),
    derivedSize('outsideWidth', width, 'width', 'over the south and north walls'),
    derivedSize('rimHeight', high, 'height', 'from the outside of the base to the top of the returns'),
    derivedSize('openLength', length - 2 * p.rim.return, 'length', 'between the returns, along x'),
    derivedSize('openWidth', width - 2 * p.rim.return, 'width', 'between the returns, along y'),
    ...(p.stack === null
      ? []
      : [derivedSize('stackCorner', high - p.stack.play, 'height', 'height of the angles at the corners')]),
  ];
}
