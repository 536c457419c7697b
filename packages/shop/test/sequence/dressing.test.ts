// An end of a line with no finger over it is dressed by hand afterwards: that takes time.
import { planSequence } from '@tinwright/shop';
import { expect, test } from 'vitest';
import { planned, shopWith } from '../shops.js';

const box = planned({ family: 'open-box', length: 200, width: 120, height: 40 });
const short = shopWith({ fingers: [25, 65, 150], gaps: { end: 20, inner: 6 } });
const bareEnds = ({ steps }: ReturnType<typeof planSequence>) =>
  steps.flatMap((s) => (s.tools ?? []).flatMap((g) => g.bare)).filter((b) => b > 10).length;

test('every bare end of a plan is in its time', () => {
  const seconds = (dress: number) =>
    planSequence(box, { ...short, costs: { ...short.costs, dress } }).seconds;
  const ends = bareEnds(planSequence(box, short));
  expect(ends).toBeGreaterThan(0);
  expect(seconds(30) - seconds(20)).toBeCloseTo(10 * ends, 6);
});

test('fingers that reach from end to end leave nothing to dress', () => {
  const whole = shopWith({ fingers: [25, 65, 115, 150, 195] });
  expect(bareEnds(planSequence(box, whole))).toBe(0);
});

test('what a hem leaves bare past the fingers is told and timed like what they leave themselves', () => {
  const channel = planned({
    family: 'hemmed-channel',
    length: 380,
    width: 190,
    height: 55,
    hem: { type: 'closed', length: 12 },
    endTabs: { length: 16 },
  });
  const shop = shopWith({ fingers: [25, 25, 30, 35, 40, 45, 50, 75, 100], gaps: { end: 14, inner: 6 } });
  const { steps } = planSequence(channel, shop);
  const told = steps.flatMap((s) => (s.tools ?? []).map((g) => ({ ...g, length: s.length })));
  expect(told.length).toBeGreaterThan(0);
  for (const { bare, from, pieces, gap, length } of told) {
    const wide = pieces.reduce((a, b) => a + b, 0) + gap * (pieces.length - 1);
    expect(bare[0]).toBeCloseTo(Math.max(0, from), 6);
    expect(bare[1]).toBeCloseTo(Math.max(0, length - from - wide), 6);
  }
  expect(told.some((g) => g.bare[0] > 9)).toBe(true);
});
