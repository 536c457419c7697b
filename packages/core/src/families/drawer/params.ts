import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { cornerGap, tabGroup } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { type Complaint, need, setback } from '../limits.js';
import type { Side, Walls } from '../walls.js';

/** A drawer that hangs in its runners. Outside sizes, mm. */
export const values = {
  width: v.size('over the outside faces of the sides'),
  depth: v.size('over the outside faces of front and back'),
  height: v.size('height of the sides and the back'),
  front: v.maybe(v.size('height of the front; as high as the sides when left out')),
  runners: v.maybe(
    v.group(
      'flanges at the rims of the sides, turned outwards, that the drawer slides on; leave out for none',
      {
        over: v.size('width over both flanges'),
      },
    ),
  ),
  pull: v.or(
    v.choice(
      'what it is opened by: none, lip (the rim of the front turned out and down) or holes for a handle',
      'none, lip or holes',
      {
        none: {},
        lip: {
          depth: v.size('how far the lip stands out of the front'),
          drop: v.size('how far it reaches down, from its top'),
        },
        holes: {
          diameter: v.size('diameter of each of the two holes', { max: 100 }),
          spacing: v.size('between their middles'),
          below: v.size('from the rim of the front to their middles'),
        },
      },
    ),
    { type: 'none' },
  ),
  hem: v.hem('hem on the rim of the back, and of the front where no lip is, folded in; leave out for none'),
  corner: v.or(
    v.word('open (square notch) or tabbed (tabs of front and back behind the sides)', ['open', 'tabbed']),
    'open',
  ),
  tabs: tabGroup('a tabbed drawer', 15),
  gap: cornerGap(),
};

export type DrawerParams = Given<typeof values>;

/** The front is the south wall, the sides stand west and east. mm */
export function drawerWalls({ width, depth, height, front }: DrawerParams): Walls {
  return { length: width, width: depth, height: (side) => (side === 'south' ? (front ?? height) : height) };
}

/** Leg of a runner flange: from the inside of its side, where the bend's outside is. mm */
export const runnerLeg = (over: number, width: number, { thickness }: Sheet): number =>
  (over - width) / 2 + thickness;

/** Walls with a hem at the rim. */
export const hemmed = ({ hem, pull }: DrawerParams, side: Side): boolean =>
  hem !== null && (side === 'north' || (side === 'south' && pull.type !== 'lip'));

export function check(p: DrawerParams, sheet: Sheet): readonly Complaint[] {
  const { width, height, pull } = p;
  const front = p.front ?? height;
  const t = sheet.thickness;
  return [
    ...need(p.front === null || reaches(p.front, height), ['front'], 'lower than the sides'),
    ...need(
      p.runners === null || reaches(runnerLeg(p.runners.over, width, sheet), setback(sheet) + LEAST_METAL),
      ['runners', 'over'],
      'the flanges would end in their bends',
    ),
    ...need(
      p.corner !== 'tabbed' || reaches(p.depth / 2 - p.gap, p.tabs.length),
      ['tabs', 'length'],
      'tabs of front and back would meet',
    ),
    ...(pull.type === 'lip'
      ? need(reaches(front - t, pull.drop), ['pull', 'drop'], 'it would reach below the base')
      : []),
    ...(pull.type === 'holes' ? holesFit(p, pull, sheet) : []),
  ];
}

type Holes = Extract<DrawerParams['pull'], { type: 'holes' }>;

/** Holes keep off the hem of the rim and off the ends of the front, which are cut back for the sides. */
function holesFit(p: DrawerParams, pull: Holes, sheet: Sheet): readonly Complaint[] {
  const clear = pull.diameter / 2 + LEAST_METAL;
  const rim = hemmed(p, 'south') && p.hem !== null ? p.hem.length : 0;
  return [
    ...need(reaches(pull.below, rim + clear), ['pull', 'below'], 'too little metal would be left at the rim'),
    ...need(
      reaches((p.width - pull.spacing) / 2, 2 * setback(sheet) + p.gap + clear),
      ['pull', 'spacing'],
      'the front is not so wide',
    ),
  ];
}

export function derived(p: DrawerParams, { thickness }: Sheet): readonly DerivedSize[] {
  return [
    derivedSize('insideLength', p.width - 2 * thickness, 'width', 'between the inside faces of the sides'),
    derivedSize(
      'insideWidth',
      p.depth - 2 * thickness,
      'depth',
      'between the inside faces of front and back',
    ),
    derivedSize(
      'insideHeight',
      p.height - thickness,
      'height',
      'from the inside of the base to the rim of the sides',
    ),
    derivedSize('frontHeight', p.front ?? p.height, p.front === null ? 'height' : 'front', 'of the front'),
  ];
}
