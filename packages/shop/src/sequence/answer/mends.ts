import type { PartPlan, StopSignal } from '@tinwright/core';
import type { Shop } from '../../machines/shop.js';
import { apartMends } from './apart-mends.js';
import { type BendTrialInput, trialOf } from './feasible.js';
import { machineMends } from './machine-mends.js';
import type { MendTrial } from './mend-trial.js';
import { partMends } from './part-mends.js';
import type { Mend, Reason } from './plan.js';
import { partToBend } from './planned-sequence.js';
import { toolMends } from './tool-mends.js';

/** Reasons that another die may do away with. */
const OF_DIES: readonly Reason['code'][] = ['die', 'flange-short', 'force', 'angle', 'tools'];

const MOST_WHOLE = 2000; // states looked at for a plan of a changed part

/**
 * Something to change so that an impossible part becomes possible: values of the part, panels joined on instead of bent,
 * values of every machine of the shop
 * that is stopped, then tools and machines that it has not got. Each is tried by a whole plan before it is said.
 * @param why ids of bends that cannot all be made, and the reasons
 * @throws what `signal` was aborted for: it is asked before each change is tried
 */
export function mendsFor(
  plan: PartPlan,
  shop: Shop,
  { cores, reasons }: { readonly cores: readonly (readonly string[])[]; readonly reasons: readonly Reason[] },
  signal?: StopSignal,
): readonly Mend[] {
  const dies = reasons.some((r) => r.machine === 'press' && OF_DIES.includes(r.code)) ? 'all' : 'near';
  const input: BendTrialInput = { cores, dies, most: MOST_WHOLE };
  const given = partToBend(plan);
  const own = trialOf(given, input);
  const trial: MendTrial = {
    plan,
    shop,
    reasons,
    inShop: (other) => {
      signal?.throwIfAborted();
      return own.planIn(other);
    },
  };
  const changed = (params: unknown) => {
    signal?.throwIfAborted();
    try {
      return trialOf({ ...given, part: plan.family.part(params, plan.sheet) }, input);
    } catch {
      return null; // corners leave nothing at this size
    }
  };
  return [
    ...partMends(trial, changed),
    ...apartMends(plan, shop, cores, () => signal?.throwIfAborted()),
    ...machineMends(trial),
    ...toolMends(trial),
  ];
}
