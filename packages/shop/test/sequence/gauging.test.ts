// A stop set to another distance, and a line without a stop, cost what the shop says; everything else here costs nothing.
import {
  type BendStep,
  DEFAULT_COSTS,
  planSequence,
  readShop,
  type Sequence,
  type Shop,
} from '@tinwright/shop';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pressShop, straight, vDie } from '../press-shop.js';
import { planned, shopWith } from '../shops.js';

const [GAUGE, LINE] = [7, 3];
const FREE = Object.fromEntries(Object.keys(DEFAULT_COSTS).map((k) => [k, 0]));
const costing = (shop: Shop, costs: object): Shop => ({
  ...shop,
  costs: { ...DEFAULT_COSTS, ...FREE, ...costs },
});
const brake = shopWith({ rearStop: 400 });
const press = pressShop([straight(10)], [vDie(8, 10)]);

/** What a step page tells to set the stop to, in twentieths of a millimetre; null for a line, undefined for neither. */
function told({ press: set, stopDistance, action }: BendStep): number | null | undefined {
  if (action === 'close') return undefined;
  const distance = set === null ? stopDistance : set.gauge;
  return distance === null ? null : Math.round(distance * 20);
}

/** Seconds of the stops and lines that a plan's pages tell. */
function toldSeconds({ steps }: Sequence): number {
  let [on, seconds] = [null as number | null, 0];
  for (const to of steps.map(told)) {
    if (to === undefined) continue;
    if (to === null) seconds += LINE;
    else if (on !== null && on !== to) seconds += GAUGE;
    on = to ?? on;
  }
  return seconds;
}

const strips = fc.integer({ min: 1, max: 4 }).chain((n) =>
  fc.record({
    legs: fc.array(fc.constantFrom(30, 40, 55, 70), { minLength: n + 1, maxLength: n + 1 }),
    angles: fc.array(fc.constantFrom(90, 45, -45, -90), { minLength: n, maxLength: n }),
  }),
);

test.each([
  ['a leaf brake with a rear stop', brake],
  ['a press brake', press],
])('on %s a plan takes what its pages tell to be set', (_, shop) => {
  const costly = costing(shop, { gauge: GAUGE, line: LINE });
  fc.assert(
    fc.property(strips, (sizes) => {
      let part: ReturnType<typeof planned>;
      try {
        part = planned({ family: 'bent-strip', width: 60, ...sizes });
      } catch {
        return; // folds into itself: no such part
      }
      const plan = planSequence(part, costly);
      if (plan.status === 'infeasible') return;
      expect(plan.seconds).toBeCloseTo(toldSeconds(plan), 6);
      expect(plan.status).toBe('optimal');
    }),
    { numRuns: Math.min(40, Number(process.env.TINWRIGHT_RUNS ?? 15)) },
  );
});

describe('a box with four walls of one height on a press brake', () => {
  const box = planned({ family: 'open-box', length: 160, width: 120, height: 30 });
  const settings = (costs: object) => planSequence(box, costing(press, costs)).steps.map(told);

  test('is bent with one setting: every wall lies against the gauge by its edge', () => {
    expect(new Set(settings({ gauge: GAUGE })).size).toBe(1);
  });

  test('a channel of two lengths takes two settings or a turn, whichever the shop calls less', () => {
    const channel = planned({ family: 'bent-strip', width: 60, legs: [30, 80, 50], angles: [90, 90] });
    const order = (costs: object) => planSequence(channel, costing(press, { ...costs, slide: 1 }));
    expect(order({ gauge: 1 }).seconds).toBe(2);
    expect(new Set(order({ gauge: 1 }).steps.map(told)).size).toBe(2);
  });
});

test('without a rear stop every bend of a leaf brake goes by its line', () => {
  const strip = planned({ family: 'bent-strip', width: 60, legs: [40, 60, 40], angles: [45, 45] });
  expect(planSequence(strip, costing(shopWith(), { line: LINE })).seconds).toBe(2 * LINE);
});

test('what a file does not say is assumed, and said to be', () => {
  const said = readShop({ units: 'mm', name: 'garden', costs: { gauge: 40 } });
  expect(said.costs).toMatchObject({ gauge: 40, line: DEFAULT_COSTS.line });
  expect(said.assumed).toContain('costs.line');
  expect(said.assumed).not.toContain('costs.gauge');
});
