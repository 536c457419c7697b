import type { PartPanel, PartPlan, Path, StopSignal } from '@tinwright/core';
import { sizeAdvice, sizesIn, withValue } from '@tinwright/core/internal';
import type { Shop } from '../../machines/shop.js';
import { feasible, someFeasible } from './feasible.js';
import { machineMends } from './machine-mends.js';
import type { Mend, Reason } from './plan.js';

const RUNGS = 4; // sizes tried either way for each parameter, before the edge between them is sought
const STEP = 0.1; // mm: the sections of the machine are not known better
const MOST_MENDS = 3;
const MOST_SIZES = 4; // parameters tried, those that shape what is in the way

/**
 * Something to change so that an impossible part becomes possible: sizes found by trying, then machines. Each is tried
 * by a whole plan before it is said.
 * @param why ids of bends that cannot all be made, and the reasons
 * @throws what `signal` was aborted for: it is asked before each size is tried
 */
export function mendsFor(
  plan: PartPlan,
  shop: Shop,
  { cores, reasons }: { readonly cores: readonly (readonly string[])[]; readonly reasons: readonly Reason[] },
  signal?: StopSignal,
): readonly Mend[] {
  const sizes = sizesIn(plan.params).filter(({ path, given }) => touches(plan, path, given, reasons));
  const room = (params: unknown) => {
    signal?.throwIfAborted();
    return params !== plan.params && someFeasible(plan, params, shop, cores) ? 0 : null;
  };
  const advice = sizeAdvice(
    plan.params,
    room,
    () => ({ step: STEP, rungs: RUNGS }),
    sizes.slice(0, MOST_SIZES),
  );
  const found = advice
    .filter((a) => feasible(plan, withValue(plan.params, a.path, a.found), shop))
    .map(
      ({ path, given, found, bound }): Mend => ({
        of: 'part',
        parameter: path.join('.'),
        given,
        found,
        bound,
        thickness: null,
      }),
    );
  return [...found.slice(0, MOST_MENDS), ...machineMends(plan, shop, cores, reasons)];
}

/** True when a parameter shapes a panel that a reason names, or one that hangs on it: another size gives another outline. */
function touches(plan: PartPlan, path: Path, given: number, reasons: readonly Reason[]): boolean {
  const named = new Set(reasons.flatMap((r) => [r.panel, ...r.bends]));
  const near = (p: PartPanel) => named.has(p.id) || (p.hang !== null && named.has(p.hang.bend.parent));
  const outline = (params: unknown) => {
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
