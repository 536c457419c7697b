// What is told of the dies that a bend order uses: warnings and notes beside the plan.
import { planJob, readJob } from '@tinwright/core';
import { planShop, type Shop } from '@tinwright/shop';
import { tellFindings } from '@tinwright/words';
import { describe, expect, test } from 'vitest';
import { USUAL_OPENINGS, usualOpening } from '../../src/tools/usual-opening.js';
import { pressShop, straight, vDie } from '../press-shop.js';

const CODES = ['die-narrow', 'die-wide', 'radius-made'];

function findings(thickness: number, insideRadius: number, shop: Shop, legs = [60, 60], width = 80) {
  const job = planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness },
      bending: { rule: 'k-factor', insideRadius },
      parts: [{ name: 'strip', family: 'bent-strip', width, legs, angles: legs.slice(1).map(() => 90) }],
    }),
  );
  const { sequences, findings } = planShop(job, shop);
  expect(sequences.map((s) => s.status)).toEqual(['optimal']);
  return findings.filter((f) => CODES.includes(f.code) && f.code !== 'bend-order');
}

const rack = (...openings: number[]) =>
  pressShop(
    [straight(10)],
    openings.map((v) => vDie(v, v / 2 + 2)),
  );

// makers' printed rule, read second-hand: V = 6 T up to 2.6 mm, 8 T for 3 to 8, 10 T for 9 to 10 (12), 12 T above
test('usual openings are those printed', () => {
  const printed = [
    [0.5, 3],
    [1, 6],
    [2, 12],
    [2.6, 15.6],
    [3, 24],
    [6, 48],
    [8, 64],
    [9, 90],
    [10, 100],
    [12, 144],
  ] as const;
  for (const [thickness, opening] of printed) expect(usualOpening(thickness)).toBeCloseTo(opening, 9);
  expect(USUAL_OPENINGS).toHaveLength(4);
});

describe('a V narrower than five thicknesses', () => {
  test('6 mm for 1.5 mm: a warning beside the plan', () => {
    const [found, ...others] = findings(1.5, 1, rack(6));
    expect(others).toEqual([]);
    expect(found).toMatchObject({ code: 'die-narrow', severity: 'warning', value: 6, limit: 7.5 });
    expect(found?.values).toMatchObject({ times: 4, usual: 9 });
    const [told] = tellFindings(found === undefined ? [] : [found], 'mm', 'en');
    expect(told?.message).toMatch(
      /^leg-2 over V6: a V of 6 mm is 4 times the sheet, 7\.5 mm at least as a rule/,
    );
    const [german] = tellFindings(found === undefined ? [] : [found], 'mm', 'de');
    expect(german?.message).toMatch(
      /^leg-2 über V6: ein V von 6 mm misst 4 Blechdicken, in der Regel mindestens 7,5 mm/,
    );
  });

  test('five thicknesses: nothing to say', () => {
    expect(findings(1.2, 0.96, rack(6))).toEqual([]);
  });
});

describe('a V wider than any table gives', () => {
  test('16 mm for 1.2 mm and the radius that it makes: a note', () => {
    const [found, ...others] = findings(1.2, 2.56, rack(16));
    expect(others).toEqual([]);
    expect(found).toMatchObject({ code: 'die-wide', severity: 'note', value: 16 });
    expect(found?.limit).toBeCloseTo(14.4, 9);
  });

  test('12 thicknesses: nothing to say', () => {
    expect(findings(1, 1.92, rack(12))).toEqual([]);
  });
});

test('a die that makes another radius than the shop could: told with what the legs come out by', () => {
  // 400 mm over a V of 6 or 8 takes more than 21 kN: it goes over 12, which makes 1.92 of 1
  const shop = pressShop([straight(10)], [vDie(6, 5), vDie(8, 6), vDie(12, 8)], { force: 21 });
  const [found, ...others] = findings(1, 1, shop, [60, 60], 400);
  expect(others).toEqual([]);
  expect(found).toMatchObject({ code: 'radius-made', values: { asked: 1, machine: 'press brake' } });
  // (2 tan 45 - pi/2) x 0.92
  expect(found?.value).toBeCloseTo(0.395, 3);
});
