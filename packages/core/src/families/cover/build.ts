import { lap } from '../../fold/corners/lap.js';
import { square } from '../../fold/corners/square.js';
import { rectangle } from '../../fold/draft/outline.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, corners, flange, hole, panel, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { ENDS, SIDES, spanOf } from '../walls.js';
import { describe } from './describe.js';
import {
  type CoverParams,
  check,
  coverWalls,
  derived,
  fieldRound,
  overlapOf,
  tabHoles,
  tabLeg,
  values,
  ventRoom,
} from './params.js';

function build(p: CoverParams, sheet: Sheet): readonly Step[] {
  const walls = coverWalls(p, sheet);
  return [
    panel('plate', rectangle(walls.length, walls.width), [['length'], ['width']]),
    ...SIDES.map((side) => flange(side, ['plate', side], { height: p.height, by: ['height'] })),
    ...tabs(p, sheet),
    corners(['plate'], p.corner === 'lap' ? lap(['north', 'south'], p.gap) : square(p.gap)),
    ...vents(p, sheet),
    ...sites(p, sheet),
    asked('length + 2 clearance', p.length + 2 * p.clearance, 'x', { between: ['west', 'east'] }),
    asked('width + 2 clearance', p.width + 2 * p.clearance, 'y', { between: ['south', 'north'] }),
    asked('height', p.height, 'z'),
  ];
}

/** Screw tabs outwards, with their holes, and what they lie on. */
function tabs(p: CoverParams, sheet: Sheet): readonly Step[] {
  const { tabs: given } = p;
  if (given === null) return [];
  const { along, across } = tabHoles(p, given, sheet);
  const { length, width } = coverWalls(p, sheet);
  const size = ['tabs', 'diameter'];
  const side = given.edge === null ? size : ['tabs', 'edge'];
  const over = { panels: ['tab-west', 'tab-east'] };
  return [
    ...ENDS.flatMap((end) => [
      flange(`tab-${end}`, [end, 'far'], {
        height: tabLeg(given, sheet),
        angle: -90,
        by: ['tabs', 'length'],
      }),
      ...along.map((x) =>
        hole(`tab-${end}`, {
          at: [x, across],
          diameter: given.diameter,
          by: { at: [side, size], diameter: size },
        }),
      ),
      site(`tab-${end}`, [{ panel: `tab-${end}`, face: 'marked' }], {
        panel: `tab-${end}`,
        at: [width / 2, across],
        up: [0, 1],
      }),
    ]),
    asked('outsideLength + 2 tabs.length', length + 2 * given.length, 'x', over),
  ];
}

function vents(p: CoverParams, sheet: Sheet): readonly Step[] {
  const { vents: given } = p;
  if (given === null) return [];
  const by = { at: [[], []], diameter: ['vents', 'diameter'] } as const;
  return given.on.flatMap((on) =>
    fieldRound(ventRoom(p, on, sheet).middle, given).map((at) =>
      hole(on === 'top' ? 'plate' : on, { at, diameter: given.diameter, by }),
    ),
  );
}

/** Insides of the sides, met by the outsides of the base's walls at their rims, the play off; the cover hangs, so up is back to it. */
function sites(p: CoverParams, sheet: Sheet): readonly Step[] {
  const walls = coverWalls(p, sheet);
  const middle = { panel: 'plate', at: [walls.length / 2, walls.width / 2], up: [0, 1] } as const;
  return [
    ...SIDES.map((side) =>
      site(side, [{ panel: side, face: 'marked' }], {
        panel: side,
        at: [spanOf(walls, side) / 2, p.height - overlapOf(p)],
        up: [0, -1],
        lift: p.clearance,
      }),
    ),
    site('top', [{ panel: 'plate', face: 'unmarked' }], middle),
    // over the floor of a base of the same sheet: the edges of the sides lie in the plane of its underside
    site(
      'base',
      SIDES.map((side) => ({ panel: side, face: 'marked' as const })),
      { ...middle, looks: 'marked', lift: p.height - 2 * sheet.thickness },
    ),
  ];
}

/**
 * Cover with vents. A plate with sides that go over the walls of a base, fields of holes for air, and tabs to screw it
 * on by if wanted. Drawn upside down: the sides stand up from the plate. x runs along the length. Outside sizes but
 * for length and width, which are the base's.
 */
export const cover: NamedFamily<'cover', typeof values> = defineFamily({
  name: 'cover',
  values,
  check,
  build,
  derived,
  describe,
});
