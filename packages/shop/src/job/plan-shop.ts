import { type Finding, type JobPlan, type PartPlan, revivePlan, type StopSignal } from '@tinwright/core';
import { atOnce, inTurns, type Pieces, sortFindings } from '@tinwright/core/internal';
import type { ShopCheck } from '../checks/check.js';
import { changesPieces, jobFindings } from '../checks/index.js';
import type { Shop } from '../machines/shop.js';
import type { Sequence } from '../sequence/answer/plan.js';
import { SLICE, sequenceSteps } from '../sequence/answer/plan-sequence.js';
import type { Batch } from './batch.js';
import { dieFindings } from './die-findings.js';
import { grouped } from './grouped.js';
import { orderFindings } from './order-findings.js';

/** A job as one shop makes it. */
export interface ShopPlan {
  readonly shop: Shop;
  /** Of every part, in the job's order: the cheapest, or one that goes better with those of other parts. */
  readonly sequences: readonly Sequence[];
  /** The bends of all parts in one order. */
  readonly batch: Batch;
  /** All there is to know before it is made: of the job, of the machines, of the bend orders; by part, worst first. */
  readonly findings: readonly Finding[];
}

/** How a job is planned in a shop. */
export interface PlanShopOptions {
  /** Rules of one's own, after the built-in ones. */
  readonly checks?: readonly ShopCheck[];
  /** How often the whole job is made, 1 by default: set-ups are shared among the pieces of all sets. */
  readonly sets?: number;
  /** Ends the work, with the reason it was aborted for. Asked every few states of a search, and before each finding's changes are tried. */
  readonly signal?: StopSignal;
  /** Called when a part's order is found, with how many of all are. */
  readonly onProgress?: (done: number, of: number) => void;
}

/** Plan the bends of every part of a job in a shop, and hold the job against its machines. Same job, same shop, same plan. */
export function planShop(plan: JobPlan, shop: Shop, options: PlanShopOptions = {}): ShopPlan {
  return atOnce(shopSteps(plan, shop, options), options.signal);
}

/**
 * The same, with room for other work on the way: a page stays alive, and a signal can be aborted.
 * @throws what the signal was aborted for
 */
export function planShopAsync(plan: JobPlan, shop: Shop, options: PlanShopOptions = {}): Promise<ShopPlan> {
  return inTurns(shopSteps(plan, shop, options), SLICE, options.signal);
}

function* shopSteps(
  given: JobPlan,
  shop: Shop,
  { checks = [], sets = 1, signal, onProgress }: PlanShopOptions,
): Pieces<ShopPlan> {
  const plan = revivePlan(given);
  const parts = plan.parts.map((p) => ({ ...p, quantity: p.quantity * sets }));
  const cheapest: Sequence[] = [];
  for (const [i, part] of parts.entries()) {
    cheapest.push(yield* sequenceSteps(part, shop, signal === undefined ? {} : { signal }));
    onProgress?.(i + 1, parts.length);
  }
  const { sequences, batch } = yield* grouped(parts, cheapest, shop);
  const own = sequences.flatMap((s, i) => [
    ...orderFindings(s, shop.assumed),
    ...dieFindings(parts[i] as PartPlan, s, shop),
  ]);
  const order = plan.parts.map((p) => p.name);
  const found = jobFindings(plan, shop, checks);
  const changed = yield* changesPieces(found, plan, shop, checks);
  return {
    shop,
    sequences,
    batch,
    findings: sortFindings([...changed, ...own], order),
  };
}
