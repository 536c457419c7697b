// Random parts of every family and of the small test families, in shops of several kinds: every finding is whole, and a
// size or a word it says would pass does pass.
import {
  type AnyFamily,
  FAMILIES,
  JobError,
  type JobReader,
  jobReader,
  type PartPlan,
  planJob,
  type Unit,
} from '@tinwright/core';
import { declaredAt, withValue as putAt, sayIn, sizesIn } from '@tinwright/core/internal';
import { DEFAULT_SHOP, SHOP_CHECKS, type Shop } from '@tinwright/shop';
import { shopFindings } from '@tinwright/shop/internal';
import { paramsOf } from '@tinwright/testing';
import type { ToldFinding } from '@tinwright/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findingsOf, LASER_TABLE, PRESS_SHOP, TEST_FAMILIES } from './kit.js';

const SHOPS: readonly Shop[] = [
  DEFAULT_SHOP,
  { ...DEFAULT_SHOP, profile: 'usual', table: LASER_TABLE },
  { ...DEFAULT_SHOP, vise: null, table: null, sheets: [[1000, 500]] },
  { ...PRESS_SHOP, table: LASER_TABLE },
];

interface Stock {
  readonly material: string;
  readonly thickness: number;
  readonly ratio: number;
}

const stocks: fc.Arbitrary<Stock> = fc.record({
  material: fc.constantFrom(
    'mild-steel',
    'stainless-304',
    'aluminium-5052-h32',
    'aluminium-6061-t6',
    'brass',
  ),
  thickness: fc.constantFrom(0.5, 0.8, 1, 1.2, 1.5, 2),
  ratio: fc.constantFrom(0.25, 0.5, 1, 1.6, 3),
});

type Json = Record<string, unknown>;

const readers = new Map<AnyFamily, JobReader>(); // each keeps the schemas that it builds

function readerOf(family: AnyFamily): JobReader {
  const reader = readers.get(family) ?? jobReader([family]);
  readers.set(family, reader);
  return reader;
}

/** A part planned, or null where it cannot be made. */
function planOr(
  family: AnyFamily,
  params: Json,
  { material, thickness, ratio }: Stock,
  unit: Unit = 'mm',
): PartPlan | null {
  const mm = (v: number) => `${v} mm`;
  const data = {
    units: unit,
    stock: { material, thickness: mm(thickness) },
    bending: { rule: 'k-factor', insideRadius: mm(thickness * ratio) },
    parts: [{ name: 'part', family: family.name, ...params }],
  };
  try {
    return planJob(readerOf(family)(data)).parts[0] as PartPlan;
  } catch (error) {
    if (error instanceof JobError) return null;
    throw error;
  }
}

interface Change {
  readonly path: string;
  readonly value: unknown;
}

/** What a fix says would pass: `make PATH SIZE or more`, `set PATH: WORD`. */
const changesIn = (fix: string): readonly Change[] => [
  ...[...fix.matchAll(/make ([\w.[\]-]+) ([\d.]+ (?:mm|in)) or (?:more|less)/g)].map(([, path, value]) => ({
    path: path as string,
    value,
  })),
  ...[...fix.matchAll(/set ([\w.[\]-]+): (\w+)/g)].map(([, path, value]) => ({
    path: path as string,
    value,
  })),
];

function withValue(data: unknown, [step, ...rest]: readonly string[], value: unknown): unknown {
  if (step === undefined) return value;
  if (Array.isArray(data)) return data.map((d, i) => (String(i) === step ? withValue(d, rest, value) : d));
  const group = (data ?? {}) as Json;
  return { ...group, [step]: withValue(group[step], rest, value) };
}

const changed = (params: Json, { path, value }: Change): Json =>
  withValue(params, path.replaceAll(/\[(\d+)\]/g, '.$1').split('.'), value) as Json;

/** Every finding has its number, words and source; none says a number that is none. */
function whole(f: ToldFinding, plan: PartPlan): void {
  expect(f.part).toBe('part');
  for (const text of [f.message, f.source, f.fix]) {
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|=>/);
    expect(text.trim()).toBe(text);
    expect(text).not.toBe('');
  }
  expect(Number.isFinite(f.value)).toBe(true);
  if (f.at === null) return;
  const [x, y] = f.at;
  expect(x).toBeGreaterThan(-1e-6);
  expect(y).toBeGreaterThan(-1e-6);
  expect(x).toBeLessThan(plan.flat.blank.max[0] + 1e-6);
  expect(y).toBeLessThan(plan.flat.blank.max[1] + 1e-6);
}

const RUNS = Number(process.env.TINWRIGHT_RUNS ?? 20);
const seen = new Set<string>();
let applied = 0;

describe.each([...FAMILIES, ...TEST_FAMILIES].map((f) => [f.name, f] as const))('%s', (_, family) => {
  test.each(['mm', 'in'] as const)('in %s: findings are whole, and the changes they tell pass', (unit) => {
    const runs = Math.round(RUNS / (unit === 'mm' ? 2 : 4));
    fc.assert(
      fc.property(paramsOf(family), stocks, fc.constantFrom(...SHOPS), (params, stock, shop) => {
        const inUnit = unit === 'mm' ? params : (asText(params, family) as Json);
        const plan = planOr(family, inUnit, stock, unit);
        if (plan === null) return;
        const findings = findingsOf(plan, shop, unit);
        expect(new Set(findings.map((f) => f.code)).size).toBe(findings.length);
        for (const f of findings) {
          seen.add(f.code);
          whole(f, plan);
          for (const change of changesIn(f.fix)) {
            applied += 1;
            const other = planOr(family, changed(inUnit, change), stock, unit);
            expect(other, `${f.message}; ${f.fix}: cannot be made`).not.toBeNull();
            const still = shopFindings(other as PartPlan, shop).some((g) => g.code === f.code);
            expect(still, `${f.message}; ${f.fix}: still found`).toBe(false);
          }
        }
      }),
      { numRuns: runs },
    );
  });
});

/** Lengths of random parameters as text in mm, so that a job in inches means the same. */
function asText(params: Json, { values }: AnyFamily): unknown {
  return sizesIn(params)
    .filter(({ path }) => declaredAt(values, path)?.unit === 'mm')
    .reduce<unknown>((p, { path, given }) => putAt(p, path, `${given} mm`), params);
}

test('many rules were met, and many changes applied', () => {
  expect(seen.size).toBeGreaterThan(14);
  expect(applied).toBeGreaterThan(50);
});

test('rules look only: a part and a shop that are frozen stay as they are', () => {
  const freeze = <T>(value: T): T => {
    if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
      Object.freeze(value);
      for (const inner of Object.values(value)) freeze(inner);
    }
    return value;
  };
  const [box] = FAMILIES.filter((f) => f.describe.example.height !== undefined);
  const plan = planOr(box as AnyFamily, (box as AnyFamily).describe.example as Json, {
    material: 'mild-steel',
    thickness: 1,
    ratio: 1,
  });
  const { family, ...rest } = plan as PartPlan;
  const subject = { ...freeze(rest), family } as PartPlan;
  const first = shopFindings(subject, freeze(DEFAULT_SHOP));
  expect(shopFindings(subject, DEFAULT_SHOP)).toEqual(first);
  expect(SHOP_CHECKS.length).toBeGreaterThan(25);
  expect(sayIn('mm').size(1)).toBe('1 mm');
});
