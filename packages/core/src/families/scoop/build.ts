import type { CornerStyle } from '../../fold/draft/corner-style.js';
import { polygon } from '../../fold/draft/outline.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, corners, flange, hem, panel, site, wired } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { describe } from './describe.js';
import {
  backWidth,
  check,
  derived,
  type ScoopParams,
  type ScoopSide,
  scoopSide,
  tabAngle,
  tabRoom,
  values,
} from './params.js';

function build(p: ScoopParams, sheet: Sheet): readonly Step[] {
  const { length, width, height, flare } = p;
  const side = scoopSide(p);
  const wide = width + 2 * flare;
  const bottom = polygon(
    [
      [0, flare],
      [length, 0],
      [length, wide],
      [0, width + flare],
    ],
    ['south', 'lip', 'north', 'back'],
  );
  const short = (width - backWidth(p, sheet)) / 2;
  return [
    panel('bottom', bottom, [['length'], ['width']]),
    flange('back', ['bottom', 'back'], { height, inset: [short, short], by: ['height'] }),
    // along a side x runs from the lip in the south, from the back in the north
    flange('south', ['bottom', 'south'], {
      height,
      far: [
        [side.slope, height],
        [side.length, height],
      ],
      by: ['height'],
    }),
    flange('north', ['bottom', 'north'], {
      height,
      far: [
        [0, height],
        [side.length - side.slope, height],
      ],
      by: ['height'],
    }),
    ...lip(p),
    ...tabs(p, side),
    corners(['bottom', 'back'], cornerStyle(p, side, sheet)),
    ...sites(p, side, sheet),
    asked('length', length, 'x', {
      panels: ['bottom', 'back'],
      bends: p.lip.type === 'plain' ? ['back'] : ['back', 'lip'],
    }),
    asked('backWidth', backWidth(p, sheet), 'y', { moulds: ['tab-south', 'tab-north'] }),
    asked('height', height, 'z', { panels: ['bottom', 'back'] }),
  ];
}

/** Under the front edge of the bottom. */
function lip({ lip: edge }: ScoopParams): readonly Step[] {
  if (edge.type === 'plain') return [];
  return edge.type === 'hem'
    ? [hem('lip', ['bottom', 'lip'], { type: 'closed', length: edge.length, by: ['lip', 'length'] }, 'down')]
    : [wired('lip', ['bottom', 'lip'], { diameter: edge.diameter, allowance: null })];
}

/** Tabs at both ends of the back; a tab's x runs up it in the south, down in the north. */
function tabs(p: ScoopParams, side: ScoopSide): readonly Step[] {
  const spec = { height: p.tabs.length, angle: tabAngle(side), by: ['tabs', 'length'] };
  return [flange('tab-south', ['back', 'south'], spec), flange('tab-north', ['back', 'north'], spec)];
}

/** Walls end square at their neighbours' bends; tabs start above the bottom, cut along the side they lie beside. */
function cornerStyle(p: ScoopParams, side: ScoopSide, sheet: Sheet): CornerStyle {
  const { low, off, beside } = tabRoom(p, side, sheet);
  const cuts: CornerStyle['cuts'] = ({ edge, start }) =>
    edge === null
      ? [
          { t: Math.sin(beside), d: -Math.cos(beside), c: off },
          { t: 1, d: 0, c: Math.max(start, low) },
        ]
      : [{ t: 1, d: 0, c: start }];
  return { name: 'folded', gap: p.gap, meet: 'none', root: 'straight', relief: null, cuts };
}

/** Outside of back and sides, for handles; the back's tabs and the sides they lie in, for a joint of the scoop with itself; the bottom from both sides. */
function sites(p: ScoopParams, side: ScoopSide, sheet: Sheet): readonly Step[] {
  const middle = { panel: 'bottom', at: [p.length / 2, p.width / 2 + p.flare], up: [0, 1] } as const;
  const out = (id: string, long: number) =>
    site(`${id}-out`, [{ panel: id, face: 'unmarked' as const }], {
      panel: id,
      at: [long / 2, (sheet.thickness + p.height) / 2],
      up: [0, 1],
    });
  return [
    out('back', p.width),
    out('north', side.length),
    out('south', side.length),
    site(
      'back-tabs',
      ['south', 'north'].map((end) => ({ panel: `tab-${end}`, face: 'unmarked' })),
      { panel: 'tab-south', at: [0, 0], up: [1, 0] },
    ),
    site(
      'sides',
      ['south', 'north'].map((panel) => ({ panel, face: 'marked' })),
      { panel: 'south', at: [0, 0], up: [0, 1] },
    ),
    site('floor', [{ panel: 'bottom', face: 'marked' }], middle),
    site('underside', [{ panel: 'bottom', face: 'unmarked' }], middle),
  ];
}

/**
 * Scoop. A bottom that widens towards its lip, two sides that slope down to it, and a back with tabs inside the sides;
 * the lip plain, hemmed or rolled round a wire. x runs from the back to the lip. Outside sizes.
 */
export const scoop: NamedFamily<'scoop', typeof values> = defineFamily({
  name: 'scoop',
  values,
  check,
  build,
  derived,
  describe,
});
