// Quick rules against the planner of bends: what they call impossible on a leaf brake has no order of bends.
import { JobError, type PartPlan } from '@tinwright/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Brake, Shop } from '../../src/index.js';
import { findPlan, problemOf } from '../../src/sequence/plan-part.js';
import { partToBend } from '../../src/sequence/plan-sequence.js';
import { BRAKE, planned } from '../shops.js';
import { findingsOf, PRESS, PRESS_SHOP, STRICT, sheet } from './kit.js';

/** Codes that say of a part that no order of bends makes it here, whatever their weight. */
const IMPOSSIBLE = ['channel-deep', 'box-deep'];

const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

const parts: fc.Arbitrary<object> = fc.oneof(
  fc.integer({ min: 2, max: 3 }).chain((n) =>
    fc.record({
      family: fc.constant('bent-strip'),
      width: tenths(20, 200),
      legs: fc.array(tenths(4, 90), { minLength: n + 1, maxLength: n + 1 }),
      angles: fc.array(fc.constantFrom(90, 90, 90, -90, 45, -30), { minLength: n, maxLength: n }),
    }),
  ),
  fc.record({
    family: fc.constant('open-box'),
    length: tenths(40, 300),
    width: tenths(40, 250),
    height: tenths(8, 130),
  }),
  fc.record({
    family: fc.constant('hemmed-channel'),
    length: tenths(60, 400),
    width: tenths(40, 250),
    height: tenths(15, 110),
    hem: fc.constantFrom({ type: 'none' }, { type: 'closed', length: 6 }, { type: 'closed', length: 14 }),
  }),
);

const brakes: fc.Arbitrary<Brake> = fc
  .record({
    beam: fc.constantFrom(0, 10, 35, 60),
    clearHeight: tenths(30, 120),
    leaf: fc.constantFrom(20, 40, 100),
    bed: fc.constantFrom(60, 120),
    foot: fc.constantFrom(36, 60),
  })
  .map(({ beam, clearHeight, leaf, bed, foot }) => ({
    ...BRAKE,
    beam,
    clearHeight,
    leaf: { width: leaf, stop: 135 },
    bed,
    finger: { ...BRAKE.finger, foot },
  }));

const job = fc
  .record({ thickness: fc.constantFrom(0.6, 0.8, 1, 1.2), ratio: fc.constantFrom(0.5, 1, 1.5) })
  .map(({ thickness, ratio }) => sheet(thickness, thickness * ratio));

function planOr(part: object, of: object): PartPlan | null {
  try {
    return planned(part, of);
  } catch (error) {
    if (error instanceof JobError) return null;
    throw error;
  }
}

test('errors about bending, deep channels and deep boxes: the planner finds no order either', () => {
  const seen = new Map<string, number>();
  fc.assert(
    fc.property(parts, job, brakes, (part, of, brake) => {
      const plan = planOr(part, of);
      if (plan === null) return;
      const shop: Shop = { ...STRICT, brake, press: null, vise: null };
      const impossible = findingsOf(plan, shop).filter(
        (f) => (f.severity === 'error' && f.code !== 'blank-large') || IMPOSSIBLE.includes(f.code),
      );
      if (impossible.length === 0) return;
      for (const { code } of impossible) seen.set(code, (seen.get(code) ?? 0) + 1);
      expect(
        findPlan(problemOf(partToBend(plan), shop)).moves,
        impossible.map((f) => f.message).join('; '),
      ).toBeNull();
    }),
    { numRuns: Math.max(250, fc.readConfigureGlobal()?.numRuns ?? 0) },
  );
  for (const code of ['channel-deep', 'box-deep', 'step-narrow', 'flange-short'])
    expect(seen.get(code) ?? 0, code).toBeGreaterThan(5);
});

test('the same on a press brake', () => {
  const seen = new Map<string, number>();
  const presses = fc.record({
    force: fc.constantFrom(5, 20, 200),
    ram: fc.record({ half: fc.constantFrom(15, 30), height: fc.constantFrom(60, 100, 150) }),
    profile: fc.constantFrom('strict' as const, 'usual' as const),
  });
  fc.assert(
    fc.property(parts, job, presses, (part, of, { profile, ...press }) => {
      const plan = planOr(part, of);
      if (plan === null) return;
      const shop: Shop = {
        ...PRESS_SHOP,
        profile,
        press: { ...(PRESS as NonNullable<Shop['press']>), ...press },
      };
      const impossible = findingsOf(plan, shop).filter(
        (f) => (f.severity === 'error' && f.code !== 'blank-large') || IMPOSSIBLE.includes(f.code),
      );
      if (impossible.length === 0) return;
      for (const { code } of impossible) seen.set(code, (seen.get(code) ?? 0) + 1);
      expect(
        findPlan(problemOf(partToBend(plan), shop)).moves,
        impossible.map((f) => f.message).join('; '),
      ).toBeNull();
    }),
    { numRuns: Math.max(150, fc.readConfigureGlobal()?.numRuns ?? 0) },
  );
  for (const code of ['box-deep', 'step-narrow', 'bend-force'])
    expect(seen.get(code) ?? 0, code).toBeGreaterThan(3);
});

test('most parts without an order have a finding that says why', () => {
  let [impossible, told] = [0, 0];
  fc.assert(
    fc.property(parts, job, brakes, (part, of, brake) => {
      const plan = planOr(part, of);
      if (plan === null) return;
      const shop: Shop = { ...STRICT, brake, press: null, vise: null };
      if (findPlan(problemOf(partToBend(plan), shop)).moves !== null) return;
      impossible += 1;
      if (findingsOf(plan, shop).some((f) => f.severity === 'error' || IMPOSSIBLE.includes(f.code)))
        told += 1;
    }),
    { numRuns: 150 },
  );
  expect(impossible).toBeGreaterThan(30);
  expect(told / impossible).toBeGreaterThan(0.8);
});
