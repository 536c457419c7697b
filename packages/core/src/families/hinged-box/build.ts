import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, hem, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { outsideWalls } from '../upright-box.js';
import { askedTabs, baseAndWalls, closedCorners, ENDS, SIDES } from '../walls.js';
import { describe } from './describe.js';
import { check, derived, type HingedBoxParams, rimDepth, values } from './params.js';

function build(p: HingedBoxParams, sheet: Sheet): readonly Step[] {
  const walls = outsideWalls(p, sheet);
  const wall = { panels: ['base', 'north', 'hem-north'] };
  return [
    ...baseAndWalls(walls, p, sheet),
    ...SIDES.flatMap((side) =>
      p.hem === null ? [] : [hem(`hem-${side}`, [side, 'far'], { ...p.hem, by: ['hem', 'length'] })],
    ),
    ...closedCorners(walls, p, sheet, { rimDepth: () => rimDepth(p) }),
    ...ledges(p, sheet),
    asked('length', walls.length, 'x', { panels: ['base', 'east', 'west'] }),
    asked('width', walls.width, 'y', { panels: ['base', 'north', 'south'] }),
    asked('height', walls.height('north'), 'z', wall),
    ...(p.hem === null ? [] : [asked('hem.length', p.hem.length, 'z', { panels: ['hem-north'] })]),
    ...askedTabs(p),
  ];
}

/** Where angles are fastened, their legs up the walls, and where the tray stands on them. */
function ledges({ ledge, ...p }: HingedBoxParams, sheet: Sheet): readonly Step[] {
  if (ledge === null) return [];
  const { length, width } = outsideWalls(p, sheet);
  const up = ledge.height - sheet.thickness + ledge.leg / 2;
  return [
    ...ENDS.map((end) =>
      site(`ledge-${end}`, [{ panel: end, face: 'marked' }], { panel: end, at: [width / 2, up], up: [0, 1] }),
    ),
    site('ledge', [], {
      panel: 'base',
      at: [length / 2, width / 2],
      up: [0, 1],
      lift: ledge.height - sheet.thickness,
    }),
  ];
}

/**
 * Half of a hinged box. A base and four walls, their rims hemmed if wanted; a body and a lid meet rim on
 * rim, and bought hinges and a hasp make their holes in both. x runs along the length, the hinge is in the north. Outside sizes unless a parameter
 * says otherwise.
 */
export const hingedBox: NamedFamily<'hinged-box', typeof values> = defineFamily({
  name: 'hinged-box',
  values,
  check,
  build,
  derived,
  describe,
});
