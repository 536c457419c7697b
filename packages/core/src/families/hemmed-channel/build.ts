import type { CornerStyle } from '../../fold/corner-style.js';
import { reliefHole } from '../../fold/corners/relief.js';
import { slant } from '../../fold/corners/slant.js';
import { square } from '../../fold/corners/square.js';
import { rectangle } from '../../fold/outline.js';
import type { Sheet, Step } from '../../fold/tree.js';
import { asked, corners, flange, hem, panel } from '../../fold/verbs.js';
import { type AnyFamily, defineFamily } from '../family.js';
import { describe } from './describe.js';
import { check, type EndTabs, type HemmedChannelParams, hemStart, params } from './params.js';

const SIDES = ['north', 'south'] as const;
const ENDS = ['west', 'east'] as const;

function build(p: HemmedChannelParams, sheet: Sheet): readonly Step[] {
  return [
    panel('base', rectangle(p.length, p.width)),
    ...SIDES.map((side) => flange(side, ['base', side], { height: p.height })),
    ...SIDES.flatMap((side) => (p.hem === null ? [] : [hem(`hem-${side}`, [side, 'far'], p.hem)])),
    ...(p.endTabs === null ? [] : endTabs(p.endTabs, sheet)),
    asked('length', p.length, 'x'),
    asked('width', p.width, 'y', { panels: ['base', ...SIDES] }),
    asked('height', p.height, 'z', { panels: ['base', 'north', 'hem-north'] }),
    ...(p.hem === null ? [] : [asked('hem.length', p.hem.length, 'z', { panels: ['hem-north'] })]),
  ];
}

function endTabs(tabs: EndTabs, sheet: Sheet): readonly Step[] {
  const spec = { height: tabs.length };
  const on = (site: (typeof tabs.on)[number]) => tabs.on.includes(site);
  return [
    ...ENDS.flatMap((end) => (on('base') ? [flange(`tab-${end}`, ['base', end], spec)] : [])),
    ...SIDES.filter(on).flatMap((side) => ENDS.map((end) => flange(`tab-${side}-${end}`, [side, end], spec))),
    corners(['base', ...SIDES], notch(tabs, sheet)),
    ...(on('base') ? [asked('endTabs.length', tabs.length, 'z', { panels: ['base', 'tab-west'] })] : []),
  ];
}

function notch(tabs: EndTabs, { thickness, insideRadius }: Sheet): CornerStyle {
  const relief = tabs.notch === 'relief' ? reliefHole(thickness, insideRadius) : null;
  if (tabs.notch === 'square') return square(tabs.gap);
  return slant(tabs.gap, hemStart(tabs, thickness), relief);
}

export const hemmedChannel: AnyFamily = defineFamily({
  name: 'hemmed-channel',
  params,
  check,
  build,
  describe,
});
