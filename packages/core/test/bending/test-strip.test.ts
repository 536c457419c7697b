import type { StripBend } from '@tinwright/core';
import { planJob, readJob } from '@tinwright/core';
import { stripOf } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';
import { testStrip } from '../../src/bending/test-strip.js';

const row = (more: Partial<StripBend> = {}): StripBend => ({
  name: 'lot 7',
  material: 'galvanised-steel',
  thickness: 1,
  insideRadius: 1.5,
  k: 0.38,
  kError: 0.012,
  strips: 5,
  ...more,
});
const STRIPS = [row(), row({ name: 'thin', thickness: 0.7 }), row({ name: 'plain', material: 'mild-steel' })];
const BEND = { thickness: 1, insideRadius: 1.5, angle: 90 };

const problems = (work: () => unknown): readonly { code: string; message: string; path: unknown }[] => {
  try {
    work();
  } catch (error) {
    return (error as { problems: readonly { code: string; message: string; path: unknown }[] }).problems;
  }
  throw new Error('nothing was refused');
};

test('the allowance is that of the row: BA = π/2 · (1.5 + 0.38)', () => {
  const { allowance, source } = testStrip('galvanised-steel', STRIPS).terms(BEND);
  expect(allowance).toBeCloseTo((Math.PI / 2) * 1.88, 12);
  expect(source).toBe('test-strip lot 7, K ± 0.012');
});

describe('which row', () => {
  test.each([
    ['of the metal and both sizes', 'mild-steel', 1, 1.5, 'plain'],
    ['of another thickness', 'galvanised-steel', 0.7, 1.5, 'thin'],
    ['of sizes that are one to a hundredth', 'galvanised-steel', 1.0008, 1.4996, 'lot 7'],
    ['none: another radius', 'galvanised-steel', 1, 1, undefined],
    ['none: a hundredth thicker', 'galvanised-steel', 1.01, 1.5, undefined],
    ['none: another metal', 'copper', 1, 1.5, undefined],
  ])('%s', (_, material, thickness, insideRadius, name) => {
    expect(stripOf(STRIPS, material, { thickness, insideRadius })?.name).toBe(name);
  });
});

test('a hem takes the figure for folding flat: no strip of 90 degrees speaks for it', () => {
  const { deduction } = testStrip('galvanised-steel', STRIPS).terms({
    thickness: 1,
    insideRadius: 0,
    angle: 180,
  });
  expect(deduction).toBeCloseTo(2 - Math.PI / 2, 12); // 0.43 T, common practice
});

const JOB = {
  units: 'mm',
  stock: { material: 'galvanised-steel', thickness: 1 },
  bending: { rule: 'test-strip', insideRadius: 1.5 },
  parts: [{ name: 'shelf', family: 'bent-strip', width: 40, legs: [30, 40], angles: [90] }],
};

test('a job takes the row for its metal, thickness and radius', () => {
  const [part] = readJob(JOB as unknown, undefined, { strips: STRIPS }).parts;
  expect(part?.sheet.rule.terms(BEND).allowance).toBeCloseTo((Math.PI / 2) * 1.88, 12);
});

describe('without the row', () => {
  test('a bend is refused where the radius is given, the rows there are are told', () => {
    const job = { ...JOB, bending: { rule: 'test-strip', insideRadius: 2 } };
    const [problem, ...more] = problems(() =>
      planJob(readJob(job as unknown, undefined, { strips: STRIPS })),
    );
    expect(more).toEqual([]);
    expect(problem).toMatchObject({ code: 'strip-missing', path: ['bending', 'insideRadius'] });
    expect(problem).toMatchObject({
      message: 'no test-strip of galvanised-steel T 1 R 2 mm',
      fix: 'Known: galvanised-steel T 1 R 1.5, galvanised-steel T 0.7 R 1.5, mild-steel T 1 R 1.5',
    });
  });

  test('nor any: there are none', () => {
    const [problem] = problems(() => planJob(readJob(JOB as unknown)));
    expect(problem).toMatchObject({
      message: 'no test-strip of galvanised-steel T 1 R 1.5 mm',
      fix: 'Known: none; --shop FILE gives them',
    });
  });
});
