import { lap } from '../../fold/corners/lap.js';
import { mitre } from '../../fold/corners/mitre.js';
import { square } from '../../fold/corners/square.js';
import { rectangle } from '../../fold/draft/outline.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, corners, flange, hem, panel, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { SIDES } from '../walls.js';
import { describe } from './describe.js';
import { derived, type LidParams, ledgeLeg, lidSizes, play, values } from './params.js';

function build(p: LidParams, sheet: Sheet): readonly Step[] {
  const { length, width } = lidSizes(p, sheet);
  const middle = { panel: 'plate', at: [length / 2, width / 2], up: [0, 1] } as const;
  const over = p.fit === 'over';
  return [
    panel('plate', rectangle(length, width), [['length'], ['width']]),
    ...(over ? covering(p, sheet) : dropping(p, sheet)),
    // it lies on the rim with the inside of its plate, or with its ledge
    site(
      'skirt',
      SIDES.map((side) => ({ panel: side, face: over ? 'marked' : 'unmarked' })),
      { ...middle, looks: 'marked', lift: over ? 0 : sheet.thickness },
    ),
    site('top', [{ panel: 'plate', face: 'unmarked' }], middle),
    asked('depth', p.depth, 'z'),
  ];
}

/** Skirts on the edges of the plate. */
function covering(p: LidParams, sheet: Sheet): readonly Step[] {
  const { skirt } = lidSizes(p, sheet);
  const twice = 2 * play(p, sheet);
  return [
    ...SIDES.map((side) => flange(side, ['plate', side], { height: skirt, by: ['depth'] })),
    ...SIDES.flatMap((side) =>
      p.hem === null ? [] : [hem(`hem-${side}`, [side, 'far'], { ...p.hem, by: ['hem', 'length'] })],
    ),
    corners(['plate'], p.corner === 'lap' ? lap(['north', 'south'], p.gap) : square(p.gap)),
    asked('length + 2 clearance', p.length + twice, 'x', { between: ['west', 'east'] }),
    asked('width + 2 clearance', p.width + twice, 'y', { between: ['south', 'north'] }),
  ];
}

/** The plate's edges folded under, and skirts turned down from the folds. */
function dropping(p: LidParams, sheet: Sheet): readonly Step[] {
  const { skirt } = lidSizes(p, sheet);
  const twice = 2 * play(p, sheet);
  const fold = { type: 'closed', length: ledgeLeg(p, sheet), by: ['ledge'] } as const;
  const skirts = { panels: [...SIDES], bends: [] };
  return [
    ...SIDES.map((side) => hem(`ledge-${side}`, ['plate', side], fold)),
    ...SIDES.map((side) =>
      flange(side, [`ledge-${side}`, 'far'], { height: skirt, angle: -90, by: ['depth'] }),
    ),
    ...SIDES.flatMap((side) =>
      p.hem === null ? [] : [hem(`hem-${side}`, [side, 'far'], { ...p.hem, by: ['hem', 'length'] })],
    ),
    corners(['plate'], mitre(p.gap)),
    asked('length - 2 clearance', p.length - twice, 'x', skirts),
    asked('width - 2 clearance', p.width - twice, 'y', skirts),
  ];
}

/**
 * Lid with a skirt. A plate with a skirt that goes over a box, or drops into it and hangs by a ledge. Drawn upside
 * down: the skirt stands up from the plate. x runs along the length. Outside sizes unless a parameter says
 * otherwise.
 */
export const lid: NamedFamily<'lid', typeof values> = defineFamily({
  name: 'lid',
  values,
  build,
  derived,
  describe,
});
