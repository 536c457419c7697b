import type { PartPlan, Path } from '@tinwright/core';
import { type Leaf, sizeAdvice } from '@tinwright/core/internal';
import { thicknessLimit } from '../../machines/capacity.js';
import { DEFAULT_SHOP } from '../../machines/default-shop.js';
import { gaugesLess } from '../../machines/gauges.js';
import type { Brake, Shop, Vise } from '../../machines/shop.js';
import { feasible, someFeasible } from './feasible.js';
import type { Mend, Reason } from './plan.js';

const NARROW = 20; // mm, a leaf without its bars; usual, from memory
const LONGEST_BARS = 600; // mm of folding bars in a vise; judgement
const STEP = 1; // mm

/** A value of a machine that may be another, where a reason has one of these codes, and how far it may go. */
interface Value {
  readonly path: Path;
  readonly codes: readonly Reason['code'][];
  readonly most: (plan: PartPlan, given: number) => number;
}

const longestLine = ({ flat }: PartPlan): number =>
  Math.max(0, ...flat.bends.map(({ line: [a, b] }) => Math.hypot(b[0] - a[0], b[1] - a[1])));

const VALUES: readonly Value[] = [
  { path: ['brake', 'clearHeight'], codes: ['beam', 'fingers'], most: (_, v) => 3 * v },
  { path: ['brake', 'opening'], codes: ['opening', 'put-in', 'take-off'], most: (_, v) => 3 * v },
  { path: ['brake', 'finger', 'foot'], codes: ['fingers', 'put-in', 'take-off'], most: (_, v) => v },
  // what stays bare at both ends may not be the line itself
  { path: ['brake', 'gaps', 'end'], codes: ['fingers'], most: (plan) => longestLine(plan) / 4 },
  { path: ['brake', 'length'], codes: ['length'], most: () => 4000 },
];

/** Machines, or ways to set them up, with which an impossible part can be bent: each tried before it is told. */
export function machineMends(
  plan: PartPlan,
  shop: Shop,
  cores: readonly (readonly string[])[],
  reasons: readonly Reason[],
): readonly Mend[] {
  const works = (other: Shop) =>
    someFeasible(plan, plan.params, other, cores) && feasible(plan, plan.params, other);
  const codes = new Set(reasons.map((r) => r.code));
  const leaves = VALUES.flatMap(({ path, codes: own }): readonly Leaf<number>[] => {
    const given = path.reduce<unknown>((v, k) => (v as Record<string, unknown> | null)?.[k], shop);
    return own.some((c) => codes.has(c)) && typeof given === 'number' ? [{ path, given }] : [];
  });
  const most = ({ path, given }: Leaf<number>) =>
    (VALUES.find((v) => v.path === path) as Value).most(plan, given);
  const advice = sizeAdvice(
    shop,
    (other) => (other !== shop && possible(other as Shop) && works(other as Shop) ? 0 : null),
    (leaf) => ({ step: STEP, rungs: 5, most: most(leaf) }),
    leaves,
  );
  return [
    ...advice.map(
      ({ path, given, found, bound }): Mend => ({
        of: 'machine',
        parameter: path.join('.'),
        given,
        found,
        bound,
        thickness: null,
      }),
    ),
    ...withoutBars(plan, shop, works),
    ...longerBars(plan, shop, works),
  ];
}

/** A foot ends behind the upright. */
const possible = ({ brake }: Shop) => brake === null || brake.finger.foot > brake.finger.upright;

/** The leaf without its bars takes two gauges less. Source: a 4 ft brake's printed manual. */
function withoutBars(plan: PartPlan, shop: Shop, works: (shop: Shop) => boolean): readonly Mend[] {
  const { brake } = shop;
  if (brake === null || brake.leaf.width <= NARROW) return [];
  const capacity = brake.capacity.map((c) => ({ ...c, thickness: gaugesLess(c.thickness, 2) }));
  const bare: Brake = { ...brake, capacity, leaf: { ...brake.leaf, width: NARROW } };
  if (!works({ ...shop, brake: bare })) return [];
  const { thickness } = thicknessLimit(capacity, plan.material);
  const given = brake.leaf.width;
  return [{ of: 'machine', parameter: 'brake.leaf.width', given, found: NARROW, bound: 'most', thickness }];
}

const NO_VISE = DEFAULT_SHOP.vise as Vise; // what a shop without one might get

/** Bars in the vise as long as the longest line, or a vise where there is none. */
function longerBars(plan: PartPlan, shop: Shop, works: (shop: Shop) => boolean): readonly Mend[] {
  const vise = shop.vise ?? NO_VISE;
  const jaws = Math.ceil(longestLine(plan));
  if ((shop.vise !== null && jaws <= vise.jaws) || jaws > LONGEST_BARS) return [];
  if (!works({ ...shop, vise: { ...vise, jaws } })) return [];
  const given = shop.vise?.jaws ?? null;
  return [{ of: 'machine', parameter: 'vise.jaws', given, found: jaws, bound: 'least', thickness: null }];
}
