// Orders of several parts together: what the set-ups of a whole job save may outweigh what one part loses.
import { planJob, readJob } from '@tinwright/core';
import { DEFAULT_SHOP, planSequence, planShop, type Sequence, verifySequence } from '@tinwright/shop';
import { expect, test } from 'vitest';
import { batchOf } from '../../src/job/batch.js';

const strip = (
  name: string,
  width: number,
  legs: readonly number[],
  angles: readonly number[],
  quantity = 1,
) => ({
  name,
  family: 'bent-strip' as const,
  width,
  legs,
  angles,
  quantity,
});

function jobOf(parts: readonly ReturnType<typeof strip>[]) {
  return planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      bending: { rule: 'k-factor', insideRadius: 1 },
      parts,
    }),
  );
}

const settings = ({ steps }: Sequence) => steps.map((s) => s.setAngle).filter((a) => a !== null);

const SHELVES = strip('shelf', 400, [160, 160, 120, 60], [45, 45, -20]);

test('a part gives up its cheapest order where the settings of the job go together then', () => {
  const job = jobOf([
    strip('label', 400, [60, 30, 60, 160], [20, -20, 90]),
    strip('shelf', 80, [160, 30, 120], [20, 20]),
    strip('clip', 400, [60, 30, 120, 60], [30, -45, 45], 3),
  ]);
  const alone = job.parts.map((p) => planSequence(p, DEFAULT_SHOP));
  const { sequences, batch } = planShop(job, DEFAULT_SHOP);
  const [before, after] = [alone.at(-1) as Sequence, sequences.at(-1) as Sequence];
  expect(settings(before)).toEqual([45.5, 45.5]);
  expect(settings(after)).toEqual([30.5, 45.5]);
  // alone its settings take more than the turns they save; beside the others most of them are set already
  const handled = (clip: Sequence) => 3 * clip.seconds - batchOf([clip], DEFAULT_SHOP).apart;
  expect(after.seconds).toBeGreaterThan(before.seconds);
  expect(batch.seconds + handled(after)).toBeLessThan(
    batchOf(alone, DEFAULT_SHOP).seconds + handled(before) - 1,
  );
  expect(after.status).toBe('feasible');
  for (const [i, part] of job.parts.entries())
    expect(verifySequence(part.flat, (sequences[i] as Sequence).steps, DEFAULT_SHOP)).toEqual([]);
});

test('an order that takes the same is turned round for the part beside it, and stays proved', () => {
  const clip = strip('clip', 80, [60, 120, 160], [20, 45], 5);
  const job = jobOf([
    strip('bracket', 80, [60, 160, 30], [-45, 45]),
    clip,
    strip('stop', 400, [60, 120, 30], [-45, 20]),
  ]);
  const [bracket, , stop] = planShop(job, DEFAULT_SHOP).sequences as readonly Sequence[];
  expect(settings(planSequence(job.parts[2] as (typeof job.parts)[number], DEFAULT_SHOP))).toEqual([
    45.5, 20,
  ]);
  expect(settings(stop as Sequence)).toEqual([20, 45.5]);
  expect([bracket?.proved, stop?.proved]).toEqual([true, true]);
});

test('a part alone keeps its cheapest order', () => {
  const job = jobOf([SHELVES]);
  const { sequences } = planShop(job, DEFAULT_SHOP);
  expect(sequences).toEqual(job.parts.map((p) => planSequence(p, DEFAULT_SHOP)));
});

test('two pieces of each of twelve sets are bent as 24 pieces are', () => {
  const made = (quantity: number, sets: number) =>
    planShop(jobOf([strip('shelf', 80, [160, 30, 120, 120], [20, -20, 20], quantity)]), DEFAULT_SHOP, {
      sets,
    }).sequences;
  expect(made(2, 12)).toEqual(made(24, 1));
  expect(made(2, 1)).not.toEqual(made(24, 1));
});
