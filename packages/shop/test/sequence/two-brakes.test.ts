// A shop with a straight leaf brake and a shorter one with fingers: each bend on the one that does it.
import {
  type BendStep,
  type Brake,
  DEFAULT_SHOP,
  planSequence,
  readShop,
  type Shop,
  verifySequence,
} from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { BRAKE, planned } from '../shops.js';

const STRAIGHT: Brake = { ...BRAKE, name: 'cornice brake', length: 1250, fingers: [1250] };
const PAN: Brake = { ...BRAKE, name: 'pan brake', length: 400 };
const shop: Shop = { ...DEFAULT_SHOP, brake: STRAIGHT, brakes: [PAN], vise: null };
const tray = planned({ family: 'open-box', length: 900, width: 200, height: 40 });
const named = (steps: readonly BendStep[], name: string) =>
  steps.filter((s) => s.machineName === name).flatMap((s) => s.bends);

describe('a tray 900 long, 200 wide, four walls', () => {
  const { status, steps } = planSequence(tray, shop);

  test('its long walls on the straight brake, its short ones between fingers', () => {
    expect(status).toBe('optimal');
    expect(named(steps, 'cornice brake').toSorted()).toEqual(['north', 'south']);
    expect(named(steps, 'pan brake').toSorted()).toEqual(['east', 'west']);
  });

  test('played again, each step on its own machine', () => {
    expect(verifySequence(tray.flat, steps, shop)).toEqual([]);
  });

  test.each([
    ['the straight one', { brakes: [] }],
    ['the one with fingers', { brake: PAN, brakes: [] }],
  ])('%s alone does not make it', (_, only) => {
    expect(planSequence(tray, { ...shop, ...only }).status).toBe('infeasible');
  });

  test('going to the other brake once is counted once', () => {
    const far = { ...shop, costs: { ...shop.costs, walk: shop.costs.walk + 100 } };
    expect(planSequence(tray, far).seconds).toBeCloseTo(planSequence(tray, shop).seconds + 100, 6);
  });
});

test('brakes are told apart by their names', () => {
  const brake = {
    name: 'brake',
    length: 500,
    fingers: [25],
    capacity: [{ material: 'mild-steel', thickness: 1 }],
  };
  expect(() => readShop({ units: 'mm', brake, brakes: [brake] })).toThrow(/brakes/);
  expect(readShop({ units: 'mm', brake, brakes: [{ ...brake, name: 'other' }] }).brakes[0]?.name).toBe(
    'other',
  );
});
