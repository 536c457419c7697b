// What narrow places ask for in tools taken off, against changes as they are made, one after the other.
import { DEFAULT_COSTS } from '@tinwright/shop';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  chooseTools,
  difference,
  serves,
  type ToolSet,
  toolSetKey,
} from '../../src/sequence/search/fingers.js';
import { narrowingOf } from '../../src/sequence/search/narrowing.js';

const INNER = 6; // mm
const rack = fc.array(fc.constantFrom(10, 15, 20, 25, 30, 50, 100), { minLength: 1, maxLength: 8 });
const stretch = fc
  .record({ most: fc.integer({ min: 10, max: 260 }), cover: fc.integer({ min: 0, max: 100 }) })
  .map(({ most, cover }) => ({ most, least: (most * cover) / 100 }));
const places = fc.array(fc.array(stretch, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 3 });

const flat = (set: ToolSet, rack: readonly number[]) => (set ?? [rack]).flat();

test('however tools are changed on the way to a narrow place, it never takes less than has to come off for it', () => {
  let narrowed = 0;
  fc.assert(
    fc.property(rack, places, (pieces, stops) => {
      let on: ToolSet = null;
      let seconds = 0;
      for (const stretches of stops) {
        const made: ToolSet | 'none' = serves(on, stretches, pieces, INNER)
          ? on
          : chooseTools(on, stretches, pieces, INNER);
        if (made === 'none') return;
        if (toolSetKey(made) !== toolSetKey(on))
          seconds +=
            DEFAULT_COSTS.tools + DEFAULT_COSTS.tool * difference(flat(on, pieces), flat(made, pieces));
        on = made;
      }
      const last = stops.at(-1) ?? [];
      const narrow = Math.max(...last.map((s) => s.most));
      const room = last.reduce((sum, s) => sum + s.most, 0);
      const least = narrowingOf(DEFAULT_COSTS)(null, pieces, { narrow, room });
      if (least > 0) narrowed += 1;
      expect(least).toBeLessThanOrEqual(seconds + 1e-9);
    }),
  );
  expect(narrowed).toBeGreaterThan(0);
});

test('a rack of 10, 15, 20 and 100 in a place of 30: two pieces stay, two come off', () => {
  const { tools, tool } = DEFAULT_COSTS;
  const narrowing = narrowingOf(DEFAULT_COSTS);
  expect(narrowing(null, [100, 20, 15, 10], { narrow: 30, room: 30 })).toBe(tools + 2 * tool);
  expect(narrowing([[10, 15]], [100, 20, 15, 10], { narrow: 30, room: 30 })).toBe(0);
  // pieces that only stand otherwise take the time of a change, and no piece's
  expect(narrowing([[10, 15]], [100, 20, 15, 10], { narrow: 20, room: 40 })).toBe(tools);
});
