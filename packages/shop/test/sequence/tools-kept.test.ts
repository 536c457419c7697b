// What a plan claims of itself: where no tools are changed it holds for every order, else for those that keep tools on.
import { DEFAULT_SHOP, planSequence } from '@tinwright/shop';
import { expect, test } from 'vitest';
import { planned } from '../shops.js';

test.each([
  [
    'a channel, bent under the whole rack',
    { family: 'bent-strip', width: 80, legs: [40, 90, 40], angles: [90, 90] },
    false,
  ],
  [
    'a box, whose last walls take fewer fingers',
    { family: 'open-box', length: 240, width: 180, height: 40 },
    true,
  ],
])('%s', (_, params, toolsKept) => {
  const { status, steps, ...plan } = planSequence(planned(params), DEFAULT_SHOP);
  expect({ status, toolsKept: plan.toolsKept }).toEqual({ status: 'optimal', toolsKept });
  expect(
    steps.some((s) =>
      (s.tools ?? []).some((g) => g.pieces.length < (DEFAULT_SHOP.brake?.fingers.length ?? 0)),
    ),
  ).toBe(toolsKept);
});
