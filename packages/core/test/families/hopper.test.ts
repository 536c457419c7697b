import { planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';

const plan = (family: string, part: object) =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'galvanised-steel', thickness: 0.8 },
      bending: { rule: 'k-factor', insideRadius: 1 },
      parts: [{ name: 'part', family, bottom: { length: 120, width: 90 }, depth: 70, flare: 25, ...part }],
    } as unknown),
  ).parts[0];

// the pan's stretch-out is held to a published one elsewhere
test('a hopper is the pan with folded corners less its throat', () => {
  const hopper = plan('hopper', { throat: { length: 90, width: 60 } });
  const pan = plan('flared-pan', { corner: 'folded' });
  expect(hopper?.flat.outline).toEqual(pan?.flat.outline);
  expect(hopper?.flat.area).toBeCloseTo((pan?.flat.area ?? 0) - 90 * 60, 6);
});

test('its throat lies in the middle, the ledge alike on both sides', () => {
  const [throat] = plan('hopper', { throat: { length: 90, width: 60 } })?.flat.holes ?? [];
  const { max } = plan('hopper', { throat: { length: 90, width: 60 } })?.flat.blank ?? { max: [0, 0] };
  const x = (throat ?? []).map((v) => v.at[0]);
  expect(Math.min(...x) + Math.max(...x)).toBeCloseTo(max[0], 9);
});

test('a throat that leaves no ledge is refused with the one that works', () => {
  expect(() => plan('hopper', { throat: { length: 119, width: 60 } })).toThrow(
    /throat\.length: 119 mm given.*Use [\d.]+ mm or less/,
  );
});

test('a throat stands where it is asked for, and no nearer to a wall than its ledge', () => {
  const [middle, aside] = [
    plan('hopper', { throat: { length: 40, width: 40 } }),
    plan('hopper', { throat: { length: 40, width: 40, west: 10, south: 30 } }),
  ];
  const least = (p: typeof middle, k: 0 | 1) => Math.min(...(p?.flat.holes[0] ?? []).map((v) => v.at[k]));
  expect(least(aside, 0) - least(middle, 0)).toBeCloseTo(10 - 40, 9);
  expect(least(aside, 1) - least(middle, 1)).toBeCloseTo(30 - 25, 9);
  expect(() => plan('hopper', { throat: { length: 40, width: 40, west: 79.5 } })).toThrow(
    /throat\.west: 79\.5 mm given.*Use [\d.]+ mm or less/,
  );
});
