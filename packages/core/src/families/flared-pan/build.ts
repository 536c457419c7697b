import { mitre } from '../../fold/corners/mitre.js';
import type { CornerStyle } from '../../fold/draft/corner-style.js';
import { rectangle } from '../../fold/draft/outline.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, corners, flange, hem, panel, site, wired } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { ENDS, SIDES, type Side } from '../walls.js';
import { describe } from './describe.js';
import {
  check,
  derived,
  type FlaredPanParams,
  type PanWall,
  panWall,
  tabAngle,
  tabbedInset,
  tabRoom,
  tabSetback,
  values,
  wireDiameter,
} from './params.js';

/** The verbs of a pan with walls that lean out. */
export function panSteps(p: FlaredPanParams, sheet: Sheet): readonly Step[] {
  const { length, width } = p.bottom;
  const wall = panWall(p, sheet);
  const folded = p.corner === 'folded';
  const ends = (side: Side) => (tabbed(p, side) ? tabbedInset(p, wall, sheet) : 0);
  const middle = { panel: 'bottom', at: [length / 2, width / 2], up: [0, 1] } as const;
  return [
    panel('bottom', rectangle(length, width), [
      ['bottom', 'length'],
      ['bottom', 'width'],
    ]),
    ...SIDES.map((side) =>
      flange(side, ['bottom', side], {
        height: wall.leg,
        by: ['depth'],
        angle: wall.angle,
        spread: wall.spread,
        inset: [ends(side), ends(side)],
      }),
    ),
    ...SIDES.flatMap((side) => rim(p, wall, side, sheet)),
    ...(folded ? cornerTabs(p, wall, sheet) : []),
    corners(
      ['bottom', ...(folded ? ['north', 'south'] : [])],
      folded ? foldedCorner(p, wall, sheet) : mitre(p.gap),
    ),
    site('floor', [{ panel: 'bottom', face: 'marked' }], middle),
    site('underside', [{ panel: 'bottom', face: 'unmarked' }], middle),
    site('rim', [], { ...middle, lift: p.depth - sheet.thickness }),
    asked('bottom.length', length, 'x', { moulds: ['west', 'east'] }),
    asked('bottom.width', width, 'y', { moulds: ['south', 'north'] }),
    asked('depth', p.depth, 'z'),
  ];
}

function rim(p: FlaredPanParams, wall: PanWall, side: Side, sheet: Sheet): readonly Step[] {
  const { edge } = p;
  if (edge.type === 'plain') return [];
  const short = wall.rimInset + (tabbed(p, side) ? tabSetback(wall, sheet) : 0);
  const inset = [short, short] as const;
  if (edge.type === 'hem')
    return [
      hem(`hem-${side}`, [side, 'far'], {
        type: 'closed',
        length: edge.length,
        inset,
        by: ['edge', 'length'],
      }),
    ];
  const { allowance } = edge;
  return [wired(`roll-${side}`, [side, 'far'], { diameter: wireDiameter(edge), allowance, inset })];
}

/** True for the walls that carry the corner tabs. */
const tabbed = ({ corner }: FlaredPanParams, side: Side) =>
  corner === 'folded' && (side === 'north' || side === 'south');

/** Tabs at the ends of the north and south walls, inside the other two; they turn by the angle between the walls. */
function cornerTabs(p: FlaredPanParams, wall: PanWall, sheet: Sheet): readonly Step[] {
  const angle = tabAngle(wall);
  const { low, high } = tabRoom(p, wall, sheet);
  return (['north', 'south'] as const).flatMap((side) =>
    ENDS.map((end) => {
      // a tab's x runs up the wall where its corner at the bottom is the low end
      const up = (side === 'north') === (end === 'west');
      const inset = up ? ([low, high] as const) : ([high, low] as const);
      return flange(`tab-${side}-${end}`, [side, end], {
        height: p.tabs.length,
        angle,
        inset,
        by: ['tabs', 'length'],
      });
    }),
  );
}

/** Walls run out to the corner, and tabs are cut along the end of the neighbour they lie beside on the flat. */
function foldedCorner(p: FlaredPanParams, wall: PanWall, sheet: Sheet): CornerStyle {
  const room = tabRoom(p, wall, sheet);
  const along = { t: Math.sin(room.beside), d: -Math.cos(room.beside), c: room.off };
  const cuts: CornerStyle['cuts'] = ({ edge }) => (edge === null ? [along] : []);
  return { name: 'folded', gap: p.gap, meet: 'none', root: 'straight', relief: null, cuts };
}

/**
 * Pan with walls that lean out. A bottom and four walls that lean out alike, the rim plain, hemmed or rolled round a
 * wire; drip pans, scoops and trays that stack. x runs along the length. Outside sizes unless a parameter says
 * otherwise.
 */
export const flaredPan: NamedFamily<'flared-pan', typeof values> = defineFamily({
  name: 'flared-pan',
  values,
  check,
  build: panSteps,
  derived,
  describe,
});
