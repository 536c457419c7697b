import { LEAST_METAL, reaches } from '../../fold/least.js';
import type { Sheet } from '../../fold/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { CORNER_GAP, type Complaint, hemHeight, need, setback } from '../limits.js';
import type { Walls } from '../walls.js';

/** Body or lid of a box that opens on a hinge. mm */
export const values = {
  length: v.size('over the west and east walls, or between them where inside sizes are given'),
  width: v.size('over the south and north walls, or between them'),
  height: v.size('height of this half, over what is folded at its rim'),
  dimensions: v.or(
    v.word('outside or inside: how length, width and height are meant', ['outside', 'inside']),
    'outside',
  ),
  hem: v.hem('hem on every rim, folded in; leave out for none'),
  ledge: v.maybe(
    v.group('places on the west and east walls for angles that carry a tray; leave out for none', {
      height: v.size('from the underside to what the tray stands on'),
      leg: v.size('height of the angles, up the wall'),
    }),
  ),
  corner: v.or(
    v.word('open (square notch) or tabbed (tabs of the north and south walls behind the other two)', [
      'open',
      'tabbed',
    ]),
    'tabbed',
  ),
  tabs: v.or(
    v.group('corner tabs of a tabbed box', { length: v.size('outside length of the corner tabs') }),
    { length: 20 },
  ),
  gap: v.or(v.size('kept between neighbours at the corners', { min: 0, max: 20 }), CORNER_GAP),
};

export type HingedBoxParams = Given<typeof values>;

/** Outside sizes: inside ones become two thicknesses longer across, one higher. mm */
export function halfWalls(p: HingedBoxParams, { thickness }: Sheet): Walls {
  const [across, up] = p.dimensions === 'inside' ? [2 * thickness, thickness] : [0, 0];
  return { length: p.length + across, width: p.width + across, height: () => p.height + up };
}

export const rimDepth = ({ hem }: HingedBoxParams): number => hem?.length ?? 0;

export function check(p: HingedBoxParams, sheet: Sheet): readonly Complaint[] {
  const { length, width, height } = halfWalls(p, sheet);
  const { ledge, hem } = p;
  return [
    ...need(
      ledge === null || reaches(ledge.height - 2 * sheet.thickness, setback(sheet) + LEAST_METAL),
      ['ledge', 'height'],
      'the angles would stand in the bends of the base',
    ),
    ...need(
      ledge === null || reaches(height('west') - rimDepth(p), ledge.height + ledge.leg),
      ['ledge', 'leg'],
      'the angles would reach the rim',
    ),
    ...need(
      hem === null || reaches(Math.min(length, width) / 2 - LEAST_METAL, hemHeight(hem, sheet.thickness)),
      ['hem', 'length'],
      'hems from both sides would meet',
    ),
    ...need(
      p.corner !== 'tabbed' || reaches(width / 2 - p.gap, p.tabs.length),
      ['tabs', 'length'],
      (say) => `tabs from both sides would meet across a width of ${say.size(width)}`,
    ),
  ];
}

export function derived(p: HingedBoxParams, sheet: Sheet): readonly DerivedSize[] {
  const { length, width, height } = halfWalls(p, sheet);
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
    derivedSize('insideHeight', high - t, 'height', 'from the inside of the base to the rim'),
    derivedSize('outsideLength', length, 'length', 'over the west and east walls'),
    derivedSize('outsideWidth', width, 'width', 'over the south and north walls'),
    derivedSize('rimHeight', high, 'height', 'from the outside of the base to the rim'),
  ];
}
