import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { cornerGap } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { holeRow, rowEdge } from '../hole-row.js';
import { type Complaint, need, setback } from '../limits.js';
import { SIDES, spanOf, type Walls } from '../walls.js';

/** Play between a cover and its base on every side, mm. Common practice, no source. */
const USUAL_PLAY = 0.3;
const FACES = ['top', ...SIDES] as const;

/** A cover over a base. mm */
export const values = {
  length: v.size('length of the base it goes on, outside'),
  width: v.size('width of the base it goes on, outside'),
  height: v.size('from the top of the plate to the edge of the sides'),
  overlap: v.maybe(
    v.size('height of the walls of the base, which the sides reach down over; half the height when left out'),
  ),
  clearance: v.or(v.size('play between the sides and the base', { min: 0, max: 20 }), USUAL_PLAY),
  vents: v.maybe(
    v.group('fields of round holes that let air through; leave out for none', {
      on: v.or(v.list('where they are: top, north, south, east, west', v.word('', FACES), [1, 5]), ['top']),
      diameter: v.size('diameter of each hole', { max: 100 }),
      pitch: v.size('from middle to middle, along a row and from row to row'),
      columns: v.count('holes in a row', 1, 12),
      rows: v.count('rows', 1, 12),
    }),
  ),
  tabs: v.maybe(
    v.group('screw tabs turned outwards at the edges of the west and east side; leave out for none', {
      length: v.size('how far they stand out of the sides'),
      diameter: v.size('diameter of the screw holes', { max: 100 }),
      count: v.or(v.count('holes in each tab', 1, 20), 2),
      edge: rowEdge,
    }),
  ),
  corner: v.or(
    v.word('open, or lap (north and south sides cover the ends of the others)', ['open', 'lap']),
    'open',
  ),
  gap: cornerGap(),
};

export type CoverParams = Given<typeof values>;
/** Fields of holes. mm */
export type Vents = NonNullable<CoverParams['vents']>;
type Tabs = NonNullable<CoverParams['tabs']>;

/** The cover's own outside. mm */
export function coverWalls({ length, width, height, clearance }: CoverParams, { thickness }: Sheet): Walls {
  const across = 2 * (clearance + thickness);
  return { length: length + across, width: width + across, height: () => height };
}

/** Height of the base's walls. mm */
export const overlapOf = ({ overlap, height }: CoverParams): number => overlap ?? height / 2;

/** Leg of a screw tab: from the inside of its side, where the bend's outside is. mm */
export const tabLeg = ({ length }: Tabs, { thickness }: Sheet): number => length + thickness;

/** Middles of a tab's holes along it, and their place across, from the inside of the side. mm */
export function tabHoles(
  p: CoverParams,
  tabs: Tabs,
  sheet: Sheet,
): { along: readonly number[]; across: number } {
  const { width } = coverWalls(p, sheet);
  return {
    along: holeRow(width, tabs.count, tabs.edge),
    across: (setback(sheet) + tabLeg(tabs, sheet)) / 2,
  };
}

/** Middles of a field of holes round the point given. mm */
export function fieldRound([x, y]: readonly [number, number], { pitch, columns, rows }: Vents) {
  const line = (count: number) => Array.from({ length: count }, (_, i) => (i - (count - 1) / 2) * pitch);
  return line(rows).flatMap((v) => line(columns).map((u) => [x + u, y + v] as const));
}

/** Width and height of the clear metal a field may stand on, and its middle, in the panel's frame. mm */
export function ventRoom(p: CoverParams, on: Vents['on'][number], sheet: Sheet) {
  const walls = coverWalls(p, sheet);
  const bend = setback(sheet);
  if (on === 'top')
    return {
      size: [walls.length - 2 * bend, walls.width - 2 * bend] as const,
      middle: [walls.length / 2, walls.width / 2] as const,
    };
  // above what covers the base's walls
  const low = p.height - overlapOf(p);
  return {
    size: [spanOf(walls, on) - 2 * (bend + sheet.thickness + p.gap), low - bend] as const,
    middle: [spanOf(walls, on) / 2, (low + bend) / 2] as const,
  };
}

export function check(p: CoverParams, sheet: Sheet): readonly Complaint[] {
  return [
    ...need(
      p.overlap === null || reaches(p.height - setback(sheet), p.overlap),
      ['overlap'],
      'the base would stand in the bends of the cover',
    ),
    ...(p.vents === null ? [] : ventsFit(p, p.vents, sheet)),
    ...(p.tabs === null ? [] : tabsFit(p, p.tabs, sheet)),
  ];
}

/** A field keeps clear of the bends, of the base behind the sides, and of the ends of sides that are cut back. */
function ventsFit(p: CoverParams, vents: Vents, sheet: Sheet): readonly Complaint[] {
  const extent = (count: number) => (count - 1) * vents.pitch + vents.diameter + 2 * LEAST_METAL;
  const by = (count: number) => ['vents', count === 1 ? 'diameter' : 'pitch'];
  return [
    ...vents.on.flatMap((on) => {
      const [across, up] = ventRoom(p, on, sheet).size;
      return [
        ...need(reaches(across, extent(vents.columns)), by(vents.columns), `a row reaches past the ${on}`),
        ...need(reaches(up, extent(vents.rows)), by(vents.rows), `the rows reach past the ${on}`),
      ];
    }),
    ...need(new Set(vents.on).size === vents.on.length, ['vents', 'on'], 'a side is named twice'),
  ];
}

/** The ends of a tab are cut back for the sides beside it. */
function tabsFit(p: CoverParams, tabs: Tabs, sheet: Sheet): readonly Complaint[] {
  const [first = 0] = tabHoles(p, tabs, sheet).along;
  const side = Math.min(first, coverWalls(p, sheet).width - first);
  return need(
    reaches(side - setback(sheet) - sheet.thickness - p.gap, tabs.diameter / 2 + LEAST_METAL),
    ['tabs', tabs.edge === null ? 'diameter' : 'edge'],
    'too little metal would be left at the ends of the tab',
  );
}

export function derived(p: CoverParams, sheet: Sheet): readonly DerivedSize[] {
  const { length, width } = coverWalls(p, sheet);
  const t = sheet.thickness;
  return [
    derivedSize('outsideLength', length, 'length', 'over the west and east side'),
    derivedSize('outsideWidth', width, 'width', 'over the south and north side'),
    derivedSize('insideLength', length - 2 * t, 'length', 'between the west and east side'),
    derivedSize('insideWidth', width - 2 * t, 'width', 'between the south and north side'),
    derivedSize(
      'insideHeight',
      p.height - t,
      'height',
      'from the edge of the sides to the inside of the plate',
    ),
  ];
}
