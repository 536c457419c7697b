// Which punch and die of a rack a bend is made with: the radius nearest to the one drawn first, every other pair before it is
// called impossible.
import { sayIn } from '@tinwright/core/internal';
import { planSequence, type Sequence, type Shop, verifySequence } from '@tinwright/shop';
import { reasonWords } from '@tinwright/words';
import { describe, expect, test } from 'vitest';
import { pressShop, straight, vDie } from '../press-shop.js';
import { planned } from '../shops.js';

const RACK = [vDie(6, 5), vDie(8, 6), vDie(12, 8), vDie(16, 10)];
const strip = (legs: readonly number[], job: object = {}, width = 80) =>
  planned({ family: 'bent-strip', width, legs, angles: legs.slice(1).map(() => 90) }, job);
const sheet = (thickness: number, insideRadius: number) => ({
  stock: { material: 'mild-steel', thickness },
  bending: { rule: 'k-factor', insideRadius },
});

function plan(part: ReturnType<typeof planned>, shop: Shop): Sequence {
  const sequence = planSequence(part, shop);
  if (sequence.status !== 'infeasible') expect(verifySequence(part.flat, sequence.steps, shop)).toEqual([]);
  return sequence;
}

const dies = ({ steps }: Sequence) => steps.map((s) => s.press?.opening);

test.each([
  [1, 6], // 0.16 V: 0.96
  [1.3, 8], // 1.28
  [1.9, 12], // 1.92
  [2.5, 16], // 2.56
])('%d mm inside, a press that has the force: a V of %d', (radius, opening) => {
  expect(dies(plan(strip([60, 60], sheet(1, radius)), pressShop([straight(10)], RACK)))).toEqual([opening]);
});

describe('where the nearest two do not go', () => {
  // 1.48 x 410 N/mm2 x 400 mm x 1 mm2 / V: 40.5, 30.3, 20.2 and 15.2 kN over 6, 8, 12 and 16
  test('too weak for a V of 6 or 8: the next wider one', () => {
    const wide = (force: number) =>
      plan(strip([60, 60], sheet(1, 1), 400), pressShop([straight(10)], RACK, { force }));
    expect(dies(wide(21))).toEqual([12]);
    expect(dies(wide(16))).toEqual([16]);
    expect(wide(15).status).toBe('infeasible');
  });

  // a flange of 5 reaches over V / 1.41: 4.2 of a V of 6, 5.7 of one of 8
  test('a flange too short for wide ones: the narrow one, for that bend alone', () => {
    const sequence = plan(strip([5, 60, 60], sheet(1, 2.5)), pressShop([straight(10)], RACK));
    expect(dies(sequence).toSorted()).toEqual([16, 6]);
    expect(sequence.steps.find((s) => s.press?.opening === 6)?.bends).toEqual(['leg-2']);
  });

  test('none of them: the reason is of the one that comes nearest', () => {
    const { status, reasons } = plan(strip([4.1, 60], sheet(1, 2.5)), pressShop([straight(10)], RACK));
    expect(status).toBe('infeasible');
    // 6 / 2 / cos 45
    expect(new Set(reasons.map((r) => r.code))).toEqual(new Set(['flange-short']));
    for (const r of reasons) expect(r.limit).toBeCloseTo(4.243, 3);
  });
});

describe('a rack of nothing but a V of 6', () => {
  const shop = pressShop([straight(10)], [vDie(6, 5)]);

  test('1.5 mm, four thicknesses: it is bent over it', () => {
    expect(dies(plan(strip([60, 60], sheet(1.5, 1)), shop))).toEqual([6]);
  });

  test('1.6 mm: it is refused, and told what V the sheet needs', () => {
    const [reason] = plan(strip([60, 60], sheet(1.6, 1)), shop).reasons;
    expect(reason).toMatchObject({ code: 'die', panel: null, value: 6 });
    const say = sayIn('mm');
    expect(reason && reasonWords(reason, say)).toBe(
      'leg-2: the widest V is 6 mm, the sheet needs 6.4 mm or more',
    );
    expect(reason && reasonWords(reason, say, 'de')).toBe(
      'leg-2: das weiteste V misst 6 mm, das Blech braucht 6.4 mm oder mehr',
    );
  });
});
