import { square } from '../../fold/corners/square.js';
import { rectangle } from '../../fold/draft/outline.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, corners, flange, hem, hole, panel, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { ENDS, LONG_SIDES } from '../walls.js';
import { describe } from './describe.js';
import { check, derived, endHoles, foldOf, holeHeight, type ShelfParams, values } from './params.js';

// upside down, north is the front
const NAMES = { north: 'front', south: 'back' } as const;

function build(p: ShelfParams, sheet: Sheet): readonly Step[] {
  const { length, depth, edge, ends } = p;
  const fold = foldOf(p, sheet);
  const middle = { panel: 'top', at: [length / 2, depth / 2], up: [0, 1] } as const;
  return [
    panel('top', rectangle(length, depth), [['length'], ['depth']]),
    ...LONG_SIDES.map((side) =>
      flange(NAMES[side], ['top', side], { height: edge.height, by: ['edge', 'height'] }),
    ),
    ...LONG_SIDES.map((side) =>
      hem(`fold-${NAMES[side]}`, [NAMES[side], 'far'], {
        type: 'closed',
        length: fold,
        by: edge.fold === null ? ['edge', 'height'] : ['edge', 'fold'],
      }),
    ),
    ...endTabs(p, sheet),
    corners(['top'], square(p.gap)),
    site('top', [{ panel: 'top', face: 'unmarked' }], middle),
    // a bracket's leg is at the back
    site('underside', [{ panel: 'top', face: 'marked' }], { ...middle, up: [0, -1] }),
    ...LONG_SIDES.map((side) =>
      site(NAMES[side], [{ panel: NAMES[side], face: 'unmarked' }], {
        panel: NAMES[side],
        at: [length / 2, 0],
        up: [0, -1],
      }),
    ),
    asked('length', length, 'x', { panels: ['top', 'end-west', 'end-east'] }),
    asked('depth', depth, 'y', { panels: ['top', 'front', 'back'] }),
    asked('edge.height', edge.height, 'z', { panels: ['top', 'front', 'fold-front'] }),
    ...(edge.fold === null ? [] : [asked('edge.fold', edge.fold, 'z', { panels: ['fold-front'] })]),
    ...(ends === null ? [] : [asked('ends.length', ends.length, 'z', { panels: ['top', 'end-west'] })]),
  ];
}

/** Tabs with their holes, and their outsides to fasten by: the shelf hangs, so upright is back towards its top. */
function endTabs(p: ShelfParams, sheet: Sheet): readonly Step[] {
  const { ends } = p;
  if (ends === null) return [];
  const size = ['ends', 'holes', 'diameter'];
  return ENDS.flatMap((end) => [
    flange(`end-${end}`, ['top', end], { height: ends.length, by: ['ends', 'length'] }),
    ...endHoles(p, ends).map((x) =>
      hole(`end-${end}`, {
        at: [x, holeHeight(ends, sheet)],
        diameter: ends.holes?.diameter ?? 0,
        by: { at: [ends.holes?.edge == null ? size : ['ends', 'holes', 'edge'], size], diameter: size },
      }),
    ),
    site(end, [{ panel: `end-${end}`, face: 'unmarked' }], {
      panel: `end-${end}`,
      at: [p.depth / 2, 0],
      up: [0, -1],
    }),
  ]);
}

/**
 * Shelf with doubled edges. Its front and back edge are turned down and folded back on themselves, tabs at its ends
 * take screws. Drawn upside down: the edges stand up. x runs along the length, y from the back to the front. Outside
 * sizes.
 */
export const shelf: NamedFamily<'shelf', typeof values> = defineFamily({
  name: 'shelf',
  values,
  check,
  build,
  derived,
  describe,
});
