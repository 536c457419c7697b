import { lap } from '../../fold/corners/lap.js';
import { square } from '../../fold/corners/square.js';
import type { CornerStyle } from '../../fold/draft/corner-style.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, flange, hem } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { askedTabs, baseAndWalls, closedCorners, SIDES, type Side, type Walls } from '../walls.js';
import { describe } from './describe.js';
import { boxSizes, check, derived, type OpenBoxParams, reliefOf, rimDepth, values } from './params.js';

function build(p: OpenBoxParams, sheet: Sheet): readonly Step[] {
  const box = boxSizes(p, sheet);
  const walls: Walls = { length: box.length, width: box.width, height: (side) => box.wall(side).height };
  return [
    ...baseAndWalls(walls, p, sheet, { height: (side) => heightOf(p, side) }),
    ...SIDES.flatMap((side) => rim(p, side, sheet)),
    ...closedCorners(walls, p, sheet, {
      rimDepth: (side) => rimDepth(p, side, sheet),
      style: cornerStyle(p, sheet),
    }),
    asked('length', box.length, 'x', { panels: ['base', 'east', 'west'] }),
    asked('width', box.width, 'y', { panels: ['base', 'north', 'south'] }),
    ...SIDES.filter((s) => s === 'north' || p.heights !== null).map((side) =>
      asked(side === 'north' ? 'height' : `heights.${side}`, box.wall(side).height, 'z', {
        panels: ['base', side, `return-${side}`, ...(p.flangeReturn === null ? [`hem-${side}`] : [])],
      }),
    ),
    ...rimSizes(p, sheet),
    ...askedTabs(p),
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

/** Parameters a wall gets its height and its hem from. */
const heightOf = (p: OpenBoxParams, side: Side) =>
  (p.heights?.[side] ?? null) === null ? ['height'] : ['heights', side];
const hemOf = (p: OpenBoxParams, side: Side) =>
  p.hems === null ? ['hem', 'length'] : ['hems', side, 'length'];

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
