// Plans as they are written, replayed in space by bodies of their own; and plans that were spoiled, which have to fail.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { manifold } from '../kit/fold-files.js';
import { bodyOf } from './body.js';
import { parts, planned, possible, type WrittenPart, written } from './parts.js';
import { replay } from './replay.js';
import { SHOPS } from './shops.js';
import type { WrittenStep } from './step.js';

type Shop = (typeof SHOPS)[string];
const ENOUGH = 6;
const MOST = 3; // bends: how long a search takes is no matter here

async function flawsOf(read: { part: WrittenPart; dxf: string }, shop: Shop, steps: readonly WrittenStep[]) {
  const library = await manifold();
  const body = bodyOf(library, read.part, read.dxf);
  return replay({ body, shop, material: read.part.material, library }, steps);
}

test('random plans of all shops go as they are written', async () => {
  let replayed = 0;
  for (const [i, part] of fc.sample(parts, { seed: 7, numRuns: 200 }).entries()) {
    if (replayed === ENOUGH) break;
    const plan = planned(part);
    const shop = Object.values(SHOPS)[i % Object.keys(SHOPS).length] as Shop;
    const bends = plan?.parts[0]?.flat.bends.length ?? 0;
    if (plan === null || bends === 0 || bends > MOST || !possible(plan, shop)) continue;
    const read = written(plan, shop);
    expect(await flawsOf(read, shop, read.part.sequence.operations), JSON.stringify(part)).toEqual([]);
    replayed += 1;
  }
  expect(replayed).toBe(ENOUGH);
});

describe('a plan that was spoiled', () => {
  const shop: Shop = { ...(SHOPS.school as Shop), vise: null };
  const box = planned({
    family: 'open-box',
    length: 200,
    width: 120,
    height: 50,
    stock: { material: 'mild-steel', thickness: 1 },
    bending: { rule: 'k-factor', insideRadius: 1 },
  });
  if (box === null) throw new Error('there is such a box');
  const read = written(box, shop);
  const steps = read.part.sequence.operations;
  const last = steps.length - 1;
  const changed = (change: Partial<WrittenStep>) =>
    steps.map((s, i) => (i === last ? { ...s, ...change } : s));
  const [group] = steps[last]?.tools ?? [];
  const first = async (spoiled: readonly WrittenStep[]) => (await flawsOf(read, shop, spoiled))[0] ?? '';

  test('the plan itself goes', async () => {
    expect(await first(steps)).toBe('');
  });

  test('the whole rack where walls stand', async () => {
    expect(await first(changed({ tools: null }))).toMatch(/meets the fingers/);
  });

  test('fingers pushed into a wall', async () => {
    expect(group).toBeDefined();
    expect(
      await first(
        changed({ tools: [{ ...(group as NonNullable<typeof group>), from: (group?.from ?? 0) + 12 }] }),
      ),
    ).toMatch(/fingers/);
  });

  test('straight off where a wall is higher than the jaw lifts', async () => {
    expect(await first(changed({ takeOff: 'straight' }))).toMatch(/does not come off/);
  });

  test('the leaf set past its stop', async () => {
    expect(await first(changed({ setAngle: 150 }))).toMatch(/set to 150/);
  });

  test('the line under the nose ten millimetres off: the leaf lifts the sheet elsewhere', async () => {
    const sight =
      steps[last]?.sight?.map((l) => l.map(([x, y]) => [x + 10, y + 10] as const) as unknown as typeof l) ??
      null;
    expect(await first(changed({ sight }))).not.toBe('');
  });

  test('a bend left out', async () => {
    expect(await first(steps.slice(0, -1))).toMatch(/never done/);
  });
});
