// A bend order looked for in slices: others have their turn, and it can be ended.

import { DEFAULT_SHOP, planSequence, planSequenceAsync } from '@tinwright/shop';
import { expect, test } from 'vitest';
import { planned } from '../shops.js';

const legs = Array.from({ length: 8 }, () => 60);
const angles = legs.slice(1).map((_, i) => (i % 3 === 0 ? -30 : 30));
const part = planned({ family: 'bent-strip', width: 80, legs, angles });

test('in slices it is the same plan, and timers run meanwhile', async () => {
  let turns = 0;
  const timer = setInterval(() => {
    turns += 1;
  });
  const seen: number[] = [];
  const found = await planSequenceAsync(part, DEFAULT_SHOP, { onProgress: (s) => seen.push(s) });
  clearInterval(timer);
  expect(found).toEqual(planSequence(part, DEFAULT_SHOP));
  expect(turns).toBeGreaterThan(0);
  expect(seen.at(-1)).toBeGreaterThanOrEqual(found.seconds - 1e-6);
});

test('an aborted signal ends it with its reason', async () => {
  const stop = new AbortController();
  const looked = planSequenceAsync(part, DEFAULT_SHOP, {
    signal: stop.signal,
    onProgress: () => stop.abort(new Error('another part')),
  });
  await expect(looked).rejects.toThrow('another part');
});
