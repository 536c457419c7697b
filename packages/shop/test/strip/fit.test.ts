import { JobError, MM_PER_INCH } from '@tinwright/core';
import { allowanceAtK } from '@tinwright/core/internal';
import { fitStrips, type MeasuredStrips, readMeasured } from '@tinwright/shop';
import { fitFindings } from '@tinwright/shop/internal';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { told } from '../../../../tests/kit/told.js';
import { simulated, type Truth } from './simulate.js';

const read = (strips: readonly object[], more: object = {}): MeasuredStrips =>
  readMeasured({ units: 'mm', material: 'mild-steel', thickness: 2, insideRadius: 3, ...more, strips });

describe('strips whose answer is known', () => {
  // By hand: T 2, R 3, 90 deg, flat 100, legs 52.02 and 52.01.
  // deduction = 104.03 - 100 = 4.03; setback = 5; allowance = 10 - 4.03 = 5.97;
  // K = (5.97 / (pi/2) - 3) / 2 = (3.80062 - 3) / 2 = 0.40031
  // set to 91.5: a bend of 90 opens by 1.5; factor 90/91.5 = 0.98361
  test('one strip, worked by hand', () => {
    const { row, allowance, deduction, springbackFactor } = fitStrips(
      read([{ flat: 100, legs: [52.02, 52.01], angle: 90, set: 91.5 }]),
    );
    expect(row.k).toBeCloseTo(0.40031, 5);
    expect(allowance.value).toBeCloseTo(5.97, 10);
    expect(deduction.value).toBeCloseTo(4.03, 10);
    expect(row.springback).toBeCloseTo(1.5, 10);
    expect(springbackFactor?.value).toBeCloseTo(0.98361, 5);
    expect(row).toMatchObject({ name: 'mild-steel T 2 R 3', material: 'mild-steel', strips: 1 });
  });

  // The same by hand at 60 deg through: setback = 5 tan 30 = 2.88675, legs 51 and 52 on 101.
  // deduction = 2; allowance = 3.77350; K = (3.77350 / 1.04720 - 3) / 2 = 0.30172
  test('at 60 degrees, legs to the sharp corner', () => {
    expect(fitStrips(read([{ flat: 101, legs: [51, 52], angle: 60 }])).row.k).toBeCloseTo(0.30172, 4);
  });

  // Over 90 legs go to the outer tangent: 120 deg, setback 5, legs 52 and 52 on 100.4.
  // deduction = 3.6; allowance = 6.4; K = (6.4 / 2.09440 - 3) / 2 = 0.02789
  test('at 120 degrees, legs to the outside of the bend', () => {
    expect(fitStrips(read([{ flat: 100.4, legs: [52, 52], angle: 120 }])).row.k).toBeCloseTo(0.02789, 4);
  });

  // Deductions v at 90 deg as German handbooks print them for DIN 6935, to 0.1 mm (from memory of the tables); K = k/2
  test.each([
    [1, 1, 1.9],
    [1.6, 1, 2.1],
    [2.5, 1, 2.4],
    [4, 2, 4.5],
    [6, 3, 6.7],
  ])('R %d, T %d: a deduction of %d gives the K of DIN 6935', (insideRadius, thickness, v) => {
    const strip = { flat: 100, legs: [50, 50 + v], angle: 90 };
    const { row } = fitStrips(read([strip], { thickness, insideRadius }));
    // half the last printed digit, 0.05 mm, over an arc of pi/2 thicknesses
    expect(Math.abs(row.k - (0.65 + 0.5 * Math.log10(insideRadius / thickness)) / 2)).toBeLessThan(
      0.05 / (1.5708 * thickness),
    );
  });

  // FAA-H-8083-31 chart: 0.040 in, R 5/32 in: 0.003034 in of allowance a degree, 0.27306 at 90
  test('inches: the chart of the FAA handbook', () => {
    const setback = 0.04 + 5 / 32;
    const legs = [2, 1 + 2 * setback - 0.27306];
    const fit = fitStrips(
      readMeasured({
        units: 'in',
        material: 'aluminium-5052-h32',
        thickness: 0.04,
        insideRadius: '5/32',
        strips: [{ flat: 3, legs, angle: 90 }],
      }),
    );
    expect(fit.allowance.value / MM_PER_INCH).toBeCloseTo(0.27306, 6);
    expect(fit.row.k).toBeCloseTo((0.27306 / (Math.PI / 2) - 5 / 32) / 0.04, 6);
  });
});

describe('several strips', () => {
  // By hand, T 2, R 3, all at 90: K from deductions 4.03, 4.08 and 3.98 is 0.40031, 0.38440 and 0.41623: mean 0.40031.
  // Readings of 0.1 mm: variance of a deduction 3 x 0.01, and of the angle (5/cos^2 45 - 3.8) x 0.5 deg = 6.2 x 0.0087266
  // = 0.054105, squared 0.0029274: 0.0329274 in all, 0.181459 mm. Over three strips and pi thick: 0.181459/3.14159/1.73205
  const strips = [4.03, 4.08, 3.98].map((d) => ({ flat: 100, legs: [50, 50 + d], angle: 90 }));

  test('K is their mean, its error what the readings allow where they scatter less', () => {
    const { row } = fitStrips(read(strips));
    expect(row.k).toBeCloseTo(0.40031, 5);
    expect(row.kError).toBeCloseTo(0.181459 / Math.PI / Math.sqrt(3), 6);
  });

  // scatter 0.05 mm: standard deviation of the three is 0.05, of their mean 0.05 / sqrt 3
  test('read more finely than they scatter, the error is that of the scatter', () => {
    const { row } = fitStrips(read(strips, { reading: { length: 0.02, angle: 0.05 } }));
    expect(row.kError).toBeCloseTo(0.05 / Math.PI / Math.sqrt(3), 6);
  });

  test('one that contradicts is named with its residual and left out of the numbers', () => {
    const measured = read([...strips, { name: 'fourth', flat: 100, legs: [50, 55.53], angle: 90 }]);
    const fit = fitStrips(measured);
    expect(fit.row).toMatchObject({ strips: 3 });
    expect(fit.row.k).toBeCloseTo(0.40031, 5);
    expect(fit.strips.map((s) => s.contradicts)).toEqual([[], [], [], ['lengths']]);
    expect(fit.strips[3]?.deduction).toBeCloseTo(1.5, 10);
    const [first] = fitFindings(fit, measured).map((f) => told(f));
    expect(first).toMatchObject({ code: 'strip-contradicts', severity: 'error', part: 'fourth', unit: 'mm' });
    expect(first?.message).toContain('1.5 mm off');
  });

  test('of two that disagree both are named: nobody knows which is wrong', () => {
    const two = [0, 1.5].map((d) => ({ flat: 100, legs: [50, 54 + d], angle: 90 }));
    expect(fitStrips(read(two)).strips.map((s) => s.contradicts)).toEqual([['lengths'], ['lengths']]);
  });

  test('angles can contradict by themselves', () => {
    const set = [91, 91.2, 90.9, 97].map((a) => ({ flat: 100, legs: [50, 54.03], angle: 90, set: a }));
    const fit = fitStrips(read(set));
    expect(fit.strips.map((s) => s.contradicts)).toEqual([[], [], [], ['angles']]);
    expect(fit.row.springback).toBeCloseTo((91 + 91.2 + 90.9) / 3 - 90, 10);
    const [first] = fitFindings(fit, read(set)).map((f) => told(f));
    expect(first?.message).toContain('would open by 7 deg at 90 deg, the fit by 1.03 deg');
  });

  test('without set angles springback stays unmeasured', () => {
    const fit = fitStrips(read(strips));
    expect(fit.row.springback).toBeNull();
    expect(fit.springbackFactor).toBeNull();
  });
});

const truths = fc.record({
  thickness: fc.double({ min: 0.5, max: 4, noNaN: true }),
  ratio: fc.double({ min: 0.2, max: 6, noNaN: true }),
  k: fc.double({ min: 0.25, max: 0.5, noNaN: true }),
  factor: fc.double({ min: 0.93, max: 0.999, noNaN: true }),
  count: fc.integer({ min: 1, max: 12 }),
  seed: fc.integer(),
});

describe('strips bent by a known K and springback, read with noise', () => {
  // 4.5 standard errors: once in 150 000 strips' fits
  test('the fit finds them within its stated error', () => {
    fc.assert(
      fc.property(truths, ({ thickness, ratio, k, factor, count, seed }) => {
        const truth: Truth = {
          thickness,
          insideRadius: ratio * thickness,
          k,
          factor,
          length: 0.05,
          angle: 0.2,
        };
        const fit = fitStrips(readMeasured(simulated(truth, count, seed)));
        expect(Math.abs(fit.row.k - k)).toBeLessThan(4.5 * fit.row.kError);
        expect(Math.abs((fit.row.springback ?? 0) - 90 * (1 / factor - 1))).toBeLessThan(
          4.5 * fit.row.springbackError,
        );
      }),
    );
  });

  test('without noise it finds them exactly', () => {
    fc.assert(
      fc.property(truths, ({ thickness, ratio, k, factor, count, seed }) => {
        const truth = { thickness, insideRadius: ratio * thickness, k, factor, length: 1e-9, angle: 1e-9 };
        const { row, allowance } = fitStrips(
          readMeasured({ ...simulated(truth, count, seed), reading: { length: 0.01, angle: 0.01 } }),
        );
        expect(row.k).toBeCloseTo(k, 5);
        expect(row.springback).toBeCloseTo(90 * (1 / factor - 1), 5);
        const bend = { thickness, insideRadius: ratio * thickness, angle: 90 };
        expect(allowance.value).toBeCloseTo(allowanceAtK(bend, k), 5);
      }),
    );
  });

  // the stated error is neither too small nor too large: 68 % of 400 fits lie within one, give or take three times 2.3 %
  test('two thirds lie within one standard error', () => {
    const truth = { thickness: 1.5, insideRadius: 2, k: 0.4, factor: 0.98, length: 0.05, angle: 0.2 };
    const fits = Array.from(
      { length: 400 },
      (_, i) => fitStrips(readMeasured(simulated(truth, 8, i + 1))).row,
    );
    const share = (within: (row: (typeof fits)[number]) => boolean) =>
      fits.filter(within).length / fits.length;
    const inside = [
      share((r) => Math.abs(r.k - truth.k) < r.kError),
      share((r) => Math.abs((r.springback ?? 0) - 90 * (1 / truth.factor - 1)) < r.springbackError),
    ];
    for (const s of inside) expect(Math.abs(s - 0.71)).toBeLessThan(0.1);
  });
});

describe('what no strip can measure is refused with its place', () => {
  const problem = (strip: object, more: object = {}) => {
    try {
      fitStrips(read([strip], more));
    } catch (error) {
      if (error instanceof JobError) return error.problems;
      throw error;
    }
    throw new Error('nothing was refused');
  };
  const strip = { flat: 100, legs: [52, 52], angle: 90 };

  test.each([
    [
      'an angle over 180',
      { ...strip, angle: 200 },
      ['strips', 0, 'angle'],
      '200 deg given, 15 to 165 deg allowed',
    ],
    [
      'a set angle over 180',
      { ...strip, set: 181 },
      ['strips', 0, 'set'],
      '181 deg given, 15 to 180 deg allowed',
    ],
    [
      'a leg inside the bend',
      { ...strip, legs: [4, 100] },
      ['strips', 0, 'legs', 0],
      '4 mm given, more than 5 mm allowed',
    ],
    ['one leg', { ...strip, legs: [52] }, ['strips', 0, 'legs'], '1 in the list, 2 to 2 allowed'],
    [
      'legs of another strip',
      { ...strip, legs: [62, 62] },
      ['strips', 0, 'flat'],
      'legs of 62 mm and 62 mm on a flat of 100 mm leave a deduction of 24 mm; 2.15 mm to 5.28 mm is possible',
    ],
    [
      'legs shorter than the flat',
      { ...strip, legs: [49, 49] },
      ['strips', 0, 'flat'],
      'leave a deduction of -2 mm',
    ],
  ])('%s', (_, given, path, message) => {
    const [first, ...more] = problem(given);
    expect(more).toEqual([]);
    expect(first?.path).toEqual(path);
    expect(first?.message).toContain(message);
  });

  test('the same name twice', () => {
    expect(() =>
      read([
        { ...strip, name: 'a' },
        { ...strip, name: 'a' },
      ]),
    ).toThrow('the name "a" is taken by number 1');
  });

  test('a K that cannot be: strips of thin metal read too coarsely', () => {
    const [first] = problem({ flat: 100, legs: [49.6, 50], angle: 90 }, { thickness: 0.5, insideRadius: 0 });
    expect(first?.message).toMatch(/^K = 1\.\d+ follows from the strips, more than 0 to 1 allowed$/);
  });
});

describe('what to know of a fit', () => {
  test('few strips, and a narrow one', () => {
    const measured = read([{ flat: 100, legs: [52, 52.03], angle: 90, width: 12 }]);
    const found = fitFindings(fitStrips(measured), measured).map((f) => told(f));
    expect(found.map((f) => f.code)).toEqual(['strip-narrow', 'strip-few']);
    expect(found[0]).toMatchObject({ value: 12, limit: 16, fix: 'bend a strip 16 mm wide or more' });
  });

  describe('a strip that seems bent further than it was set', () => {
    const given = (angle: number, more: object = {}) =>
      read(
        [0, 1, 2].map(() => ({ flat: 100, legs: [52, 52.03], angle, set: 90 })),
        more,
      );
    const closing = (measured: MeasuredStrips) =>
      fitFindings(fitStrips(measured), measured)
        .map((f) => told(f))
        .filter((f) => f.code === 'strip-closes');

    test('98.5 of 90 set: each is an error, and says what to give', () => {
      const [first, ...more] = closing(given(98.5));
      expect(more).toHaveLength(2);
      expect(first).toMatchObject({
        severity: 'error',
        part: 'strip 1',
        value: 98.5,
        unit: 'deg',
        message: 'left at 98.5 deg, bent further than the 90 deg it was set to; metal opens again',
      });
      expect(first?.fix).toMatch(/between the legs means 81\.5$/);
    });

    // two standard errors of 0.5 deg on either reading: 2 sqrt 2 x 0.5 = 1.414 deg
    test.each([
      [91.4, 0],
      [91.43, 3],
    ])('%d of 90: by as much as both readings may be off', (angle, count) => {
      expect(closing(given(angle))).toHaveLength(count);
    });

    test('read more finely, less passes', () => {
      expect(closing(given(91, { reading: { angle: 0.1 } }))).toHaveLength(3);
      expect(closing(given(90.2, { reading: { angle: 0.1 } }))).toEqual([]);
    });
  });

  test('three wide strips that agree: nothing', () => {
    const measured = read([0, 1, 2].map(() => ({ flat: 100, legs: [52, 52.03], angle: 90, width: 50 })));
    expect(fitFindings(fitStrips(measured), measured)).toEqual([]);
  });
});
