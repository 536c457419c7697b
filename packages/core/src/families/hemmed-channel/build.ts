import { reliefHole } from '../../fold/corners/relief.js';
import { slant } from '../../fold/corners/slant.js';
import { square } from '../../fold/corners/square.js';
import type { CornerStyle } from '../../fold/draft/corner-style.js';
import { rectangle } from '../../fold/draft/outline.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, corners, flange, hem, panel, type SeatSpec, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { ENDS, LONG_SIDES } from '../walls.js';
import { describe } from './describe.js';
import { check, derived, type EndTabs, type HemmedChannelParams, hemStart, values } from './params.js';

function build(p: HemmedChannelParams, sheet: Sheet): readonly Step[] {
  return [
    panel('base', rectangle(p.length, p.width), [['length'], ['width']]),
    ...LONG_SIDES.map((side) => flange(side, ['base', side], { height: p.height, by: ['height'] })),
    ...LONG_SIDES.flatMap((side) =>
      p.hem === null ? [] : [hem(`hem-${side}`, [side, 'far'], { ...p.hem, by: ['hem', 'length'] })],
    ),
    ...(p.endTabs === null
      ? ENDS.map((end) => openEnd(p, end, sheet))
      : [...endTabs(p.endTabs, sheet), ...ENDS.map((end) => endSite(p, p.endTabs as EndTabs, end, sheet))]),
    site('floor', [{ panel: 'base', face: 'marked' }], {
      panel: 'base',
      at: [p.length / 2, p.width / 2],
      up: [0, 1],
    }),
    site('underside', [{ panel: 'base', face: 'unmarked' }], {
      panel: 'base',
      at: [p.length / 2, p.width / 2],
      up: [0, 1],
    }),
    asked('length', p.length, 'x'),
    asked('width', p.width, 'y', { panels: ['base', ...LONG_SIDES] }),
    asked('height', p.height, 'z', { panels: ['base', 'north', 'hem-north'] }),
    ...(p.hem === null ? [] : [asked('hem.length', p.hem.length, 'z', { panels: ['hem-north'] })]),
  ];
}

function endTabs(tabs: EndTabs, sheet: Sheet): readonly Step[] {
  const spec = { height: tabs.length, by: ['endTabs', 'length'] };
  const on = (site: (typeof tabs.on)[number]) => tabs.on.includes(site);
  return [
    ...ENDS.flatMap((end) => (on('base') ? [flange(`tab-${end}`, ['base', end], spec)] : [])),
    ...LONG_SIDES.filter(on).flatMap((side) =>
      ENDS.map((end) => flange(`tab-${side}-${end}`, [side, end], spec)),
    ),
    corners(['base', ...LONG_SIDES], notch(tabs, sheet)),
    ...(on('base') ? [asked('endTabs.length', tabs.length, 'z', { panels: ['base', 'tab-west'] })] : []),
  ];
}

/** The ring of tabs at an end, seen from inside; a part stands there on the base, in the middle. */
function endSite(p: HemmedChannelParams, { on }: EndTabs, end: 'west' | 'east', { thickness }: Sheet): Step {
  const sides = LONG_SIDES.filter((side) => on.includes(side));
  const ids = [...(on.includes('base') ? [`tab-${end}`] : []), ...sides.map((side) => `tab-${side}-${end}`)];
  const faces = ids.map((panel) => ({ panel, face: 'marked' as const }));
  return site(end, faces, seatOn(ids[0] as string, p, end, thickness), p.width - 2 * thickness);
}

/** An end without tabs: what closes it stands on the base and lies against the insides, flush with the end. */
function openEnd(p: HemmedChannelParams, end: 'west' | 'east', { thickness }: Sheet): Step {
  const faces = ['base', ...LONG_SIDES].map((id) => ({ panel: id, face: 'marked' as const }));
  const out = end === 'west' ? -1 : 1;
  const at = [end === 'west' ? 0 : p.length, p.width / 2] as const;
  return site(end, faces, { panel: 'base', at, up: [out, 0] }, p.width - 2 * thickness);
}

/** Middle of the end, on the inside of the base, in the frame of the tab it is told on. */
function seatOn(
  tab: string,
  { width, height }: HemmedChannelParams,
  end: 'west' | 'east',
  thickness: number,
): SeatSpec {
  const middle = width / 2;
  if (tab === `tab-${end}`) return { panel: tab, at: [middle, thickness], up: [0, 1] };
  // a tab on a side runs up it where the base lies at the low end of its x: north's west end and south's east end
  const up = tab.startsWith('tab-north') === (end === 'west');
  return up
    ? { panel: tab, at: [thickness, middle], up: [1, 0] }
    : { panel: tab, at: [height - thickness, middle], up: [-1, 0] };
}

function notch(tabs: EndTabs, { thickness, insideRadius }: Sheet): CornerStyle {
  const relief = tabs.notch === 'relief' ? reliefHole(thickness, insideRadius) : null;
  if (tabs.notch === 'square') return square(tabs.gap);
  return slant(tabs.gap, hemStart(tabs, thickness), relief);
}

/**
 * Channel with hemmed sides. The body of a carrier or a tray: a base, two sides with hemmed rims, and a ring of tabs
 * at each end for an end to stand against. x runs along the length. Outside sizes unless a parameter says otherwise.
 */
export const hemmedChannel: NamedFamily<'hemmed-channel', typeof values> = defineFamily({
  name: 'hemmed-channel',
  values,
  check,
  build,
  derived,
  describe,
});
