import type { PartPanel, PartPlan, Path } from '@tinwright/core';
import { changeOf, declaredAt, nearestSize, sizesIn, withValue, wordAdvice } from '@tinwright/core/internal';
import type { BendTrial } from './feasible.js';
import type { MendTrial } from './mend-trial.js';
import type { Mend, Reason } from './plan.js';

const RUNGS = 6; // sizes tried either way for each parameter, before the edge between them is sought
const STEP = 0.1; // mm: the sections of the machine are not known better
const MOST_MENDS = 4;
const MOST_SIZES = 4; // parameters tried, those that shape what is in the way
const MOST_WORDS = 2; // told

/**
 * Values of an impossible part with which it can be bent: sizes, smaller and larger, nearest first; then words.
 * @param changed the part with other parameters; null where it cannot be made
 */
export function partMends(
  { plan, shop, reasons }: MendTrial,
  changed: (params: unknown) => BendTrial | null,
): readonly Mend[] {
  const sizes = sizesIn(plan.params)
    .filter(({ path, given }) => touches(plan, path, given, reasons))
    .slice(0, MOST_SIZES);
  const found = sizes.flatMap(({ path, given }) =>
    // wider may do as well as narrower
    [{ most: given }, { least: given }].flatMap((way): readonly Mend[] => {
      const at = (v: number) => (v === given ? null : changed(withValue(plan.params, path, v)));
      const near = nearestSize(given, (v) => (at(v)?.someGo(shop) ? 0 : null), {
        step: STEP,
        rungs: RUNGS,
        ...way,
      });
      if (near === null || at(near.found)?.planIn(shop) == null) return [];
      return [{ ...partMend(path), given, ...near, unit: unitOf(plan, path) }];
    }),
  );
  const change = ({ given, found: to }: Mend) => changeOf(given as number, to as number);
  return [
    ...found.toSorted((a, b) => change(a) - change(b)).slice(0, MOST_MENDS),
    ...words(plan, (params) => changed(params)?.planIn(shop) != null).slice(0, MOST_WORDS),
  ];
}

const partMend = (path: Path) =>
  ({ of: 'part', parameter: path.join('.'), instead: null, thickness: null }) as const;

const unitOf = ({ family }: PartPlan, path: Path): Mend['unit'] =>
  declaredAt(family.values, path)?.unit === 'deg' ? 'deg' : 'mm';

/** Other words of a list, `corner: open`. */
function words(plan: PartPlan, goes: (params: unknown) => boolean): readonly Mend[] {
  const room = (params: unknown) => (goes(params) ? 0 : null);
  const options = ({ path }: { readonly path: Path }) => declaredAt(plan.family.values, path)?.options ?? [];
  return wordAdvice(plan.params, room, options).flatMap(({ path, given, words: good }) =>
    good.map((found): Mend => ({ ...partMend(path), given, found, bound: 'tried', unit: null })),
  );
}

/** True when a parameter shapes a panel that a reason names, or one that hangs on it: another value gives another bend or outline. */
function touches(plan: PartPlan, path: Path, given: number, reasons: readonly Reason[]): boolean {
  const named = new Set(reasons.flatMap((r) => [r.panel, ...r.bends]));
  const near = (p: PartPanel) => named.has(p.id) || (p.hang !== null && named.has(p.hang.bend.parent));
  const shape = (params: unknown) => {
    try {
      return plan.family
        .part(params, plan.sheet)
        .panels.filter(near)
        .map((p) => JSON.stringify([p.outline, p.hang?.bend.angle]))
        .join('\n');
    } catch {
      return null; // corners leave nothing at this size
    }
  };
  const now = shape(plan.params);
  return [0.97, 1.03].some((f) => {
    const other = shape(withValue(plan.params, path, given * f));
    return other !== null && other !== now;
  });
}
