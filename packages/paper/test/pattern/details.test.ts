import { expect, test } from 'vitest';
import { detailsOf } from '../../src/pattern/details.js';
import { featuresOf } from '../../src/pattern/features.js';
import { box, planned, strip } from '../plan/patterns.js';

const at = (part: ReturnType<typeof planned>, scale: number) =>
  detailsOf(part.flat, featuresOf(part.flat), scale);

test('the corners of a lapped box at 1:5: one detail for all four', () => {
  const [detail, ...others] = at(box({ corner: 'lap' }), 1 / 5);
  expect(others).toEqual([]);
  expect(detail).toMatchObject({ letter: 'A', alike: 4 });
  // the one nearest the datum, where the walls of 50 mm meet
  expect(detail?.region.min.every((v) => v > 30 && v < 50)).toBe(true);
});

test('a detail shows what is crowded with white round it', () => {
  const part = box({ corner: 'lap' });
  const [{ region }] = at(part, 1 / 5) as [ReturnType<typeof at>[number]];
  const inside = part.flat.outline.filter(({ at: p }) =>
    p.every((v, k) => v > (region.min[k] as number) && v < (region.max[k] as number)),
  );
  expect(inside.length).toBeGreaterThan(3);
  for (const { at: p } of inside)
    for (const k of [0, 1] as const) {
      expect((p[k] as number) - region.min[k]).toBeGreaterThan(1.9);
      expect(region.max[k] - (p[k] as number)).toBeGreaterThan(1.9);
    }
});

test('where everything can be told apart there are no details', () => {
  expect(at(strip(), 1)).toEqual([]);
  expect(at(box({ corner: 'lap' }), 5)).toEqual([]);
});

test('different corners have letters of their own', () => {
  const part = planned({
    family: 'hemmed-channel',
    length: 400,
    width: 200,
    height: 55,
    hem: { type: 'closed', length: 15 },
    endTabs: { length: 20 },
  });
  expect(at(part, 1 / 5).map((d) => [d.letter, d.alike])).toEqual([
    ['A', 4],
    ['B', 4],
  ]);
});
