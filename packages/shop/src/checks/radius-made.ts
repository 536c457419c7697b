import { cite, type FlatBend, leastRadiusOf } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import { brakesOf } from '../machines/brakes.js';
import type { Shop } from '../machines/shop.js';
import { airRadius } from '../metal/press-force.js';
import { leafRadius, leafSetting } from '../tools/leaf-setting.js';
import { diesFor } from '../tools/press-setting.js';
import type { ShopCheck } from './check.js';
import { middleOf } from './geometry/panels.js';
import { type LimitPlace, limitCheck } from './limit-check.js';

/** What both legs of a bend may come out longer by, mm: what a press brake holds, from memory. */
export const MOST_OFF = 0.2;

interface Made extends LimitPlace {
  readonly asked: number;
  readonly made: number;
  /** What both legs together come out longer by, mm. */
  readonly longer: number;
  readonly machine: string;
  /** Least inside radius of the metal, mm. */
  readonly least: number;
}

/**
 * Inside radii no machine of the shop comes near: the legs then come out longer or shorter than laid out. A bend
 * past the angle a machine does is not held against it.
 */
export const radiusMade: ShopCheck = limitCheck<'radius-made', Made>({
  code: 'radius-made',
  leansOn: ['brake.setBack'],
  severity: 'warning',
  unit: 'mm',
  bound: 'most',
  places: ({ flat, sheet, material }, shop) =>
    flat.bends
      .filter((b) => b.hem === null)
      .flatMap((bend): readonly Made[] => {
        const least = leastRadiusOf(material.leastRadius, sheet.thickness);
        const best = bestMade(bend, sheet.thickness, shop);
        if (best === null) return [];
        return [
          { ...best, at: middleOf(bend), limit: MOST_OFF, names: [bend.id], asked: bend.insideRadius, least },
        ];
      }),
  values: ({ asked, made, longer, machine, least }) => ({ asked, made, longer, machine, least }),
  source: ({ limit }) => [
    cite(null, { rule: 'R = S / tan(A/2) − T', basis: 'derived' }),
    cite('makers-tables', { rule: 'R = 0.16 V' }),
    cite(null, { size: limit, basis: 'memory' }),
  ],
});

/** A radius that is made, and what both legs of the bend come out longer by. mm */
export interface MadeRadius {
  readonly made: number;
  readonly machine: string;
  readonly longer: number;
  readonly value: number;
}

/** What a machine makes of a bend. */
export function madeAs(bend: FlatBend, made: number, machine: string): MadeRadius {
  const longer = perRadius(bend.angle) * (made - bend.insideRadius);
  return { made, machine, longer, value: Math.abs(longer) };
}

/** The radius nearest to a bend's own that a machine of a shop makes; null where none turns it so far. */
export function bestMade(bend: FlatBend, thickness: number, shop: Shop): MadeRadius | null {
  const all = waysOf(bend, thickness, shop).map(({ made, machine }) => madeAs(bend, made, machine));
  return all.toSorted((a, b) => a.value - b.value)[0] ?? null;
}

/** What each machine that turns a bend so far makes of it, mm inside. */
function waysOf(
  { angle, insideRadius }: FlatBend,
  thickness: number,
  shop: Shop,
): readonly { readonly made: number; readonly machine: string }[] {
  const { press } = shop;
  return [
    ...brakesOf(shop).flatMap(({ brake }) => {
      const leaf = leafSetting(brake, thickness, insideRadius, { angle, set: angle });
      return angle > leaf.most
        ? []
        : [{ made: leafRadius(leaf.setBack, thickness, angle), machine: brake.name }];
    }),
    ...(press === null ? [] : diesFor(press, { thickness, insideRadius }, angle + press.overbend)).map(
      (d) => ({
        made: airRadius(d.opening),
        machine: press?.name ?? '',
      }),
    ),
  ];
}

/** How much a bend's deduction grows with its inside radius: what is taken off too little is left on the legs. */
const perRadius = (angle: number): number =>
  2 * (angle <= 90 ? Math.tan(radians(angle) / 2) : 1) - radians(angle);
