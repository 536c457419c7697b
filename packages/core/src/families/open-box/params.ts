import { type HemSpec, hemFold } from '../../bending/hem.js';
import type { Relief } from '../../fold/corner-style.js';
import { reliefHole, reliefReach, reliefSlot } from '../../fold/corners/relief.js';
import type { Sheet } from '../../fold/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import {
  CORNER_GAP,
  type Complaint,
  type HemWall,
  hemFits,
  LEAST_LEG,
  leastFlange,
  need,
  reaches,
  setback,
} from '../limits.js';

/** Walls of a box by the compass. */
export type Side = 'north' | 'south' | 'east' | 'west';
export const SIDES: readonly Side[] = ['north', 'south', 'east', 'west'];

/** A box open at the top. mm */
export const values = {
  length: v.size('between the west and east walls, outside or inside as `dimensions` says'),
  width: v.size('between the south and north walls'),
  height: v.size('of all walls, over what is folded at the rim'),
  heights: v.maybe(
    v.group('walls that differ: north, south, east, west', {
      north: v.maybe(v.size('height of the north wall')),
      south: v.maybe(v.size('height of the south wall')),
      east: v.maybe(v.size('height of the east wall')),
      west: v.maybe(v.size('height of the west wall')),
    }),
  ),
  dimensions: v.or(
    v.word('outside or inside: how length, width and heights are meant', ['outside', 'inside']),
    'outside',
  ),
  corner: v.or(
    v.word(
      'open (square notch), lap (north and south walls cover the ends of the others), tabbed (tabs behind the west and east walls)',
      ['open', 'lap', 'tabbed'],
    ),
    'open',
  ),
  tabs: v.or(
    v.group('corner tabs of a tabbed box', { length: v.size('outside length of the corner tabs') }),
    { length: 15 },
  ),
  hem: v.hem('hem on every rim, folded in: type, length, gap'),
  hems: v.maybe(
    v.group('a hem for each wall on its own; walls left out have none', {
      north: v.hem(''),
      south: v.hem(''),
      east: v.hem(''),
      west: v.hem(''),
    }),
  ),
  flangeReturn: v.maybe(v.size('flange folded in at the rim of every wall; hems then sit on its edge')),
  relief: v.or(v.word('none, hole or slot at the root of the corners', ['none', 'hole', 'slot']), 'none'),
  gap: v.or(v.size('kept between neighbours at the corners', { min: 0, max: 20 }), CORNER_GAP),
};

export type OpenBoxParams = Given<typeof values>;

/** The box in outside sizes, every wall with its own height and hem. mm */
export interface BoxSizes {
  readonly length: number;
  readonly width: number;
  readonly wall: (side: Side) => { readonly height: number; readonly hem: HemSpec | null };
}

/** Inside sizes become outside ones here, once: two thicknesses across, one in height. */
export function boxSizes(p: OpenBoxParams, { thickness }: Sheet): BoxSizes {
  const [across, up] = p.dimensions === 'inside' ? [2 * thickness, thickness] : [0, 0];
  return {
    length: p.length + across,
    width: p.width + across,
    wall: (side) => ({
      height: (p.heights?.[side] ?? p.height) + up,
      hem: p.hems === null ? p.hem : p.hems[side],
    }),
  };
}

/** How far what hangs on a wall's rim reaches down along it, mm: tabs of the neighbours stop below. */
export function rimDepth(p: OpenBoxParams, side: Side, sheet: Sheet): number {
  const { hem } = boxSizes(p, sheet).wall(side);
  return (p.flangeReturn === null ? 0 : setback(sheet)) + (hem === null ? 0 : hem.length);
}

export function check(p: OpenBoxParams, sheet: Sheet): readonly Complaint[] {
  const outer = [...acrossHolds(p, sheet), ...SIDES.flatMap((side) => wallHolds(p, side, sheet))];
  if (outer.length > 0) return outer;
  return [
    ...(p.flangeReturn === null ? [] : returnsFit(p, p.flangeReturn, sheet)),
    ...hemsFit(p, sheet),
    ...(p.corner === 'tabbed' ? tabsFit(p, sheet) : []),
  ];
}

/** Room for the bends, for what the corners take, for returns and corner tabs at their least. */
function acrossHolds(p: OpenBoxParams, sheet: Sheet): readonly Complaint[] {
  const box = boxSizes(p, sheet);
  const bend = setback(sheet);
  const tabbed = p.corner === 'tabbed';
  const corner = Math.max(bend, sheet.thickness + p.gap) + p.gap;
  const rims = p.flangeReturn === null ? 0 : bend + LEAST_LEG + p.gap + foldRadius(p, sheet, SIDES);
  // a hem's ends are cut as far in as its fold bulges
  const bulge = (...sides: readonly Side[]) => 2 * (foldRadius(p, sheet, sides) + sheet.thickness) + p.gap;
  const [ends, tabs] = tabbed ? [sheet.thickness + p.gap + bend, leastFlange(sheet) + p.gap] : [0, 0];
  const root = bend + reliefReach(reliefOf(p, sheet));
  return [
    ...need(
      reaches(box.length, 2 * Math.max(root, corner, rims, ends, bulge('north', 'south')) + 1),
      ['length'],
      'the walls with their corners and rims take up more',
    ),
    ...need(
      reaches(box.width, 2 * Math.max(root, corner, rims, tabs, bulge('west', 'east')) + 1),
      ['width'],
      'the walls with their corners and rims take up more',
    ),
  ];
}

/** A wall stands clear of its bends and, on a tabbed box, leaves room for the tabs between base and rim. */
function wallHolds(p: OpenBoxParams, side: Side, sheet: Sheet): readonly Complaint[] {
  const own = (p.heights?.[side] ?? null) !== null;
  const first = SIDES.find((s) => (p.heights?.[s] ?? null) === null);
  const { height } = boxSizes(p, sheet).wall(side);
  const bend = setback(sheet);
  // reliefs bite from the bend, and where the wall carries tabs and a fold from its rim too
  const ends =
    p.corner === 'tabbed' && (p.flangeReturn !== null || boxSizes(p, sheet).wall(side).hem !== null);
  const bites = (ends ? 2 : 1) * reliefReach(reliefOf(p, sheet));
  const least = bend + Math.max(LEAST_LEG, bites) + (p.flangeReturn === null ? 0 : bend);
  const tabbed = p.corner === 'tabbed' && !reaches(height - rimDepth(p, side, sheet), tabRoom(p, sheet));
  if (!own && side !== first && reaches(height, least) && !tabbed) return [];
  const path = own ? ['heights', side] : ['height'];
  if (!reaches(height, least))
    return !own && side !== first ? [] : [{ path, why: 'a wall has to stand clear of its bends' }];
  const words = 'between base and rim nothing is left for the corner tabs';
  return tabbed ? [{ path, why: words }] : [];
}

/** What is taken out at the root of the corners. */
export function reliefOf({ relief }: OpenBoxParams, { thickness, insideRadius }: Sheet): Relief | null {
  if (relief === 'hole') return reliefHole(thickness, insideRadius);
  return relief === 'slot' ? reliefSlot(thickness) : null;
}

/** What the corner tabs need of a wall between base and rim, mm. */
const tabRoom = ({ gap }: OpenBoxParams, sheet: Sheet) => Math.max(setback(sheet), gap) + gap + LEAST_LEG;

/** Every hem has room on its wall or return: first the walls that are too low for any, then the hems too long. */
function hemsFit(p: OpenBoxParams, sheet: Sheet): readonly Complaint[] {
  const box = boxSizes(p, sheet);
  const found = SIDES.flatMap((side) => {
    const { hem } = box.wall(side);
    return hem === null
      ? []
      : hemFits(p.hems === null ? ['hem'] : ['hems', side], hem, sheet, hemWall(p, side, sheet));
  });
  const key = ({ path }: Complaint) => path.join('.');
  const once = found.filter((c, i) => found.findIndex((d) => key(d) === key(c)) === i);
  const low = once.filter((c) => c.path.at(-1) !== 'length');
  return low.length > 0 ? low : once;
}

function hemWall(p: OpenBoxParams, side: Side, sheet: Sheet): HemWall {
  const bend = setback(sheet);
  if (p.flangeReturn !== null)
    return { height: p.flangeReturn, bend, name: 'return', path: ['flangeReturn'] };
  const path = (p.heights?.[side] ?? null) === null ? ['height'] : ['heights', side];
  return { height: boxSizes(p, sheet).wall(side).height, bend, name: 'wall', path };
}

function returnsFit(p: OpenBoxParams, depth: number, sheet: Sheet): readonly Complaint[] {
  const box = boxSizes(p, sheet);
  const room = Math.min(box.length, box.width) / 2 - p.gap - foldRadius(p, sheet, SIDES) - 0.5;
  return [
    ...need(
      reaches(depth, setback(sheet) + LEAST_LEG),
      ['flangeReturn'],
      'a return has to reach past its own bend',
    ),
    ...need(reaches(room, depth), ['flangeReturn'], 'returns from both sides would meet'),
  ];
}

/** Greatest inside radius of these walls' hems, mm. */
function foldRadius(p: OpenBoxParams, sheet: Sheet, sides: readonly Side[]): number {
  const radii = sides
    .map((s) => boxSizes(p, sheet).wall(s).hem)
    .map((h) => (h === null ? 0 : hemFold(h, sheet.thickness).insideRadius));
  return Math.max(...radii);
}

function tabsFit(p: OpenBoxParams, sheet: Sheet): readonly Complaint[] {
  const { width } = boxSizes(p, sheet);
  return [
    ...need(
      reaches(p.tabs.length, leastFlange(sheet)),
      ['tabs', 'length'],
      'a tab has to reach past its own bend',
    ),
    ...need(
      reaches(width / 2 - p.gap, p.tabs.length),
      ['tabs', 'length'],
      (say) => `tabs from both sides would meet across a width of ${say.size(width)}`,
    ),
  ];
}

export function derived(p: OpenBoxParams, sheet: Sheet): readonly DerivedSize[] {
  const box = boxSizes(p, sheet);
  const t = sheet.thickness;
  const { height } = box.wall('north');
  const follows = (p.heights?.north ?? null) === null ? 'height' : 'heights.north';
  return [
    derivedSize(
      'insideLength',
      box.length - 2 * t,
      'length',
      'between the inside faces of the west and east walls',
    ),
    derivedSize(
      'insideWidth',
      box.width - 2 * t,
      'width',
      'between the inside faces of the south and north walls',
    ),
    derivedSize(
      'insideHeight',
      height - t,
      follows,
      'from the inside of the base to the rim of the north wall',
    ),
    derivedSize('outsideLength', box.length, 'length', 'over the west and east walls'),
    derivedSize('outsideWidth', box.width, 'width', 'over the south and north walls'),
    derivedSize('rimHeight', height, follows, 'from the outside of the base to the rim of the north wall'),
  ];
}
