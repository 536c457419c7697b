import {
  type BendRule,
  din6935,
  HANDBOOK_GROUPS,
  type HandbookGroup,
  handbook,
  kFactor,
  linear,
  nominal,
  outsideSetback,
} from '@tinwright/core';
import { allowanceAtK } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dinFactor } from '../../src/bending/din-6935.js';

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const bend = fc.record({ thickness: size(0.3, 6), insideRadius: size(0.4, 20), angle: size(15, 180) });

interface Case {
  readonly rule: BendRule;
  /** Allowance by the rule's own formula, written again from its source. */
  readonly allowance: (T: number, R: number, A: number) => number;
}

const CASES: readonly Case[] = [
  ...[0.33, 0.4, 0.447, 0.5].map((k) => ({
    rule: kFactor(k),
    allowance: (T: number, R: number, A: number) => (Math.PI / 180) * A * (R + k * T),
  })),
  {
    rule: din6935,
    allowance: (s, r, A) => ((Math.PI * A) / 180) * (r + (s * dinFactor(r / s)) / 2),
  },
  ...(['soft', 'medium', 'hard'] as const).map((group: HandbookGroup) => ({
    rule: handbook(group),
    allowance: (T: number, R: number, A: number) => ((HANDBOOK_GROUPS[group].c * T + 1.57 * R) * A) / 90,
  })),
];

test.each(CASES)(
  '$rule.title, any bend: BA by its formula, SB = tan(A/2)(R + T) to 90°, BD = 2 SB - BA',
  ({ rule, allowance }) => {
    fc.assert(
      fc.property(bend, (b) => {
        const { thickness: T, insideRadius: R, angle: A } = b;
        fc.pre(rule !== din6935 || R / T >= 0.05);
        const terms = rule.terms(b);
        expect(terms.allowance).toBeCloseTo(allowance(T, R, A), 9);
        if (A <= 90) expect(terms.setback).toBeCloseTo(Math.tan((A * Math.PI) / 360) * (R + T), 9);
        else expect(terms.setback).toBe(R + T);
        expect(terms.deduction).toBeCloseTo(2 * terms.setback - terms.allowance, 9);
      }),
    );
  },
);

test('linear, any bend up to 90°: BD = v × A/90, BA = 2 SB - BD', () => {
  const constant = fc.tuple(size(0, 0.5), size(0, 1.5));
  fc.assert(
    fc.property(bend, constant, (b, [perRadius, perThickness]) => {
      const angle = b.angle / 2;
      const { thickness: T, insideRadius: R } = b;
      const terms = linear(perRadius, perThickness).terms({ ...b, angle });
      expect(terms.deduction).toBeCloseTo(((perRadius * R + perThickness * T) * angle) / 90, 9);
      expect(terms.setback).toBeCloseTo(Math.tan((angle * Math.PI) / 360) * (R + T), 9);
      expect(terms.allowance).toBeCloseTo(2 * terms.setback - terms.deduction, 9);
    }),
  );
});

test('nominal, any bend: allowance, setback and deduction 0', () => {
  fc.assert(
    fc.property(bend, (b) => {
      expect(nominal.terms(b)).toMatchObject({ allowance: 0, setback: 0, deduction: 0 });
    }),
  );
  expect(nominal.compensates).toBe(false);
});

test.each([...CASES.map((c) => c.rule), linear(0.5, 1.5), nominal])(
  '$title: tells its working and its source',
  (rule) => {
    const terms = rule.terms({ thickness: 1, insideRadius: 1, angle: 90 });
    expect(terms.working.length).toBeGreaterThan(0);
    expect(terms.working.join('')).not.toMatch(/NaN|Infinity|undefined/);
    expect(terms.source.length).toBeGreaterThan(5);
    expect(rule.source).toBe(terms.source);
  },
);

test.each([...CASES.map((c) => c.rule), linear(0.5, 1.5)])('$title: made to compensate', (rule) => {
  expect(rule.compensates).toBe(true);
});

test('the working of K = 0.4 at T = 1, R = 2, 90°: BA 3.7699, SB 3, BD 2.2301', () => {
  // by hand: π/2 × 2.4 = 3.7699; 2 × 3 - 3.7699 = 2.2301
  const { working } = kFactor(0.4).terms({ thickness: 1, insideRadius: 2, angle: 90 });
  expect(working.map((line) => line.split(' = ').at(-1))).toEqual(['3.7699', '3', '2.2301']);
});

test('any neutral line walked in small chords: as long as the allowance at its K', () => {
  fc.assert(
    fc.property(bend, size(0.3, 0.5), (b, k) => {
      const { thickness: T, insideRadius: R, angle: A } = b;
      const bits = 2000;
      const at = (i: number) => {
        const a = ((A * Math.PI) / 180) * (i / bits);
        return [(R + k * T) * Math.sin(a), R - (R + k * T) * Math.cos(a)] as const;
      };
      let walked = 0;
      for (let i = 0; i < bits; i++) {
        const [p, q] = [at(i), at(i + 1)];
        walked += Math.hypot(q[0] - p[0], q[1] - p[1]);
      }
      expect(walked).toBeCloseTo(allowanceAtK(b, k), 4);
      expect(kFactor(k).terms(b).allowance).toBeCloseTo(walked, 4);
    }),
  );
});

test('setback at 90°: R + T, from either side', () => {
  const at = (angle: number) => outsideSetback({ thickness: 1.5, insideRadius: 2, angle });
  expect(at(90)).toBeCloseTo(3.5, 12);
  expect(at(90 - 1e-9)).toBeCloseTo(3.5, 8);
  expect(at(90 + 1e-9)).toBe(3.5);
});

test('setback short of 90° is where the faces meet, by the tangent', () => {
  const at = (angle: number) => outsideSetback({ thickness: 1.5, insideRadius: 2, angle });
  expect(at(89.5)).toBeCloseTo(3.5 * Math.tan((44.75 * Math.PI) / 180), 12);
  expect(at(45)).toBeCloseTo(3.5 * Math.tan(Math.PI / 8), 12);
  expect(at(120)).toBe(3.5);
});
