import type { LeftWhy } from '../../findings/cutting-findings.js';
import type { Blank } from '../../stock/blank.js';
import type { Rack } from '../../stock/sheet.js';
import { type ShearReach, stockProblems } from '../../stock/stock-problems.js';
import type { ShearLimits } from './limits.js';
import { planShear, type ShearEffort } from './plan-shear.js';
import type { ShearPlan } from './shear-plan.js';

/** What a shear can do, as far as blanks and plans ask. */
export interface ShearAbility {
  readonly limits: ShearLimits;
  readonly reach: ShearReach;
}

/** Plans for what can be cut, and what of the order no sheet gives. */
export interface Sheared {
  readonly plans: readonly ShearPlan[];
  readonly left: readonly { readonly blank: Blank; readonly count: number; readonly why: LeftWhy }[];
}

const WHY: Readonly<Record<string, LeftWhy>> = {
  'stock-missing': 'no-metal',
  'grain-impossible': 'grain',
  'blank-large': 'too-large',
  'blank-long': 'shear',
  'sheet-long': 'sheet-long',
  'sheet-thick': 'shear',
};

/** Shear plans for the blanks that can be cut at all; `stockProblems` refuses the others instead. */
export function shearBlanks(
  blanks: readonly Blank[],
  rack: Rack,
  { limits, reach }: ShearAbility,
  effort?: ShearEffort,
): Sheared {
  const whole = blanks.map((blank) => {
    const [problem] = stockProblems([blank], rack, reach, 'mm');
    return { blank, why: problem === undefined ? null : (WHY[problem.code] ?? 'too-large') };
  });
  const cut = whole.flatMap(({ blank, why }) => (why === null ? [blank] : []));
  const plans = planShear(cut, rack, limits, effort);
  const never = whole.flatMap(({ blank, why }) =>
    why === null ? [] : [{ blank, why, count: blank.quantity }],
  );
  const short = plans.flatMap(({ missing }) =>
    missing.flatMap(({ part, count }) =>
      cut.flatMap((blank) => (blank.part === part ? [{ blank, count, why: 'stock-short' as const }] : [])),
    ),
  );
  return { plans, left: [...never, ...short] };
}
