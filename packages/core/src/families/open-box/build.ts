import type { CornerStyle } from '../../fold/corner-style.js';
import { lap } from '../../fold/corners/lap.js';
import { square } from '../../fold/corners/square.js';
import { rectangle } from '../../fold/outline.js';
import type { Sheet, Step } from '../../fold/tree.js';
import { asked, corners, flange, hem, panel, site } from '../../fold/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { describe } from './describe.js';
import {
  boxSizes,
  check,
  derived,
  type OpenBoxParams,
  reliefOf,
  rimDepth,
  SIDES,
  type Side,
  values,
} from './params.js';

const ENDS = ['west', 'east'] as const;

function build(p: OpenBoxParams, sheet: Sheet): readonly Step[] {
  const box = boxSizes(p, sheet);
  const tabbed = p.corner === 'tabbed';
  const inset = (side: Side): readonly [number, number] =>
    tabbed && (side === 'north' || side === 'south')
      ? [sheet.thickness + p.gap, sheet.thickness + p.gap]
      : [0, 0];
  return [
    panel('base', rectangle(box.length, box.width), [['length'], ['width']]),
    ...SIDES.map((side) =>
      flange(side, ['base', side], {
        height: box.wall(side).height,
        inset: inset(side),
        by: heightOf(p, side),
      }),
    ),
    ...SIDES.flatMap((side) => rim(p, side, sheet)),
    ...(tabbed ? cornerTabs(p, sheet) : []),
    corners(['base', ...(tabbed ? ['north', 'south'] : [])], cornerStyle(p, sheet)),
    ...sites(p, sheet),
    asked('length', box.length, 'x', { panels: ['base', 'east', 'west'] }),
    asked('width', box.width, 'y', { panels: ['base', 'north', 'south'] }),
    ...SIDES.filter((s) => s === 'north' || p.heights !== null).map((side) =>
      asked(side === 'north' ? 'height' : `heights.${side}`, box.wall(side).height, 'z', {
        panels: ['base', side, `return-${side}`, ...(p.flangeReturn === null ? [`hem-${side}`] : [])],
      }),
    ),
    ...rimSizes(p, sheet),
    ...(tabbed ? [asked('tabs.length', p.tabs.length, 'y', { panels: ['north', 'tab-north-west'] })] : []),
  ];
}

/** Return and hem of the north wall, or of the first one that has a hem. */
function rimSizes(p: OpenBoxParams, sheet: Sheet): readonly Step[] {
  const side = SIDES.find((s) => boxSizes(p, sheet).wall(s).hem !== null);
  const hemmed = side === undefined ? null : boxSizes(p, sheet).wall(side).hem;
  const across = side === 'west' || side === 'east' ? 'x' : 'y';
  const name = p.hems === null ? 'hem.length' : `hems.${side}.length`;
  return [
    ...(p.flangeReturn === null
      ? []
      : [asked('flangeReturn', p.flangeReturn, 'y', { panels: ['north', 'return-north', 'hem-north'] })]),
    ...(hemmed === null
      ? []
      : [asked(name, hemmed.length, p.flangeReturn === null ? 'z' : across, { panels: [`hem-${side}`] })]),
  ];
}

/** The return, then the hem, on a wall's rim. */
function rim(p: OpenBoxParams, side: Side, sheet: Sheet): readonly Step[] {
  const spec = boxSizes(p, sheet).wall(side).hem;
  const fold =
    p.flangeReturn === null
      ? []
      : [flange(`return-${side}`, [side, 'far'], { height: p.flangeReturn, by: ['flangeReturn'] })];
  const on = p.flangeReturn === null ? side : `return-${side}`;
  return [
    ...fold,
    ...(spec === null ? [] : [hem(`hem-${side}`, [on, 'far'], { ...spec, by: hemOf(p, side) })]),
  ];
}

/** Tabs at the ends of the north and south walls, inside the other two, below their rims. */
function cornerTabs(p: OpenBoxParams, sheet: Sheet): readonly Step[] {
  const box = boxSizes(p, sheet);
  return (['north', 'south'] as const).flatMap((side) =>
    ENDS.map((end) => {
      const { height } = box.wall(side);
      const over = height - (box.wall(end).height - rimDepth(p, end, sheet));
      const top = Math.max(over > 0 || rimDepth(p, end, sheet) > 0 ? over + p.gap : 0, 0);
      // a tab's x runs up the wall where its corner at the base is the low end
      const up = (side === 'north') === (end === 'west');
      return flange(`tab-${side}-${end}`, [side, end], {
        height: p.tabs.length,
        by: ['tabs', 'length'],
        inset: up ? [0, top] : [top, 0],
      });
    }),
  );
}

/** Parameters a wall gets its height and its hem from. */
const heightOf = (p: OpenBoxParams, side: Side) =>
  (p.heights?.[side] ?? null) === null ? ['height'] : ['heights', side];
const hemOf = (p: OpenBoxParams, side: Side) =>
  p.hems === null ? ['hem', 'length'] : ['hems', side, 'length'];

/** Inside and outside of each wall, the floor, the underside, and the rim with nothing to fasten to. */
function sites(p: OpenBoxParams, sheet: Sheet): readonly Step[] {
  const box = boxSizes(p, sheet);
  const middle: readonly [number, number] = [box.length / 2, box.width / 2];
  const across = (side: Side) => (side === 'north' || side === 'south' ? middle[0] : middle[1]);
  const inside = (side: Side) => 2 * (side === 'north' || side === 'south' ? middle[1] : middle[0]);
  return [
    ...SIDES.flatMap((side) => [
      site(
        side,
        [{ panel: side, face: 'marked' }],
        { panel: side, at: [across(side), sheet.thickness], up: [0, 1] },
        inside(side) - 2 * sheet.thickness,
      ),
      site(`${side}-out`, [{ panel: side, face: 'unmarked' }], {
        panel: side,
        at: [across(side), box.wall(side).height],
        up: [0, 1],
      }),
    ]),
    site('floor', [{ panel: 'base', face: 'marked' }], { panel: 'base', at: middle, up: [0, 1] }),
    site('underside', [{ panel: 'base', face: 'unmarked' }], { panel: 'base', at: middle, up: [0, 1] }),
    site('rim', [], {
      panel: 'base',
      at: middle,
      up: [0, 1],
      lift: box.wall('north').height - sheet.thickness,
    }),
  ];
}

function cornerStyle(p: OpenBoxParams, sheet: Sheet): CornerStyle {
  const relief = reliefOf(p, sheet);
  return p.corner === 'lap' ? lap(['north', 'south'], p.gap, relief) : square(p.gap, relief);
}

/**
 * Box open at the top. A base and four walls, each with its own height and hem if wanted; seed trays, bins and
 * drawers. x runs along the length, west and east walls stand at its ends. Outside sizes unless a parameter says
 * otherwise.
 */
export const openBox: NamedFamily<'open-box', typeof values> = defineFamily({
  name: 'open-box',
  values,
  check,
  build,
  derived,
  describe,
});
