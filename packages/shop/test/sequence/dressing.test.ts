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
