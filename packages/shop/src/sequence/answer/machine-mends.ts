import type { PartPlan, Wording } from '@tinwright/core';
import { DEFAULT_SHOP } from '../../machines/default-shop.js';
import type { Brake, Shop, Vise } from '../../machines/shop.js';
import type { Move } from '../search/states.js';
import { feasible, mountable } from './feasible.js';
import type { Mend, Reason } from './plan.js';

const NARROW = 20; // mm, a leaf without its bars; usual, from memory
const PLAY = 1; // mm more than the least that is missing

/** A shop with one thing changed, and that thing in words. */
interface Change {
  readonly shop: Shop;
  readonly message: Wording;
}

/** Machines, or ways to set them up, with which an impossible part can be bent: each tried before it is said. */
export function machineMends(
  plan: PartPlan,
  shop: Shop,
  failed: readonly Move[],
  reasons: readonly Reason[],
): readonly Mend[] {
  return [...brakeChanges(shop, reasons), ...viseChanges(plan, shop)]
    .filter((c) => mountable(plan, plan.params, c.shop, failed) && feasible(plan, plan.params, c.shop))
    .map(({ message }) => ({ parameter: '', given: null, found: null, message }));
}

function brakeChanges(shop: Shop, reasons: readonly Reason[]): readonly Change[] {
  const { brake } = shop;
  if (brake === null) return [];
  const change = (more: Partial<Brake>, message: Wording): Change => ({
    shop: { ...shop, brake: { ...brake, ...more } },
    message,
  });
  const missing = (code: Reason['code']): number | null => {
    const found = reasons.filter((r) => r.code === code).map((r) => r.by ?? 0);
    return found.length === 0 ? null : Math.max(...leastByBend(reasons, code)) + PLAY;
  };
  const [beam, opening, hook, bare, length] = (['beam', 'opening', 'hook', 'fingers', 'length'] as const).map(
    missing,
  );
  const clear = Math.ceil(brake.clearHeight + (beam ?? 0));
  const lift = Math.ceil(brake.opening + (opening ?? 0));
  const foot = Math.floor(brake.finger.foot - (hook ?? 0));
  const gap = Math.ceil(brake.gaps.end + (bare ?? 0));
  const long = Math.ceil(brake.length + (length ?? 0));
  return [
    ...(beam === null
      ? []
      : [change({ clearHeight: clear }, (say) => `a brake with ${say.least(clear)} clear under its beam`)]),
    ...(opening === null
      ? []
      : [change({ opening: lift }, (say) => `a brake whose jaw lifts ${say.least(lift)}`)]),
    ...(hook === null || foot <= brake.finger.upright
      ? []
      : [
          change(
            { finger: { ...brake.finger, foot } },
            (say) => `fingers with a foot of ${say.most(foot)} or less`,
          ),
        ]),
    ...(bare === null
      ? []
      : [
          change(
            { gaps: { ...brake.gaps, end: gap } },
            (say) => `a line left bare for ${say.least(gap)} at its ends, dressed by hand afterwards`,
          ),
        ]),
    ...(length === null ? [] : [change({ length: long }, (say) => `a brake ${say.least(long)} long`)]),
    ...(brake.leaf.width <= NARROW
      ? []
      : [
          change(
            { leaf: { ...brake.leaf, width: NARROW } },
            (say) => `the leaf without its bars, ${say.size(NARROW)} wide`,
          ),
        ]),
  ];
}

/** For each bend with a reason of this kind, the least by which a way of holding it fails. */
function leastByBend(reasons: readonly Reason[], code: Reason['code']): readonly number[] {
  const bends = [...new Set(reasons.map((r) => r.bends.join('+')))];
  return bends.flatMap((b) => {
    const found = reasons.filter((r) => r.code === code && r.bends.join('+') === b).map((r) => r.by ?? 0);
    return found.length === 0 ? [] : [Math.min(...found)];
  });
}

const NO_VISE = DEFAULT_SHOP.vise as Vise; // what a shop without one might get

/** Bars in the vise as long as the longest line, or a vise where there is none. */
function viseChanges({ flat }: PartPlan, shop: Shop): readonly Change[] {
  const vise = shop.vise ?? NO_VISE;
  const lengths = flat.bends.map(({ line: [a, b] }) => Math.hypot(b[0] - a[0], b[1] - a[1]));
  const jaws = Math.ceil(Math.max(...lengths));
  if (shop.vise !== null && jaws <= vise.jaws) return [];
  return [
    {
      shop: { ...shop, vise: { ...vise, jaws } },
      message: (say) =>
        shop.vise === null
          ? `a vise with folding bars ${say.least(jaws)} long`
          : `folding bars ${say.least(jaws)} long in the vise`,
    },
  ];
}
