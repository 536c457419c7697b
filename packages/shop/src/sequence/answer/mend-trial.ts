import type { PartPlan } from '@tinwright/core';
import { brakesOf } from '../../machines/brakes.js';
import type { Brake, Shop } from '../../machines/shop.js';
import type { Move } from '../search/states.js';
import type { Mend, Reason } from './plan.js';

/** What changes of an impossible part are tried with. */
export interface MendTrial {
  readonly plan: PartPlan;
  readonly shop: Shop;
  readonly reasons: readonly Reason[];
  /** A plan in another shop; null where none is soon found. */
  readonly inShop: (shop: Shop) => readonly Move[] | null;
}

/** True where a machine of a kind is stopped by one of these. */
export const stoppedBy = (
  { reasons }: MendTrial,
  machine: Reason['machine'],
  codes: readonly Reason['code'][],
): boolean => reasons.some((r) => r.machine === machine && codes.includes(r.code));

/** Longest bend line of a part, mm. */
export const longestLine = ({ flat }: PartPlan): number =>
  Math.max(0, ...flat.bends.map(({ line: [a, b] }) => Math.hypot(b[0] - a[0], b[1] - a[1])));

/** A change of a machine. */
export const machineMend = (
  parameter: string,
  more: Pick<Mend, 'given' | 'found' | 'bound'> & Partial<Mend>,
): Mend => ({ of: 'machine', parameter, unit: 'mm', instead: null, thickness: null, ...more });

/** A leaf brake of a shop, the shop with another in its place, and its name where there are several. */
export interface Replaced {
  readonly brake: Brake;
  readonly put: (brake: Brake) => Shop;
  readonly instead: string | null;
}

/** Every leaf brake of a shop. */
export const brakesIn = (shop: Shop): readonly Replaced[] =>
  brakesOf(shop).map(({ id, brake }, _, all) => ({
    brake,
    put: (other) =>
      id === 'brake'
        ? { ...shop, brake: other }
        : { ...shop, brakes: shop.brakes.map((b) => (b === brake ? other : b)) },
    instead: all.length > 1 ? brake.name : null,
  }));
