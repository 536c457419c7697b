import type { PartPlan } from '@tinwright/core';
import type { Pieces } from '@tinwright/core/internal';
import type { Shop } from '../machines/shop.js';
import { otherOrders } from '../sequence/answer/other-orders.js';
import type { Sequence } from '../sequence/answer/plan.js';
import { type Batch, batchOf } from './batch.js';

/** Orders of all parts of a job, and how their bends go together. */
export interface Grouped {
  readonly sequences: readonly Sequence[];
  readonly batch: Batch;
}

/**
 * Orders that go well together: for a part, another one than its cheapest is taken where all pieces of it lose less by it
 * than set-ups of the whole job are saved. Parts are gone through once and again until nothing changes (coordinate descent:
 * the seconds of the job never grow).
 */
export function* grouped(
  parts: readonly PartPlan[],
  cheapest: readonly Sequence[],
  shop: Shop,
): Pieces<Grouped> {
  const first: Grouped = { sequences: cheapest, batch: batchOf(cheapest, shop) };
  // with nothing to set up, or one part alone, there is nothing to save
  if (first.batch.seconds === 0 || cheapest.filter((s) => s.steps.length > 0).length < 2) return first;
  const others: (readonly Sequence[])[] = [];
  for (const [i, part] of parts.entries())
    others.push(yield* otherOrders(part, shop, cheapest[i] as Sequence, first.batch.seconds / part.quantity));
  let best = first;
  for (let changed = true; changed; ) {
    changed = false;
    for (const [i, list] of others.entries())
      for (const other of list) {
        yield;
        const sequences = best.sequences.with(i, other);
        const now = { sequences, batch: batchOf(sequences, shop) };
        if (secondsOf(now, parts, shop) > secondsOf(best, parts, shop) - 1e-6) continue;
        best = now;
        changed = true;
      }
  }
  return best;
}

/** Seconds of a job: of every piece what is no set-up, and the set-ups once. */
function secondsOf({ sequences, batch }: Grouped, parts: readonly PartPlan[], shop: Shop): number {
  const handled = sequences.map(
    // of its seconds, set-ups are shared among the pieces
    (s, i) => (parts[i] as PartPlan).quantity * s.seconds - batchOf([s], shop).apart,
  );
  return batch.seconds + handled.reduce((a, b) => a + b, 0);
}
