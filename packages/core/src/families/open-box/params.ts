import { type HemSpec, hemFold } from '../../bending/hem.js';
import { reliefHole, reliefSlot } from '../../fold/corners/relief.js';
import type { Relief } from '../../fold/draft/corner-style.js';
import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { cornerGap, tabGroup } from '../corner-values.js';
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
import { SIDES, type Side } from '../walls.js';

/** A box open at the top. mm */
export const values = {
  length: boxLength,
  width: boxWidth,
  height: v.size('height of all walls, over what is folded at the rim'),
  heights: v.maybe(
    v.group('walls that differ: north, south, east, west', {
      north: v.maybe(v.size('height of the north wall')),
      south: v.maybe(v.size('height of the south wall')),
      east: v.maybe(v.size('height of the east wall')),
      west: v.maybe(v.size('height of the west wall')),
    }),
  ),
  dimensions: boxMeant('length, width and heights'),
  corner: v.or(
    v.word(
      'open (square notch), lap (north and south walls cover the ends of the others), tabbed (tabs behind the west and east walls)',
      ['open', 'lap', 'tabbed'],
    ),
    'open',
  ),
  tabs: tabGroup('a tabbed box', 15),
  hem: v.hem('hem on every rim, folded in: type, length, gap'),
  hems: v.maybe(
    v.group('a hem for each wall on its own; walls left out have none', {
      north: v.hem('of the north wall'),
      south: v.hem('of the south wall'),
      east: v.hem('of the east wall'),
      west: v.hem('of the west wall'),
    }),
  ),
  flangeReturn: v.maybe(v.size('flange folded in at the rim of every wall; hems then sit on its edge')),
  relief: v.or(v.word('none, hole or slot at the root of the corners', ['none', 'hole', 'slot']), 'none'),
  gap: cornerGap(),
};

export type OpenBoxParams = Given<typeof values>;

/** The box in outside sizes, every wall with its own height and hem. mm */
export interface BoxSizes {
  readonly length: number;
  readonly width: number;
  readonly wall: (side: Side) => { readonly height: number; readonly hem: HemSpec | null };
}

/** Inside sizes become outside ones here, once: two thicknesses across, one in height. */
export function boxSizes(p: OpenBoxParams, sheet: Sheet): BoxSizes {
  const { length, width } = outsideWalls(p, sheet);
  return {
    length,
    width,
    wall: (side) => ({
      height: outsideWalls({ ...p, height: p.heights?.[side] ?? p.height }, sheet).height(side),
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
  const { length, width } = boxSizes(p, sheet);
  const folded = Math.max(...SIDES.map((side) => hemRadius(p, side, sheet)));
  return [
    ...need(
      p.flangeReturn === null ||
        reaches(Math.min(length, width) / 2 - p.gap - folded - LEAST_METAL, p.flangeReturn),
      ['flangeReturn'],
      'returns from both sides would meet',
    ),
    ...tabsMeet(p, width),
  ];
}

/** Inside radius of a wall's hem, mm. */
function hemRadius(p: OpenBoxParams, side: Side, sheet: Sheet): number {
  const { hem } = boxSizes(p, sheet).wall(side);
  return hem === null ? 0 : hemFold(hem, sheet.thickness).insideRadius;
}

/** What is taken out at the root of the corners. */
export function reliefOf({ relief }: OpenBoxParams, { thickness, insideRadius }: Sheet): Relief | null {
  if (relief === 'hole') return reliefHole(thickness, insideRadius);
  return relief === 'slot' ? reliefSlot(thickness) : null;
}

export function derived(p: OpenBoxParams, sheet: Sheet): readonly DerivedSize[] {
  const box = boxSizes(p, sheet);
  const t = sheet.thickness;
  const { height } = box.wall('north');
  const follows = (p.heights?.north ?? null) === null ? 'height' : 'heights.north';
  return [
    ...lengthsInside(box, t),
    derivedSize(
      'insideHeight',
      height - t,
      follows,
      'from the inside of the base to the rim of the north wall',
    ),
    ...lengthsOutside(box),
    derivedSize('rimHeight', height, follows, 'from the outside of the base to the rim of the north wall'),
  ];
}
