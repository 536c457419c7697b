// Back gauge and rear stop as bodies: an edge is gauged where a finger finds room, else the line is gone by. Closed forms by hand.
import { DEFAULT_SHOP, planSequence, type Shop, verifySequence } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { partToBend } from '../../src/sequence/answer/planned-sequence.js';
import type { HeldSide } from '../../src/sequence/part/line.js';
import { maskOf } from '../../src/sequence/part/mask.js';
import { problemOf } from '../../src/sequence/search/problem.js';
import { pressShop, straight, vDie } from '../press-shop.js';
import { planned } from '../shops.js';

const PRESS = pressShop([straight(6)], [vDie(8, 6)]);
const finger = (more: object): Shop => {
  const { press } = PRESS;
  if (press === null) throw new Error('there is a press');
  const { backGauge } = press;
  return {
    ...PRESS,
    press: { ...press, backGauge: { ...backGauge, finger: { ...backGauge.finger, ...more } } },
  };
};

/** What lies against the stop when the last bend of a strip is made, the others done, with its first legs held. */
function touched(legs: readonly number[], angles: readonly number[], shop: Shop, width = 80) {
  const part = planned({ family: 'bent-strip', width, legs, angles });
  const problem = problemOf(partToBend(part), shop);
  const { steps, operations, tree } = problem.work;
  const last = tree.panels.findIndex((p) => p.id === `leg-${legs.length}`);
  const operation = operations.find((o) => o.panels.length === 1 && o.panels[0] === last);
  const [station] = problem.stations;
  if (operation === undefined || station === undefined) throw new Error('there is such a bend');
  const done = maskOf(steps.filter((s) => s.panel !== last).map((s) => s.index));
  const held: HeldSide = 'parent';
  return problem.gauges.touches({ operation, held, station }, done);
}

describe('a wall that hangs down at the gauge', () => {
  // rising about the point its outside moves back by d (1 / cos h - 1) as long as it hangs past the height of the finger
  test('40 deep at 60: it would push the finger back by 25', () => {
    expect(touched([40, 60, 60], [-90, 90], PRESS)).toBeNull();
  });

  test('6 deep: it is up and off before', () => {
    expect(touched([6, 60, 60], [-90, 90], PRESS)).toMatchObject({ by: 'outside' });
  });

  test('standing up it leans away as it rises', () => {
    expect(touched([40, 60, 60], [90, 90], PRESS)).toEqual({ panel: 'leg-1', by: 'outside', at: 40 });
  });
});

describe('a return that stands out behind a wall', () => {
  // its underside is a thickness lower than the wall is high
  test.each([
    [8.5, 8, null],
    [10, 8, 'outside'],
    [10, 12, null],
    [14, 12, 'outside'],
  ])('on a wall of %d, a finger %d high: %s', (wall, over, by) => {
    expect(touched([20, wall, 60, 60], [-90, 90, 90], finger({ over }))?.by ?? null).toBe(by);
  });
});

test('a plan gauges what it can, and its replay finds the fingers free', () => {
  const part = planned({ family: 'bent-strip', width: 120, legs: [40, 60, 60], angles: [-90, 90] });
  const { status, steps } = planSequence(part, PRESS);
  expect(status).toBe('optimal');
  expect(verifySequence(part.flat, steps, PRESS)).toEqual([]);
  expect(steps.every((s) => (s.touches === null) === (s.press?.gauge === null))).toBe(true);
});

test('a finger where a wall hangs at the gauge is found by the replay', () => {
  const part = planned({ family: 'bent-strip', width: 120, legs: [40, 60, 60], angles: [90, 90] });
  const { steps } = planSequence(part, PRESS);
  const [, last] = steps;
  if (last?.press == null || last.touches === null) throw new Error('it is gauged');
  expect(verifySequence(part.flat, steps, PRESS)).toEqual([]);
  const nearer = { ...last, press: { ...last.press, gauge: (last.press.gauge ?? 0) - 3 } };
  expect(verifySequence(part.flat, [steps[0] as typeof last, nearer], PRESS)[0]?.message).toMatch(
    /mm into the back gauge/,
  );
});

describe('the rear stop of a leaf brake', () => {
  const shop = (rearStopHeight: number | null): Shop => ({
    ...DEFAULT_SHOP,
    vise: null,
    brake: { ...(DEFAULT_SHOP.brake as NonNullable<Shop['brake']>), rearStop: 400, rearStopHeight },
  });

  test('a return over it: free where it is lower, else the line is gone by; without a height it is no body', () => {
    const at = (height: number | null) => touched([20, 30, 60, 60], [-90, 90, 90], shop(height))?.by ?? null;
    expect(at(null)).toBe('outside');
    expect(at(28)).toBe('outside');
    expect(at(30)).toBeNull();
  });

  test.each([null, 12])(
    'of height %s lies behind the feet of the fingers: an edge under them is gone by its line',
    (height) => {
      const { brake } = shop(height);
      const foot = brake?.finger.foot ?? Number.NaN;
      const setBack = 2; // R + T: the hinge is where the outsides meet, the nose that far behind it
      const at = (behind: number) => touched([behind + setBack, 60], [90], shop(height))?.by ?? null;
      expect(at(foot + 0.1)).toBe('edge');
      expect(at(foot - 0.1)).toBeNull();
    },
  );
});
