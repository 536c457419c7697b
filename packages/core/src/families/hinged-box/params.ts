import { LEAST_METAL, reaches } from '../../fold/least.js';
import type { Sheet } from '../../fold/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { holeRow } from '../hole-row.js';
import { CORNER_GAP, type Complaint, hemHeight, need, setback } from '../limits.js';
import type { Side, Walls } from '../walls.js';

const HOLES = {
  diameter: v.size('diameter of each hole', { max: 100 }),
  count: v.or(v.count('holes along the wall', 1, 60), 2),
  edge: v.maybe(
    v.size('from the sides to the middle of the first and the last; evenly spread when left out'),
  ),
  below: v.size('from the rim to their middles'),
};

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
  hinge: v.maybe(
    v.group('a row of holes in the north wall for the leaf of a hinge; leave out for none', HOLES),
  ),
  hasp: v.maybe(v.group('a row of holes in the south wall for hasp or staple; leave out for none', HOLES)),
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
/** A row of holes along a wall. mm */
export type HingeRow = NonNullable<HingedBoxParams['hinge']>;

/** Outside sizes: inside ones become two thicknesses longer across, one higher. mm */
export function halfWalls(p: HingedBoxParams, { thickness }: Sheet): Walls {
  const [across, up] = p.dimensions === 'inside' ? [2 * thickness, thickness] : [0, 0];
  return { length: p.length + across, width: p.width + across, height: () => p.height + up };
}

/** Rows by the wall they are in; along a wall from its middle they are the same from both ends. */
export const rowsOf = ({
  hinge,
  hasp,
}: HingedBoxParams): readonly (readonly [Side, 'hinge' | 'hasp', HingeRow])[] => [
  ...(hinge === null ? [] : [['north', 'hinge', hinge] as const]),
  ...(hasp === null ? [] : [['south', 'hasp', hasp] as const]),
];

export const rimDepth = ({ hem }: HingedBoxParams): number => hem?.length ?? 0;

export function check(p: HingedBoxParams, sheet: Sheet): readonly Complaint[] {
  const { length, width, height } = halfWalls(p, sheet);
  const { ledge, hem } = p;
  return [
    ...rowsOf(p).flatMap(([, name, row]) => rowFits(p, name, row, length, sheet)),
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

/** Holes keep off the hem of the rim and off the ends of the wall, which are cut back for its neighbours. */
function rowFits(
  p: HingedBoxParams,
  name: string,
  { diameter, count, edge, below }: HingeRow,
  length: number,
  sheet: Sheet,
): readonly Complaint[] {
  const [first = 0] = holeRow(length, count, edge);
  const clear = diameter / 2 + LEAST_METAL;
  return [
    ...need(
      reaches(Math.min(first, length - first), 2 * setback(sheet) + p.gap + clear),
      [name, edge === null ? 'diameter' : 'edge'],
      'too near the ends of the wall',
    ),
    ...need(reaches(below, rimDepth(p) + clear), [name, 'below'], 'too near the rim'),
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
