import { isArc, type Segment } from '@tinwright/core';
import { heading } from './run.js';

/** Part of a straight side, mm from its start. */
export type SideStretch = readonly [from: number, to: number];

/** How far apart two lines may run and still count as one, mm. */
const ONE_LINE = 1e-6;

/** Where others lie on a straight side, those that meet joined; what is shorter than `least`, mm, left out. */
export function stretchesOn(
  side: Segment,
  others: readonly Segment[],
  least: number,
): readonly SideStretch[] {
  if (isArc(side)) return [];
  const [ux, uy] = heading(side, 'start');
  const [x, y] = side.from;
  const length = (side.to[0] - x) * ux + (side.to[1] - y) * uy;
  const on: SideStretch[] = [];
  for (const { from, to, bulge } of others) {
    if (isArc({ bulge })) continue;
    if (Math.abs((from[0] - x) * uy - (from[1] - y) * ux) > ONE_LINE) continue;
    if (Math.abs((to[0] - x) * uy - (to[1] - y) * ux) > ONE_LINE) continue;
    const a = (from[0] - x) * ux + (from[1] - y) * uy;
    const b = (to[0] - x) * ux + (to[1] - y) * uy;
    const stretch: SideStretch = [Math.max(0, Math.min(a, b)), Math.min(length, Math.max(a, b))];
    if (stretch[1] - stretch[0] > ONE_LINE) on.push(stretch);
  }
  return joined(on).filter(([from, to]) => to - from >= least);
}

function joined(stretches: readonly SideStretch[]): readonly SideStretch[] {
  const found: SideStretch[] = [];
  for (const [from, to] of stretches.toSorted((a, b) => a[0] - b[0])) {
    const last = found.at(-1);
    if (last !== undefined && from <= last[1] + ONE_LINE)
      found[found.length - 1] = [last[0], Math.max(last[1], to)];
    else found.push([from, to]);
  }
  return found;
}

/** A straight side cut up at the ends of stretches on it: every piece, and whether it lies on one of them. */
export function cutAt(
  side: Segment,
  stretches: readonly SideStretch[],
): readonly { readonly side: Segment; readonly on: boolean }[] {
  if (stretches.length === 0) return [{ side, on: false }];
  const [ux, uy] = heading(side, 'start');
  const length = (side.to[0] - side.from[0]) * ux + (side.to[1] - side.from[1]) * uy;
  const at = (far: number): Segment['from'] =>
    far <= ONE_LINE
      ? side.from
      : far >= length - ONE_LINE
        ? side.to
        : [side.from[0] + ux * far, side.from[1] + uy * far];
  const stops = [0, ...stretches.flat(), length];
  return stops
    .slice(1)
    .map((to, i) => ({ from: stops[i] as number, to, on: i % 2 === 1 }))
    .filter(({ from, to }) => to - from > ONE_LINE)
    .map(({ from, to, on }) => ({ side: { from: at(from), to: at(to), bulge: 0 }, on }));
}
