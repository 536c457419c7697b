// What has to hold between the plans of parts, or shops, that are alike.

import {
  DEFAULT_SHOP,
  planSequence,
  type Sequence,
  type Shop,
  type Vise,
  verifySequence,
} from '@tinwright/shop';
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { planned, shopWith } from '../shops.js';

vi.setConfig({ testTimeout: 600_000 }); // plans by the dozen

const anyBox = fc.record({
  family: fc.constant('open-box'),
  length: fc.integer({ min: 12, max: 30 }).map((n) => 10 * n),
  width: fc.integer({ min: 12, max: 30 }).map((n) => 10 * n),
  height: fc.integer({ min: 15, max: 85 }),
  flangeReturn: fc.option(fc.integer({ min: 8, max: 14 }), { nil: undefined }),
});
const anyStrip = fc.record({
  family: fc.constant('bent-strip'),
  width: fc.integer({ min: 30, max: 200 }),
  legs: fc.array(fc.integer({ min: 12, max: 80 }), { minLength: 4, maxLength: 4 }),
  angles: fc.array(fc.constantFrom(-90, -45, 30, 60, 90), { minLength: 3, maxLength: 3 }),
});
const anyPart = fc.oneof(anyBox, anyStrip);

/** The plan, or null for parts that do not exist at these sizes. */
function planOf(params: object, shop: Shop): Sequence | null {
  try {
    const part = planned(JSON.parse(JSON.stringify(params)));
    const sequence = planSequence(part, shop);
    expect(verifySequence(part.flat, sequence.steps, shop)).toEqual(
      sequence.status === 'infeasible' && part.flat.bends.length > 0 ? expect.anything() : [],
    );
    return sequence;
  } catch (error) {
    if (error instanceof Error && error.name === 'JobError') return null;
    throw error;
  }
}

const seconds = (s: Sequence | null) => (s === null || s.status === 'infeasible' ? Infinity : s.seconds);
const runs = { numRuns: Math.min(10, Number(process.env.TINWRIGHT_RUNS ?? 3)) };

test('more room under the beam never takes longer', () => {
  fc.assert(
    fc.property(anyPart, fc.constantFrom(30, 50, 75), (part, clearHeight) => {
      const low = seconds(planOf(part, shopWith({ clearHeight })));
      expect(seconds(planOf(part, shopWith({ clearHeight: clearHeight + 20 })))).toBeLessThanOrEqual(
        low + 1e-6,
      );
    }),
    runs,
  );
});

test('a longer foot of the fingers never makes a part that could not be bent', () => {
  fc.assert(
    fc.property(anyStrip, (part) => {
      const finger = { foot: 60, upright: 35, noseAngle: 45, noseRadius: 0.5 };
      const short = planOf(part, shopWith({ finger }));
      const long = planOf(part, shopWith({ finger: { ...finger, foot: 75, upright: 50 }, beam: 50 }));
      if (short?.status === 'infeasible') expect(long?.status).toBe('infeasible');
    }),
    runs,
  );
});

test('a part and its mirror image take the same', () => {
  fc.assert(
    fc.property(anyStrip, (part) => {
      const mirrored = { ...part, legs: part.legs.toReversed(), angles: part.angles.toReversed() };
      expect(seconds(planOf(mirrored, shopWith()))).toBe(seconds(planOf(part, shopWith())));
    }),
    runs,
  );
});

test('a part turned over takes the same', () => {
  fc.assert(
    fc.property(anyStrip, (part) => {
      const over = { ...part, angles: part.angles.map((a) => -a) };
      expect(seconds(planOf(over, shopWith()))).toBeCloseTo(seconds(planOf(part, shopWith())), 6);
    }),
    runs,
  );
});

test('a box with length and width changed round takes the same', () => {
  fc.assert(
    fc.property(anyBox, (part) => {
      const round = { ...part, length: part.width, width: part.length };
      expect(seconds(planOf(round, shopWith()))).toBeCloseTo(seconds(planOf(part, shopWith())), 6);
    }),
    runs,
  );
});

test('another machine in the shop never makes it longer', () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const alone = shopWith();
      const vise = { ...(DEFAULT_SHOP.vise as Vise), capacity: alone.brake?.capacity ?? [] };
      expect(seconds(planOf(part, { ...alone, vise }))).toBeLessThanOrEqual(
        seconds(planOf(part, alone)) + 1e-6,
      );
    }),
    runs,
  );
});

test('the same part in the same shop, the same plan', () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      expect(JSON.stringify(planOf(part, shopWith()))).toBe(JSON.stringify(planOf(part, shopWith())));
    }),
    runs,
  );
});
