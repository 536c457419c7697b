// Finished parts round the fingers: some are drawn off straight, some tilted, some only with the fingers in them.

import { type Brake, DEFAULT_SHOP, planSequence, type Shop } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { rectangle } from '../../src/sweep/polygon.js';
import { hasWayOut } from '../../src/sweep/way-out.js';
import { planned, shopWith } from '../shops.js';

const alone: Shop = { ...DEFAULT_SHOP, vise: null };
const last = (length: number, width: number, height: number, shop: Shop) =>
  planSequence(planned({ family: 'open-box', length, width, height }), shop).steps.at(-1);

describe('boxes on the brake of the default shop: foot 36, jaw lifts 32, 100 clear', () => {
  test.each([
    [60, 60, 80, 'with-fingers'],
    [50, 50, 98, 'with-fingers'],
    [80, 80, 90, 'tilted'],
    [200, 200, 90, 'tilted'],
    [200, 120, 30, 'straight'],
  ] as const)('%d x %d, %d deep: %s', (length, width, height, way) => {
    expect(last(length, width, height, alone)?.takeOff).toBe(way);
  });

  test('a jaw that lifts over the walls lets every box go straight', () => {
    const brake = { ...(DEFAULT_SHOP.brake as Brake), opening: 110 };
    expect(last(60, 60, 80, { ...alone, brake })?.takeOff).toBe('straight');
  });

  test('fingers loosened from the jaw cost what changing them costs, twice', () => {
    const step = last(60, 60, 80, alone);
    const { tools, tool, bend, slide, turn180, line } = DEFAULT_SHOP.costs;
    const plan = planSequence(planned({ family: 'open-box', length: 60, width: 60, height: 80 }), alone);
    const before = plan.steps.at(-2)?.seconds ?? 0;
    const pieces = step?.tools?.flatMap((g) => g.pieces).length ?? 0;
    expect((step?.seconds ?? 0) - before).toBeCloseTo(
      slide + turn180 + bend + line + tools + tool * pieces,
      6,
    );
  });
});

test('a channel slides out along the line', () => {
  const { steps } = planSequence(
    planned({ family: 'bent-strip', width: 80, legs: [60, 100, 60], angles: [90, 90] }),
    shopWith(),
  );
  expect(steps.map((s) => s.takeOff)).toEqual(['straight', 'along']);
});

describe('an L with one leg up, drawn round a thin foot: goes where the foot is no longer than 2 (g - 0.41 T)', () => {
  // worst at 45 degrees; derived. g: from the underside of the lifted foot to the bed
  const goes = (foot: number, g: number, deep = 120) => {
    const [base, leg] = [rectangle(-deep, -1, 0, 0), rectangle(-deep, -1, 1 - deep, 150)];
    const upright = rectangle(-foot - 1, 0.7, -foot, 600);
    const still = [rectangle(-foot - 1, 0, -1, 0.7), upright, rectangle(-2 * deep - 200, -g - 400, 400, -g)];
    return hasWayOut({
      body: [base, leg].map((piece) => ({ piece, against: still })),
      past: -1,
      down: g,
    });
  };
  test.each([30, 40])('jaw lifted %d mm', (g) => {
    const most = 2 * (g - 0.41);
    expect(goes(most - 8, g)).toBe(true);
    expect(goes(most + 4, g)).toBe(false);
  });

  test.each([600, 1400])('%d mm deep it goes as far as it is deep', (deep) => {
    expect(goes(50, 32, deep)).toBe(true);
  });
});
