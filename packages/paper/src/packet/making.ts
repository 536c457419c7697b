import type { Finding, JobPlan, PartPlan } from '@tinwright/core';
import {
  DEFAULT_SHOP,
  jobOperations,
  type Operations,
  type PlanShopOptions,
  planShop,
  planShopAsync,
  type Sequence,
  type Shop,
  type ShopPlan,
} from '@tinwright/shop';
import { jobFindings } from '@tinwright/shop/internal';

/** What is known of how the job is made in a shop. */
export interface Making {
  readonly shop: Shop;
  /** True where no shop was given. */
  readonly assumed: boolean;
  readonly sequences: ReadonlyMap<string, Sequence>;
  readonly operations: Operations;
  readonly findings: readonly Finding[];
}

/** What is assumed of a shop: it works by hand, without a cutting table. */
const HAND_SHOP: Shop = { ...DEFAULT_SHOP, table: null };

/** Steps of a part that its bend order is looked for, a hem is two: an assumed shop is not worth a long search. */
const MOST = { given: 60, assumed: 24 } as const;

/** How a making is planned: how often the whole job is made, and who hears how far it is. */
export type MakingOptions = Pick<PlanShopOptions, 'sets' | 'onProgress'>;

/**
 * How a job is made in a shop: bend orders, operations, what to know. A shop is assumed where none is given.
 * @param options how often the whole job is made, and who hears how far it is
 */
export function makingOf(plan: JobPlan, given: Shop | null, options: MakingOptions = {}): Making {
  const { asked, shop } = askedOf(plan, given);
  return making(plan, given, planShop(asked, shop, options));
}

/** The same, with room for other work on the way. */
export async function makingOfAsync(
  plan: JobPlan,
  given: Shop | null,
  options: MakingOptions = {},
): Promise<Making> {
  const { asked, shop } = askedOf(plan, given);
  return making(plan, given, await planShopAsync(asked, shop, options));
}

/** The parts whose bend order is looked for, and where. */
function askedOf(plan: JobPlan, given: Shop | null): { readonly asked: JobPlan; readonly shop: Shop } {
  const most = MOST[given === null ? 'assumed' : 'given'];
  return {
    asked: { ...plan, parts: plan.parts.filter((p) => stepsOf(p) <= most) },
    shop: given ?? HAND_SHOP,
  };
}

function making(plan: JobPlan, given: Shop | null, planned: ShopPlan): Making {
  const { shop } = planned;
  const sequences = new Map<string, Sequence>(planned.sequences.map((s) => [s.part, s]));
  const findings = sequences.size === plan.parts.length ? planned.findings : jobFindings(plan, shop);
  return { shop, assumed: given === null, sequences, operations: jobOperations(plan, sequences), findings };
}

const stepsOf = ({ flat }: PartPlan): number =>
  flat.bends.reduce((sum, b) => sum + (b.hem === null || b.hem === 'wired' || b.hem === 'curl' ? 1 : 2), 0);
