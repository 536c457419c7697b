import type { FlatBend } from '@tinwright/core';
import type { Brake, Press, Shop } from '../machines/shop.js';
import { setBackFor } from '../tools/leaf-tools.js';
import type { ShopCheck, Subject } from './check.js';
import { middleOf } from './geometry/panels.js';
import { between, heightOf, isOpposite, sidesOf } from './geometry/sides.js';
import { limitCheck, type Place } from './limit-check.js';
import { longestReturn, MARGIN, marginFor } from './machine/leaf.js';
import { viseTakes } from './machine/vise.js';

interface DeepBox extends Place {
  readonly machine: string;
}

/**
 * A box too deep for the last of its four walls, whichever that is: the walls at its ends run into the beam over the
 * fingers, or into the ram. A quick rule for square walls; the order of bends is another matter.
 */
export const boxDeep: ShopCheck = limitCheck<DeepBox>({
  code: 'box-deep',
  leansOn: ['brake.clearHeight', 'brake.beam', 'brake.finger', 'press.ram'],
  severity: 'warning',
  unit: 'mm',
  bound: 'most',
  places: (subject, shop) => subject.part.panels.flatMap(({ id }) => boxAt(subject, shop, id)),
  message: ({ value, limit, what, machine }, say) =>
    `walls round ${what} are ${say.size(value)} deep, ${say.most(limit)} at most on the ${machine}`,
  source: (_, __, { press }) =>
    press === null
      ? `clear height under the beam in the shop file, derived, ${MARGIN}`
      : `clear height under the beam in the shop file, ${MARGIN}; (height of the ram − half its width) / √2 on the press brake; derived`,
  aim: ({ limit }, say) => `make the walls ${say.most(limit)} or lower`,
  remedy: () => 'join them from parts',
});

/** True for a panel whose walls are too deep for the last of them. */
export const isTooDeep = (subject: Subject, shop: Shop, panel: string): boolean =>
  boxAt(subject, shop, panel).some(({ value, limit }) => value > limit + 1e-6);

function boxAt(subject: Subject, shop: Shop, panel: string): readonly DeepBox[] {
  const walls = sidesOf(subject.part, panel).filter(
    (s) => s.hem === null && Math.abs(Math.abs(s.angle) - 90) < 1e-6,
  );
  // of each wall as the last one: walls at both ends, one opposite
  const last = walls.flatMap((wall): readonly DeepBox[] => {
    const same = walls.filter((w) => w !== wall && w.angle > 0 === wall.angle > 0);
    const opposite = same.find((w) => isOpposite(w, wall));
    const ends = same.filter((w) => Math.abs(w.out[0] * wall.out[0] + w.out[1] * wall.out[1]) < 1e-9);
    const [end] = ends;
    if (opposite === undefined || end === undefined || !ends.some((w) => isOpposite(w, end))) return [];
    const depth = Math.max(...ends.map((w) => heightOf(subject.part, w)));
    const bend = subject.flat.bends.find((b) => b.id === wall.bend) as FlatBend;
    if (viseTakes(subject, shop, bend)) return [free(bend, depth)];
    const base = between(wall, opposite);
    const ways = [
      ...(shop.brake === null
        ? []
        : [
            {
              limit: leafDepth(subject, shop.brake, base, heightOf(subject.part, opposite)),
              machine: shop.brake.name,
            },
          ]),
      ...(shop.press === null
        ? []
        : [{ limit: pressDepth(subject, shop.press, base), machine: shop.press.name }]),
    ];
    const best = ways.toSorted((a, b) => b.limit - a.limit)[0];
    return best === undefined ? [] : [{ at: middleOf(bend), value: depth, what: panel, ...best }];
  });
  return last.toSorted((a, b) => b.limit - b.value - (a.limit - a.value)).slice(0, 1);
}

const free = (bend: FlatBend, depth: number): DeepBox => ({
  at: middleOf(bend),
  value: depth,
  limit: Infinity,
  what: bend.id,
  machine: '',
});

/** Deepest walls at the ends of the last bend on a leaf brake, outside. mm */
function leafDepth({ sheet, flat }: Subject, brake: Brake, base: number, opposite: number): number {
  const { thickness, insideRadius } = sheet;
  const margin = marginFor(Math.max(...flat.blank.max));
  const beam = setBackFor(brake, thickness, insideRadius) + brake.beam - margin;
  const under = brake.clearHeight + thickness - margin;
  // base under the fingers: walls that end in front of the beam may be any height
  const clamped = base <= beam ? Infinity : under;
  // wall under the fingers, base turned up by the leaf: the opposite wall clears the fingers like a return
  const turns = opposite <= longestReturn(brake, { wall: base, thickness, insideRadius, margin });
  const turned = !turns ? 0 : base <= under ? Infinity : beam;
  return Math.max(clamped, turned);
}

/**
 * Deepest walls beside the punch, under the ram, outside: (height of the ram − half its width) / √2 over the inside of
 * the base; where the base is short the walls' far corners pass lower beside the ram. mm
 * Source: derived, worst at the end of the stroke.
 */
function pressDepth({ sheet }: Subject, { ram }: Press, base: number): number {
  const inside = base - 2 * (sheet.thickness + sheet.insideRadius);
  const wide = (ram.height - ram.half) / Math.SQRT2;
  const reach = Math.SQRT2 * ram.half;
  const short = Math.SQRT2 * ram.height - inside;
  if (inside >= wide + reach) return wide + sheet.thickness;
  return short >= inside + reach ? Infinity : short + sheet.thickness;
}
