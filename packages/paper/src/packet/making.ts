import type { Finding, JobPlan, PartPlan } from '@tinwright/core';
import {
  DEFAULT_SHOP,
  jobOperations,
  type Operations,
  type PlanShopOptions,
  planShop,
  type Sequence,
  type Shop,
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

/**
 * How a job is made in a shop: bend orders, operations, what to know. A shop is assumed where none is given.
 * @param options how often the whole job is made, and who hears how far it is
 */
export function makingOf(
  plan: JobPlan,
  given: Shop | null,
  options: Pick<PlanShopOptions, 'sets' | 'onProgress'> = {},
): Making {
  const shop = given ?? HAND_SHOP;
  const assumed = given === null;
  const most = MOST[assumed ? 'assumed' : 'given'];
  const parts = plan.parts.filter((p) => stepsOf(p) <= most);
  const planned = planShop({ ...plan, parts }, shop, options);
  const sequences = new Map<string, Sequence>(planned.sequences.map((s) => [s.part, s]));
  const findings = parts.length === plan.parts.length ? planned.findings : jobFindings(plan, shop);
  return { shop, assumed, sequences, operations: jobOperations(plan, sequences), findings };
}

const stepsOf = ({ flat }: PartPlan): number =>
  flat.bends.reduce((sum, b) => sum + (b.hem === null || b.hem === 'wired' || b.hem === 'curl' ? 1 : 2), 0);
