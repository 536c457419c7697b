import { type HemSpec, hemFold } from '../../bending/hem.js';
import type { Problem } from '../../errors/problem.js';
import type { Sheet } from '../../fold/tree.js';
import type { ParamKit, Shape } from '../kit.js';
import { atLeast, atMost, CORNER_GAP, hemFits, LEAST_LEG, mm, setback } from '../limits.js';

/** Walls of a box by the compass. */
export type Side = 'north' | 'south' | 'east' | 'west';
export const SIDES: readonly Side[] = ['north', 'south', 'east', 'west'];

/** Something for each wall; null where the wall has none of its own. */
export type PerSide<T> = { readonly [S in Side]: T | null };

/** A box open at the top. mm */
export interface OpenBoxParams {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly heights: PerSide<number> | null;
  readonly dimensions: 'outside' | 'inside';
  readonly corner: 'open' | 'lap' | 'tabbed';
  readonly tabs: { readonly length: number };
  readonly hem: HemSpec | null;
  readonly hems: PerSide<HemSpec> | null;
  readonly flangeReturn: number | null;
  readonly relief: 'none' | 'hole' | 'slot';
  readonly gap: number;
}

export function params(k: ParamKit): Shape<OpenBoxParams> {
  return {
    length: k.size(),
    width: k.size(),
    height: k.size(),
    heights: k.maybe(
      k.group<PerSide<number>>({
        north: k.maybe(k.size()),
        south: k.maybe(k.size()),
        east: k.maybe(k.size()),
        west: k.maybe(k.size()),
      }),
    ),
    dimensions: k.or(k.oneOf(['outside', 'inside']), 'outside'),
    corner: k.or(k.oneOf(['open', 'lap', 'tabbed']), 'open'),
    tabs: k.or(k.group<OpenBoxParams['tabs']>({ length: k.size() }), { length: 15 }),
    hem: k.or(k.hem(), null),
    hems: k.maybe(
      k.group<PerSide<HemSpec>>({
        north: k.or(k.hem(), null),
        south: k.or(k.hem(), null),
        east: k.or(k.hem(), null),
        west: k.or(k.hem(), null),
      }),
    ),
    flangeReturn: k.maybe(k.size()),
    relief: k.or(k.oneOf(['none', 'hole', 'slot']), 'none'),
    gap: k.or(k.size({ min: 0, max: 20 }), CORNER_GAP),
  };
}

/** The box in outside sizes, every wall with its own height and hem. mm */
export interface BoxSizes {
  readonly length: number;
  readonly width: number;
  readonly wall: (side: Side) => { readonly height: number; readonly hem: HemSpec | null };
}

/** Inside sizes become outside ones here, once: two thicknesses across, one in height. */
export function boxSizes(p: OpenBoxParams, { thickness }: Sheet): BoxSizes {
  const [across, up] = p.dimensions === 'inside' ? [2 * thickness, thickness] : [0, 0];
  return {
    length: p.length + across,
    width: p.width + across,
    wall: (side) => ({
      height: (p.heights?.[side] ?? p.height) + up,
      hem: p.hems === null ? p.hem : p.hems[side],
    }),
  };
}

/** How far what hangs on a wall's rim reaches down along it, mm: tabs of the neighbours stop below. */
export function rimDepth(p: OpenBoxParams, side: Side, sheet: Sheet): number {
  const { hem } = boxSizes(p, sheet).wall(side);
  if (p.flangeReturn !== null) return setback(sheet) + (hem === null ? 0 : hem.length);
  return hem === null ? 0 : hem.length;
}

export function check(p: OpenBoxParams, sheet: Sheet): readonly Problem[] {
  const box = boxSizes(p, sheet);
  const bend = setback(sheet);
  const least = 2 * (bend + p.gap) + 1;
  return [
    ...atLeast(['length'], box.length, least, 'the bends of both walls need more'),
    ...atLeast(['width'], box.width, least, 'the bends of both walls need more'),
    ...SIDES.flatMap((side) => wallProblems(p, side, sheet)),
    ...hemProblems(p, sheet),
    ...(p.flangeReturn === null ? [] : returnProblems(p, p.flangeReturn, sheet)),
    ...(p.corner === 'tabbed' ? tabProblems(p, sheet) : []),
  ];
}

function wallProblems(p: OpenBoxParams, side: Side, sheet: Sheet): readonly Problem[] {
  const { height } = boxSizes(p, sheet).wall(side);
  const own = (p.heights?.[side] ?? null) !== null;
  if (!own && side !== SIDES.find((s) => (p.heights?.[s] ?? null) === null)) return []; // the common height, once
  const least = setback(sheet) + LEAST_LEG + (p.flangeReturn === null ? 0 : setback(sheet));
  return atLeast(
    own ? ['heights', side] : ['height'],
    height,
    least,
    'a wall has to stand clear of its bends',
  );
}

/** Every hem has room on its wall or return; the common one on the lowest wall. */
function hemProblems(p: OpenBoxParams, sheet: Sheet): readonly Problem[] {
  const box = boxSizes(p, sheet);
  const bend = setback(sheet);
  const on = (height: number) =>
    p.flangeReturn === null
      ? { height, name: 'wall', bend }
      : { height: p.flangeReturn, name: 'return', bend };
  if (p.hems === null) {
    const lowest = Math.min(...SIDES.map((s) => box.wall(s).height));
    return p.hem === null ? [] : hemFits(['hem'], p.hem, sheet, on(lowest));
  }
  return SIDES.flatMap((side) => {
    const { height, hem } = box.wall(side);
    return hem === null ? [] : hemFits(['hems', side], hem, sheet, on(height));
  });
}

function returnProblems(p: OpenBoxParams, depth: number, sheet: Sheet): readonly Problem[] {
  const box = boxSizes(p, sheet);
  const fold = Math.max(...SIDES.map((s) => foldRadius(box.wall(s).hem, sheet)));
  return [
    ...atLeast(
      ['flangeReturn'],
      depth,
      setback(sheet) + LEAST_LEG,
      'a return has to reach past its own bend',
    ),
    ...atMost(
      ['flangeReturn'],
      depth,
      Math.min(box.length, box.width) / 2 - p.gap - fold - 1,
      'returns from both sides would meet',
    ),
  ];
}

const foldRadius = (hem: HemSpec | null, { thickness }: Sheet) =>
  hem === null ? 0 : hemFold(hem, thickness).insideRadius;

function tabProblems(p: OpenBoxParams, sheet: Sheet): readonly Problem[] {
  const box = boxSizes(p, sheet);
  const least = setback(sheet) + sheet.thickness;
  const [across, room] = [box.width / 2 - p.gap, p.tabs.length];
  const low = SIDES.map((s) => box.wall(s).height - rimDepth(p, s, sheet)).reduce((a, b) => Math.min(a, b));
  return [
    ...atLeast(['tabs', 'length'], room, least, 'a tab has to reach past its own bend'),
    ...atMost(
      ['tabs', 'length'],
      room,
      across,
      `tabs from both sides would meet across the width of ${mm(box.width)}`,
    ),
    ...atLeast(
      ['height'],
      low,
      2 * setback(sheet) + 2 * p.gap + LEAST_LEG,
      'nothing is left for the corner tabs under the rims; between them and the base',
    ),
  ];
}
