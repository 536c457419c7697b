import {
  nearestSize,
  type PartPanel,
  type PartPlan,
  type Path,
  type Say,
  sizesIn,
  withValue,
} from '@tinwright/core';
import type { Shop } from '../machines/shop.js';
import { feasible, mountable } from './feasible.js';
import { machineMends } from './machine-mends.js';
import type { Mend, Reason } from './plan.js';
import type { Move } from './states.js';

const MOST_TRIES = 4; // sizes tried either way for each parameter
const HALVINGS = 10;
const TENTHS = 10; // of a millimetre: the sections of the machine are not known better
const MOST_MENDS = 3;
const MOST_SIZES = 5; // parameters tried, those that shape what is in the way

/**
 * Something to change so that an impossible part becomes possible: sizes found by trying, then machines. Each is tried
 * by a whole plan before it is said.
 * @param failed strokes taken in spite of what is in their way
 */
export function mendsFor(
  plan: PartPlan,
  shop: Shop,
  failed: readonly Move[],
  reasons: readonly Reason[],
): readonly Mend[] {
  const sizes = sizesIn(plan.params).filter(({ path, given }) => touches(plan, path, given, reasons));
  const found = sizes.slice(0, MOST_SIZES).flatMap(({ path, given }): readonly Mend[] => {
    const found = nearestSize(
      given,
      (v) => mountable(plan, withValue(plan.params, path, v), shop, failed),
      HALVINGS,
      MOST_TRIES,
    );
    if (found === null) return [];
    const size = found < given ? Math.floor(found * TENTHS) / TENTHS : Math.ceil(found * TENTHS) / TENTHS;
    if (!feasible(plan, withValue(plan.params, path, size), shop)) return [];
    const parameter = path.join('.');
    return [{ parameter, given, found: size, message: (say) => wordsFor(parameter, given, size, say) }];
  });
  const change = (m: Mend) => Math.abs(Math.log((m.found ?? 1) / (m.given ?? 1)));
  return [
    ...found.toSorted((a, b) => change(a) - change(b)).slice(0, MOST_MENDS),
    ...machineMends(plan, shop, failed, reasons),
  ];
}

function wordsFor(parameter: string, given: number, found: number, say: Say): string {
  return found < given
    ? `${parameter} of ${say.most(found)} or less`
    : `${parameter} of ${say.least(found)} or more`;
}

/** True when a parameter shapes a panel that a reason names, or one that hangs on it: another size gives another outline. */
function touches(plan: PartPlan, path: Path, given: number, reasons: readonly Reason[]): boolean {
  const named = new Set(reasons.flatMap((r) => [r.panel, ...r.bends]));
  const near = (p: PartPanel) => named.has(p.id) || (p.hang !== null && named.has(p.hang.bend.parent));
  const outline = (params: unknown) => {
    if (plan.family.check(params, plan.sheet).length > 0) return null;
    try {
      return plan.family
        .part(params, plan.sheet)
        .panels.filter(near)
        .map((p) => JSON.stringify(p.outline))
        .join('\n');
    } catch {
      return null; // corners leave nothing at this size
    }
  };
  const now = outline(plan.params);
  return [0.97, 1.03].some((f) => {
    const other = outline(withValue(plan.params, path, given * f));
    return other !== null && other !== now;
  });
}
