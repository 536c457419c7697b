import { square } from '../../fold/corners/square.js';
import { rectangle } from '../../fold/draft/outline.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, corners, flange, hem, panel, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { ENDS, LONG_SIDES } from '../walls.js';
import { describe } from './describe.js';
import { derived, type HandleParams, values } from './params.js';

function build(p: HandleParams, sheet: Sheet): readonly Step[] {
  return [
    panel('base', rectangle(p.span, p.width), [['span'], ['width']]),
    ...LONG_SIDES.map((side) => flange(side, ['base', side], { height: p.sideDepth, by: ['sideDepth'] })),
    ...LONG_SIDES.flatMap((side) =>
      p.hem === null ? [] : [hem(`hem-${side}`, [side, 'far'], { ...p.hem, by: ['hem', 'length'] })],
    ),
    ...ENDS.map((end) =>
      flange(`tab-${end}`, ['base', end], { height: p.tabs.length, angle: -90, by: ['tabs', 'length'] }),
    ),
    corners(['base'], square(p.tabs.gap)),
    // the outside of a tab folded down is its marked face; it hangs, so upright is back towards its bend
    ...ENDS.map((end) =>
      site(end, [{ panel: `tab-${end}`, face: 'marked' }], {
        panel: `tab-${end}`,
        at: [p.width / 2, 0],
        up: [0, -1],
      }),
    ),
    // its inside goes over the outside of an end
    ...ENDS.map((end) =>
      site(`${end}-in`, [{ panel: `tab-${end}`, face: 'unmarked' }], {
        panel: `tab-${end}`,
        at: [p.width / 2, 0],
        up: [0, -1],
      }),
    ),
    ...feet(p, sheet),
    asked('span', p.span, 'x', { panels: ['base', 'tab-west', 'tab-east'], bends: ['tab-west', 'tab-east'] }),
    asked('width', p.width, 'y'),
    asked('sideDepth', p.sideDepth, 'z', { panels: ['base', 'north', 'hem-north'] }),
    asked('tabs.length', p.tabs.length, 'z', { panels: ['base', 'tab-west', 'foot-west'] }),
    ...(p.hem === null ? [] : [asked('hem.length', p.hem.length, 'z', { panels: ['hem-north'] })]),
  ];
}

/** Feet, and their undersides, told from the middle between them. */
function feet({ feet: given, span, width, tabs }: HandleParams, { thickness }: Sheet): readonly Step[] {
  if (given === null) return [];
  const faces = ENDS.map((end) => ({ panel: `foot-${end}`, face: 'unmarked' as const }));
  return [
    ...ENDS.map((end) =>
      flange(`foot-${end}`, [`tab-${end}`, 'far'], {
        height: given.length + thickness,
        by: ['feet', 'length'],
      }),
    ),
    site('feet', faces, {
      panel: 'base',
      at: [span / 2, width / 2],
      up: [0, 1],
      lift: tabs.length - thickness,
    }),
    asked('span + 2 feet.length', span + 2 * given.length, 'x', { panels: ['foot-west', 'foot-east'] }),
  ];
}

/**
 * Handle. A strip with hemmed sides folded up and a tab folded down at each end, to be fixed to the crowns of two
 * ends. x runs along the span. Outside sizes unless a parameter says otherwise.
 */
export const handle: NamedFamily<'handle', typeof values> = defineFamily({
  name: 'handle',
  values,
  build,
  derived,
  describe,
});
