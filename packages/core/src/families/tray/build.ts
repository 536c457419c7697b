import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, flange, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { outsideWalls } from '../upright-box.js';
import { askedTabs, baseAndWalls, closedCorners, SIDES, type Side, spanOf } from '../walls.js';
import { describe } from './describe.js';
import { check, derived, rimDepth, type TrayParams, values } from './params.js';

function build(p: TrayParams, sheet: Sheet): readonly Step[] {
  const walls = outsideWalls(p, sheet);
  const wall = ['base', 'north', 'return-north'];
  return [
    ...baseAndWalls(walls, p, sheet),
    ...SIDES.flatMap((side) => rim(p, side)),
    ...closedCorners(walls, p, sheet, { rimDepth: () => rimDepth(p, sheet) }),
    ...SIDES.flatMap((side) => stackCorner(p, side, sheet)),
    asked('length', walls.length, 'x', { panels: ['base', 'east', 'west'] }),
    asked('width', walls.width, 'y', { panels: ['base', 'north', 'south'] }),
    asked('height', walls.height('north'), 'z', { panels: wall }),
    asked('rim.return', p.rim.return, 'y', { panels: ['north', 'return-north', 'lip-north'] }),
    ...(p.rim.lip === null
      ? []
      : [asked('rim.lip', p.rim.lip, 'z', { panels: ['return-north', 'lip-north'] })]),
    ...askedTabs(p),
  ];
}

/** The return on a wall, and the lip on its edge. */
function rim({ rim: { return: width, lip } }: TrayParams, side: Side): readonly Step[] {
  const fold = flange(`return-${side}`, [side, 'far'], { height: width, by: ['rim', 'return'] });
  return lip === null
    ? [fold]
    : [fold, flange(`lip-${side}`, [`return-${side}`, 'far'], { height: lip, by: ['rim', 'lip'] })];
}

/** Where an angle goes round the outside of the corner after a wall, clockwise: over the rim by the rise. */
function stackCorner({ stack, ...p }: TrayParams, side: Side, sheet: Sheet): readonly Step[] {
  if (stack === null) return [];
  const walls = outsideWalls(p, sheet);
  const next = { north: 'east', east: 'south', south: 'west', west: 'north' } as const;
  const faces = [side, next[side]].map((panel) => ({ panel, face: 'unmarked' as const }));
  const middle = (walls.height(side) + 2 * stack.rise + stack.play) / 2;
  return [
    site(`corner-${side}-${next[side]}`, faces, {
      panel: side,
      at: [spanOf(walls, side), middle],
      up: [0, 1],
    }),
  ];
}

/**
 * Tray with a returned rim. A base and four walls, their rims folded inwards, with a lip down from there if wanted;
 * sites at its corners take angles to stack by. x runs along the length. Outside sizes unless a parameter says
 * otherwise.
 */
export const tray: NamedFamily<'tray', typeof values> = defineFamily({
  name: 'tray',
  values,
  check,
  build,
  derived,
  describe,
});
