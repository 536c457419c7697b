// The duties of every family. A family gets them by being listed.
import {
  type AnyFamily,
  declaredAt,
  JobError,
  type PartPlan,
  type Problem,
  planJob,
  readJob,
  sizesIn,
  withValue,
} from '@tinwright/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bendings, paramsOf, sheets } from './arbitrary.js';

const STOCK = { material: 'mild-steel', thickness: 1 };
const RANDOM = 150;

type Json = Record<string, unknown>;

/** Plan a job of one part of this family. */
export function planOne(family: AnyFamily, params: Json, job: Json = {}): PartPlan {
  const data = {
    units: 'mm',
    stock: STOCK,
    ...job,
    parts: [{ name: 'part', family: family.name, ...params }],
  };
  return planJob(readJob(deepFreeze<unknown>(data), [family])).parts[0] as PartPlan;
}

function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    Object.freeze(value);
    for (const inner of Object.values(value)) deepFreeze(inner);
  }
  return value;
}

/** Paths of all sizes in parameters, `hem.length`, list entries under their list's name. */
function paths(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [path];
  return Object.entries(value).flatMap(([k, v]) => [
    ...(path === '' ? [] : [path]),
    ...paths(v, path === '' ? k : `${path}.${k}`),
  ]);
}

/** Every length of a family's parameters in inches instead of mm; words, counts and angles stay. */
function inInches({ values }: AnyFamily, params: Json): unknown {
  return sizesIn(params)
    .filter(({ path }) => declaredAt(values, path)?.unit === 'mm')
    .reduce<unknown>((p, { path, given }) => withValue(p, path, given / 25.4), params);
}

function problemsOf(family: AnyFamily, params: Json, job: Json): readonly Problem[] {
  try {
    planOne(family, params, job);
    return [];
  } catch (error) {
    if (error instanceof JobError) return error.problems;
    throw error;
  }
}

export function familyContract(family: AnyFamily): void {
  const { example, sizes, title, summary } = family.describe;

  describe(family.name, () => {
    test('every parameter of the example has words, title and summary are there', () => {
      expect(title).not.toBe('');
      expect(summary).not.toBe('');
      for (const path of paths(example)) expect(Object.keys(sizes)).toContain(path);
    });

    test.each(bendings)('the example comes out at the sizes asked under $rule', (bending) => {
      const plan = planOne(family, example, { bending }); // verifyFlat and verifyForm run inside
      expect(plan.part.asked.length).toBeGreaterThan(0);
    });

    test('laid out nominally the example is still a sound pattern', () => {
      const { flat } = planOne(family, example, { bending: { rule: 'nominal' } });
      expect(flat.bends.every((b) => b.zone === 0)).toBe(true);
    });

    test('flat and formed agree: the metal differs only by what bends stretch', () => {
      const { flat, formed } = planOne(family, example);
      const T = flat.thickness;
      const stretched = formed.bends.reduce((sum, b, i) => {
        const middle = b.sweep * ((b.insideRadius + b.outsideRadius) / 2);
        const length = (b.high[0] - b.low[0] + b.high[1] - b.low[1]) / 2;
        return sum + (middle - (flat.bends[i]?.zone ?? 0)) * length * T;
      }, 0);
      expect(formed.volume).toBeCloseTo(flat.area * T + stretched, 3);
    });

    test('same parameters, same result; parameters are left alone', () => {
      const text = (p: PartPlan) => JSON.stringify([p.flat, p.formed]);
      expect(text(planOne(family, example))).toBe(text(planOne(family, example)));
    });

    test('in inches the example makes the same part', () => {
      const mm = planOne(family, example);
      const inches = planOne(family, inInches(family, example) as Json, {
        units: 'in',
        stock: { ...STOCK, thickness: '1 mm' },
      });
      expect(inches.flat.blank.max[0]).toBeCloseTo(mm.flat.blank.max[0], 6);
      expect(inches.flat.blank.max[1]).toBeCloseTo(mm.flat.blank.max[1], 6);
      // default gaps are in mm whatever the unit
      expect(inches.flat.area).toBeCloseTo(mm.flat.area, 3);
    });

    test('random parameters either make a verified part or are refused by name', () => {
      let made = 0;
      fc.assert(
        fc.property(paramsOf(family), sheets, (params, job) => {
          try {
            const plan = planOne(family, params, job);
            expect(plan.flat.area).toBeGreaterThan(0);
            made += 1;
          } catch (error) {
            if (!(error instanceof JobError)) throw error;
            for (const p of error.problems) {
              expect(p.message).not.toBe('');
              // sizes that leave no part are refused; a pattern that is none is a fault of the family or the kernel
              expect(`${p.code} ${p.message} ${JSON.stringify(params)}`).not.toMatch(
                /^(flat|bend)-|^form-join/,
              );
            }
          }
        }),
        { numRuns: RANDOM },
      );
      expect(made).toBeGreaterThan(RANDOM / 10);
    });

    test('a size that is refused comes with one that works', () => {
      fc.assert(
        fc.property(paramsOf(family), sheets, (params, job) => {
          for (const p of problemsOf(family, params, job)) {
            const [, size] = /^Use ([\d.]+) mm or (?:less|more)$/.exec(p.fix) ?? [];
            if (size === undefined) continue;
            const path = p.path.slice(2);
            const mended = withValue(params, path, Number(size)) as Json;
            const left = problemsOf(family, mended, job).map(
              (q) => `${q.path.slice(2).join('.')} ${q.message}`,
            );
            expect(
              left.filter((l) => l.startsWith(`${path.join('.')} `)),
              JSON.stringify(mended),
            ).toEqual([]);
          }
        }),
        { numRuns: RANDOM },
      );
    });

    test('an unknown parameter is refused with its nearest name', () => {
      const first = Object.keys(example)[0] as string;
      const misspelt = { ...example, [`${first}x`]: 1 };
      expect(() => planOne(family, misspelt)).toThrow(
        new RegExp(`unknown key "${first}x".*Did you mean "${first}"`),
      );
    });

    test('every size of the example at zero, below zero or not a number is refused by its path', () => {
      const numbers = Object.entries(example).filter(([, v]) => typeof v === 'number');
      for (const [key] of numbers)
        for (const bad of [-1, Number.NaN, Number.POSITIVE_INFINITY, 1e9, null, 'wide']) {
          expect(() => planOne(family, { ...example, [key]: bad }), `${key} ${bad}`).toThrow(
            new RegExp(`part "part": ${key}: `),
          );
        }
    });
  });
}
