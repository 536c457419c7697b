import { cite, type FlatBend, leastRadiusOf, type Point, type Source } from '@tinwright/core';
import type { Shop } from '../machines/shop.js';
import { plainCheck, type ShopCheck, type ShopSubject } from './check.js';
import { remark } from './check-findings.js';
import { middleOf } from './geometry/panels.js';
import { isHard, isLowCarbon } from './hard.js';

const NEAR = 1.5; // times the least radius across the rolling direction
const ALONG = Math.cos((30 * Math.PI) / 180); // bends within 30° of the rolling direction crack like those along it

type Axis = 'x' | 'y';

/**
 * Tight bends along the rolling direction, which is the long side of the sheet. Said where it matters: in hard metal,
 * or where a radius is near the least its alloy takes; in low-carbon steel only under that.
 */
export const grain: ShopCheck = plainCheck('grain', (subject, shop) => {
  const { flat, material, sheet } = subject;
  const least = leastRadiusOf(material.leastRadius, sheet.thickness);
  const limit = isLowCarbon(material)
    ? least
    : isHard(material)
      ? Math.max(NEAR * least, sheet.thickness)
      : NEAR * least;
  const tight = flat.bends.filter((b) => b.insideRadius < limit - 1e-9 && matters(b, subject));
  if (tight.length === 0) return [];
  const ways = laysOn(flat.blank.max, shop).map((axis) => ({
    axis,
    bends: tight.filter((b) => runs(b, axis)),
  }));
  const best = ways.reduce((a, b) => (b.bends.length < a.bends.length ? b : a));
  const worst = (best.bends[0] ?? tight[0]) as FlatBend;
  return [
    remark('grain', 'note', {
      where: { at: middleOf(worst), names: best.bends.map((b) => b.id) },
      value: worst.insideRadius,
      limit,
      unit: 'mm',
      values: { axis: best.axis, runs: best.bends.length === 0 ? 'across' : 'along' },
      source: sourceOf(subject),
    }),
  ];
});

const sourceOf = ({ material }: ShopSubject): readonly Source[] => [
  cite(isHard(material) ? 'design-guide' : material.leastRadius.source),
  cite(null, { rule: `${NEAR} R`, basis: 'judgement' }),
];

/** Hems of low-carbon steel are folded flat either way; one too tight for its metal is told as that. */
const matters = ({ hem, insideRadius }: FlatBend, { material, sheet }: ShopSubject): boolean =>
  hem === null ||
  (!isLowCarbon(material) && insideRadius >= leastRadiusOf(material.leastRadius, sheet.thickness));

/** Axes of the blank that can lie along the long side of a sheet of the rack; both where there is none to tell. */
function laysOn([x, y]: Point, { sheets }: Shop): readonly Axis[] {
  const fits = (along: number, across: number) =>
    sheets.some(([l, w]) => along <= Math.max(l, w) && across <= Math.min(l, w));
  const found = [...(fits(x, y) ? (['x'] as const) : []), ...(fits(y, x) ? (['y'] as const) : [])];
  return found.length === 0 ? ['x', 'y'] : found;
}

/** True for a bend along an axis of the blank. */
function runs({ line: [a, b] }: FlatBend, axis: Axis): boolean {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  return Math.abs(axis === 'x' ? dx : dy) > ALONG * Math.hypot(dx, dy);
}
