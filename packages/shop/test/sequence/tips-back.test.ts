// What is held in front of a punch: where that is too little, what lies behind has to be carried.
import { planSequence } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { pressShop, straight, vDie } from '../press-shop.js';
import { planned } from '../shops.js';

const { press, ...shop } = pressShop([straight(6)], [vDie(8, 6)]);
if (press === null) throw new Error('there is a press');
// no gauge touches a short lip: the long side goes behind the punch
const SHOP = { ...shop, press: { ...press, backGauge: { ...press.backGauge, least: 80 } } };

describe('a strip with its long side at the gauge', () => {
  test.each([
    [200, 12, true],
    [200, 45, true],
    [200, 60, false],
    [90, 12, false],
  ])('%d behind, %d in front', (long, lip, tips) => {
    const part = planned({ family: 'bent-strip', width: 120, legs: [long, lip], angles: [90] });
    const [step] = planSequence(part, SHOP).steps;
    expect(step?.touches?.panel).toBe('leg-1');
    expect(step?.press?.tipsBack).toBe(tips);
  });

  test('never where it stands in front', () => {
    const part = planned({ family: 'bent-strip', width: 120, legs: [200, 12], angles: [90] });
    const steps = planSequence(part, { ...shop, press }).steps;
    expect(steps.map((s) => s.touches?.panel)).toEqual(['leg-2']);
    expect(steps.map((s) => s.press?.tipsBack)).toEqual([false]);
  });
});
