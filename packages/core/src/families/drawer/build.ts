import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, flange, hem, hole, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { setback } from '../limits.js';
import { askedTabs, baseAndWalls, closedCorners, ENDS, SIDES, type Side } from '../walls.js';
import { describe } from './describe.js';
import { check, type DrawerParams, derived, drawerWalls, hemmed, runnerLeg, values } from './params.js';

function build(p: DrawerParams, sheet: Sheet): readonly Step[] {
  const walls = drawerWalls(p);
  // tabs stop below the bends of runners
  const rimDepth = () => (p.runners === null ? 0 : setback(sheet));
  return [
    ...baseAndWalls(walls, p, sheet, {
      length: ['width'],
      width: ['depth'],
      height: (side) => (side === 'south' && p.front !== null ? ['front'] : ['height']),
    }),
    ...SIDES.flatMap((side) => rimHem(p, side)),
    ...runners(p, sheet),
    ...pull(p, sheet),
    ...closedCorners(walls, p, sheet, { rimDepth }),
    asked('width', p.width, 'x', { panels: ['base', 'east', 'west'], bends: ['east', 'west'] }),
    asked('depth', p.depth, 'y', { panels: ['base', 'north', 'south'], bends: ['north', 'south'] }),
    asked('height', p.height, 'z', { panels: ['base', 'west', 'runner-west'] }),
    ...(p.front === null
      ? []
      : [asked('front', p.front, 'z', { panels: ['base', 'south', 'hem-south', 'pull'] })]),
    ...askedTabs(p),
  ];
}

function rimHem(p: DrawerParams, side: Side): readonly Step[] {
  return p.hem !== null && hemmed(p, side)
    ? [hem(`hem-${side}`, [side, 'far'], { ...p.hem, by: ['hem', 'length'] })]
    : [];
}

/** Flanges on the sides, outwards, and their undersides to lie on what carries the drawer. */
function runners({ runners: given, width, depth }: DrawerParams, sheet: Sheet): readonly Step[] {
  if (given === null) return [];
  const leg = runnerLeg(given.over, width, sheet);
  return [
    ...ENDS.flatMap((end) => [
      flange(`runner-${end}`, [end, 'far'], { height: leg, angle: -90, by: ['runners', 'over'] }),
      site(`runner-${end}`, [{ panel: `runner-${end}`, face: 'unmarked' }], {
        panel: `runner-${end}`,
        at: [depth / 2, leg],
        up: [0, -1],
      }),
    ]),
    asked('runners.over', given.over, 'x', { panels: ['runner-west', 'runner-east'] }),
  ];
}

/** A lip turned out and down at the rim of the front, or two holes. The front's x runs from east to west. */
function pull(p: DrawerParams, { thickness }: Sheet): readonly Step[] {
  const { pull: given } = p;
  if (given.type === 'none') return [];
  if (given.type === 'holes') {
    const y = drawerWalls(p).height('south') - given.below;
    return [-1, 1].map((s) =>
      hole('south', {
        at: [(p.width + s * given.spacing) / 2, y],
        diameter: given.diameter,
        by: {
          at: [
            ['pull', 'spacing'],
            ['pull', 'below'],
          ],
          diameter: ['pull', 'diameter'],
        },
      }),
    );
  }
  return [
    flange('pull', ['south', 'far'], { height: given.depth + thickness, angle: -90, by: ['pull', 'depth'] }),
    flange('pull-lip', ['pull', 'far'], { height: given.drop, angle: -90, by: ['pull', 'drop'] }),
    asked('depth + pull.depth', p.depth + given.depth, 'y', {
      panels: ['base', 'north', 'pull', 'pull-lip'],
      bends: ['north', 'pull-lip'],
    }),
    asked('pull.drop', given.drop, 'z', { panels: ['pull', 'pull-lip'], bends: ['pull-lip'] }),
  ];
}

/**
 * Drawer with runners and a pull. A base and four walls, the front higher if wanted; flanges at the rims of the sides
 * slide on what carries it, a lip or a handle opens it. The front is at y = 0, x runs along it. Outside sizes.
 */
export const drawer: NamedFamily<'drawer', typeof values> = defineFamily({
  name: 'drawer',
  values,
  check,
  build,
  derived,
  describe,
});
