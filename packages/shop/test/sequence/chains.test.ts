// Long chains of bends: orders a setter sees at once are found.

import { type Brake, DEFAULT_SHOP, planSequence, verifySequence } from '@tinwright/shop';
import { expect, test, vi } from 'vitest';
import { planned } from '../shops.js';

vi.setConfig({ testTimeout: 600_000 }); // plans by the dozen

const brake = { ...(DEFAULT_SHOP.brake as Brake), length: 914 };

test.each([12, 20, 40])('a zigzag of %d bends of 45 degrees, legs of 130, on a 36 in brake', (n) => {
  const legs = Array.from({ length: n + 1 }, () => 130);
  const angles = Array.from({ length: n }, (_, i) => (i % 2 === 0 ? 45 : -45));
  const part = planned({ family: 'bent-strip', width: 300, legs, angles });
  const shop = { ...DEFAULT_SHOP, brake };
  const { status, steps } = planSequence(part, shop);
  expect(status).toBe('optimal');
  expect(steps).toHaveLength(n);
  expect(verifySequence(part.flat, steps, shop)).toEqual([]);
});
