// Every order, every side, every station, by plain enumeration: nothing of the search but its rules of play.
import type { PartPlan } from '@tinwright/core';
import { atOnce } from '@tinwright/core/internal';
import { DEFAULT_SHOP, type Shop } from '@tinwright/shop';
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { both, isEmpty, type Mask, NONE, sameMask, union } from '../../src/sequence/part/mask.js';
import { isOpen, type LineStroke } from '../../src/sequence/part/operations.js';
import { planSearch } from '../../src/sequence/search/find-plan.js';
import { problemOf } from '../../src/sequence/search/problem.js';
import type { BendProblem } from '../../src/sequence/search/states.js';
import { pressShop, straight, vDie } from '../press-shop.js';
import { planned, shopWith } from '../shops.js';

vi.setConfig({ testTimeout: 600_000 }); // plans by the dozen

type Position = Parameters<BendProblem['positions']['place']>[0];

/** What can be next: a folded hem is closed at once, and lines that are one come before each of them. */
function open({ work: { operations } }: Pick<BendProblem, 'work'>, done: Mask): readonly LineStroke[] {
  const all = operations.filter((o) => isOpen(o, done));
  const closing = all.filter((o) => o.action === 'close');
  return (closing.length > 0 ? closing : all).toSorted((a, b) => b.steps.length - a.steps.length);
}

/**
 * Least seconds over all plans, or infinity. What is left takes the same whichever way it was come to a state, so each
 * state is played out once.
 */
function cheapestOf(problem: BendProblem): number {
  const { work, positions, contact, gauges } = problem;
  const known = new Map<string, number>();
  const after = (operation: LineStroke, at: Position, done: Mask) =>
    problem.stations.flatMap((station) =>
      (['parent', 'child'] as const).flatMap((held) => {
        const mounting = station.mount(operation, held, done);
        const placing =
          mounting.obstacle === null
            ? positions.place(at, {
                mounting,
                station,
                gauged: gauges.at({ operation, held, station }, done),
              })
            : null;
        return placing === null ? [] : [placing];
      }),
    );
  const rest = (done: Mask, at: Position): number => {
    if (sameMask(done, work.all)) return 0;
    const key = `${done.low} ${done.high} ${at?.id}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let [least, together] = [Infinity, NONE];
    for (const o of open(problem, done)) {
      if (!isEmpty(both(together, o.mask))) continue;
      const found = after(o, at, done);
      if (o.steps.length > 1 && found.length > 0) together = union(together, o.mask);
      if (contact(o, done) !== null) continue;
      for (const { at: next, seconds } of found)
        least = Math.min(least, seconds + rest(union(done, o.mask), next));
    }
    known.set(key, least);
    return least;
  };
  return rest(NONE, null);
}

const problemFor = ({ name, part, quantity, material, mass, flat }: PartPlan, shop: Shop) =>
  problemOf({ name, part, quantity, material, mass, blank: flat.blank.max }, shop);

function agrees(part: PartPlan, shop: Shop): void {
  const found = atOnce(planSearch(problemFor(part, shop)));
  const least = cheapestOf(problemFor(part, shop));
  if (found.moves === null) expect(least).toBe(Infinity);
  else expect(found.cost).toBeCloseTo(least, 6);
}

const RUNS = { numRuns: Math.min(60, Number(process.env.TINWRIGHT_RUNS ?? 30)) };
const press = pressShop([straight(10)], [vDie(8, 10)]);
const stopped = shopWith({ rearStop: 300, rearStopHeight: 15 });
const strips = fc.integer({ min: 1, max: 5 }).chain((n) =>
  fc.record({
    legs: fc.array(fc.integer({ min: 15, max: 90 }), { minLength: n + 1, maxLength: n + 1 }),
    angles: fc.array(fc.constantFrom(90, 45, -45, -90), { minLength: n, maxLength: n }),
  }),
);

describe('strips of up to five bends', () => {
  test('on a leaf brake the search finds what enumeration finds', () => {
    fc.assert(
      fc.property(strips, ({ legs, angles }) => {
        let part: PartPlan;
        try {
          part = planned({ family: 'bent-strip', width: 60, legs, angles });
        } catch {
          return; // folds into itself: no such part
        }
        agrees(part, shopWith());
      }),
      { ...RUNS, seed: 11 },
    );
  });

  test('on one with a rear stop too, which is set anew or left where it is', () => {
    fc.assert(
      fc.property(strips, ({ legs, angles }) => {
        let part: PartPlan;
        try {
          part = planned({ family: 'bent-strip', width: 60, legs, angles });
        } catch {
          return;
        }
        agrees(part, stopped);
      }),
      { ...RUNS, seed: 14 },
    );
  });

  test('on a press brake too', () => {
    fc.assert(
      fc.property(strips, ({ legs, angles }) => {
        let part: PartPlan;
        try {
          part = planned({ family: 'bent-strip', width: 60, legs, angles });
        } catch {
          return;
        }
        agrees(part, press);
      }),
      { ...RUNS, seed: 12 },
    );
  });
});

describe('strips that are alike end for end', () => {
  const halves = fc.record({
    legs: fc.array(fc.integer({ min: 15, max: 90 }), { minLength: 2, maxLength: 3 }),
    middle: fc.integer({ min: 15, max: 120 }),
    over: fc.boolean(),
    turns: fc.array(fc.constantFrom(90, 45, -45, -90), { minLength: 3, maxLength: 3 }),
  });
  test.each([
    ['a leaf brake', shopWith()],
    ['a leaf brake with a rear stop', stopped],
    ['a press brake', press],
  ])('on %s states that are taken for one take the same', (_, shop) => {
    fc.assert(
      fc.property(halves, ({ legs, middle, over, turns }) => {
        const angles = turns.slice(0, legs.length);
        let part: PartPlan;
        try {
          part = planned({
            family: 'bent-strip',
            width: 60,
            legs: [...legs, middle, ...legs.toReversed()],
            angles: [...angles, ...angles.toReversed().map((a) => (over ? -a : a))],
          });
        } catch {
          return; // folds into itself: no such part
        }
        agrees(part, shop);
      }),
      { numRuns: 12, seed: 15 },
    );
  });
});

describe('parts of up to eight steps', () => {
  const boxes = fc.record({
    length: fc.integer({ min: 80, max: 300 }),
    width: fc.integer({ min: 60, max: 200 }),
    height: fc.integer({ min: 15, max: 85 }),
  });
  test('boxes, with their walls of any height, on the machines of the default shop', () => {
    fc.assert(
      fc.property(boxes, (sizes) => agrees(planned({ family: 'open-box', ...sizes }), DEFAULT_SHOP)),
      { numRuns: RUNS.numRuns / 2, seed: 13 },
    );
  });

  test('boxes with a hem and boxes with returns', () => {
    const box = { family: 'open-box', length: 180, width: 120, height: 40 };
    agrees(planned({ ...box, hems: { north: { type: 'closed', length: 10 } } }), shopWith());
    agrees(planned({ ...box, flangeReturn: 8 }), shopWith({ gaps: { end: 10, inner: 6 } }));
    agrees(planned({ family: 'open-box', length: 180, width: 120, height: 40 }), stopped);
  });
});
