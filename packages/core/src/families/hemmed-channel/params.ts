import { type HemSpec, hemFold } from '../../bending/hem.js';
import type { Problem } from '../../errors/problem.js';
import type { Sheet } from '../../fold/tree.js';
import type { ParamKit, Shape } from '../kit.js';
import { atLeast, atMost, CORNER_GAP, hemFits, hemHeight, mm, setback } from '../limits.js';

/** Panels an end tab can hang on. */
export type TabSite = 'base' | 'north' | 'south';

/** Tabs at both ends, folded up and in to the ring an end stands against. mm */
export interface EndTabs {
  readonly length: number;
  readonly on: readonly TabSite[];
  readonly notch: 'slant' | 'square' | 'relief';
  /** Kept between neighbouring tabs once formed. */
  readonly gap: number;
  /** Thickness of what will stand against the tabs: hems stop short of it. */
  readonly room: number | null;
}

/** A channel with hemmed sides. Outside sizes, mm. */
export interface HemmedChannelParams {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly hem: HemSpec | null;
  readonly endTabs: EndTabs | null;
}

const SITES: readonly TabSite[] = ['base', 'north', 'south'];

export function params(k: ParamKit): Shape<HemmedChannelParams> {
  return {
    length: k.size(),
    width: k.size(),
    height: k.size(),
    hem: k.or(k.hem(), null),
    endTabs: k.maybe(
      k.group<EndTabs>({
        length: k.size(),
        on: k.or(k.list(k.oneOf(SITES), 1, 3), SITES),
        notch: k.or(k.oneOf(['slant', 'square', 'relief']), 'slant'),
        gap: k.or(k.size({ min: 0, max: 20 }), CORNER_GAP),
        room: k.maybe(k.size({ min: 0, max: 20 })),
      }),
    ),
  };
}

export function check(p: HemmedChannelParams, sheet: Sheet): readonly Problem[] {
  const bend = setback(sheet);
  const fold = hemHeight(p.hem, sheet.thickness);
  const side = { height: p.height, name: 'side', bend };
  return [
    ...atLeast(['width'], p.width, 2 * (bend + fold) + 1, 'the two sides and their hems need more'),
    ...atLeast(['height'], p.height, bend + sheet.thickness, 'a side has to stand clear of its own bend'),
    ...(p.hem === null ? [] : hemFits(['hem'], p.hem, sheet, side)),
    ...(p.endTabs === null ? lengthProblems(p, 1) : tabProblems(p, p.endTabs, sheet)),
  ];
}

function lengthProblems(p: HemmedChannelParams, least: number): readonly Problem[] {
  return atLeast(['length'], p.length, least, 'what is cut from the ends needs more');
}

function tabProblems(p: HemmedChannelParams, tabs: EndTabs, sheet: Sheet): readonly Problem[] {
  const { thickness } = sheet;
  const bend = setback(sheet);
  const path = ['endTabs', 'length'];
  const sides = tabs.on.filter((s) => s !== 'base').length;
  const sloped = tabs.notch !== 'square';
  // a hem end starts past the tab and what stands there, and slopes back at 45°
  const hemEnd =
    p.hem === null ? 0 : hemStart(tabs, thickness) + tabs.gap + bend + hemFold(p.hem, thickness).leg;
  return [
    ...lengthProblems(p, 2 * Math.max(bend + 1, hemEnd + 1)),
    ...atLeast(path, tabs.length, bend + thickness, 'a tab has to reach past its own bend'),
    ...(sides === 0
      ? []
      : atMost(
          path,
          tabs.length,
          (p.width - tabs.gap - 1) / (sides === 2 ? 2 : 1),
          `the tabs of both sides would meet across the width of ${mm(p.width)}`,
        )),
    ...(tabs.on.includes('base')
      ? atMost(
          path,
          tabs.length,
          p.height,
          `the tab of the base would stand over the sides of ${mm(p.height)}`,
        )
      : []),
    ...(sides === 0
      ? []
      : atMost(
          path,
          tabs.length,
          sideRoom(p, tabs, sheet, sloped),
          `the notches would meet on a side of ${mm(p.height)}`,
        )),
  ];
}

/** Where hems start beside the tabs, from the outside of the tabs, mm. */
export function hemStart({ room }: EndTabs, thickness: number): number {
  return thickness + (room ?? thickness) + CORNER_GAP;
}

/** Longest tab on a side before its two end cuts meet: mitre or butt below, hem notch above. */
function sideRoom(p: HemmedChannelParams, { on, gap }: EndTabs, sheet: Sheet, sloped: boolean): number {
  const bend = setback(sheet);
  const top = p.hem === null ? 0 : setback(sheet, 180, hemFold(p.hem, sheet.thickness).insideRadius);
  const free = p.height - top - sheet.thickness;
  if (!sloped) return on.includes('base') ? free - gap : Infinity;
  // below: the mitre, t = d + gap/√2, or 45° from the bend; above: 45° from the hem
  const below = on.includes('base') ? gap / Math.SQRT2 : 0;
  return p.hem === null ? free - below : (free - below + bend) / 2;
}
