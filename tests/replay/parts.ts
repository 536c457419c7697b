// Random parts, planned and written: what a replay reads is what a shop would get.
import { FAMILIES, JobError, type JobPlan, jobReader, type PartPlan, planJob } from '@tinwright/core';
import { atOnce } from '@tinwright/core/internal';
import { jobFiles } from '@tinwright/files';
import { planSequence, type Shop } from '@tinwright/shop';
import { paramsOf } from '@tinwright/testing';
import fc from 'fast-check';
import { partToBend } from '../../packages/shop/src/sequence/answer/planned-sequence.js';
import { problemsOf } from '../../packages/shop/src/sequence/answer/problems.js';
import { anyPlan, planSearch } from '../../packages/shop/src/sequence/search/find-plan.js';
import type { WrittenBend } from './body.js';
import type { V2 } from './rigid.js';
import type { WrittenStep } from './step.js';

const read = jobReader(); // keeps the schemas that it builds

export interface WrittenPart {
  readonly name: string;
  readonly material: string;
  readonly thickness: number;
  readonly base: V2;
  readonly bends: readonly WrittenBend[];
  readonly sequence: {
    readonly status: string;
    readonly proved: boolean;
    readonly operations: readonly WrittenStep[];
  };
}

const sheets = fc
  .record({
    thickness: fc.constantFrom(0.5, 0.8, 1, 1, 1.2, 1.5),
    ratio: fc.constantFrom(0.5, 1, 1, 1.6, 2),
    material: fc.constantFrom('mild-steel', 'mild-steel', 'aluminium-5052-h32'),
  })
  .map(({ thickness, ratio, material }) => ({
    stock: { material, thickness },
    bending: { rule: 'k-factor', insideRadius: thickness * ratio },
  }));

const mm = (min: number, max: number) => fc.integer({ min, max });

/** Strips bent every way, and boxes of any proportion: what families' examples scaled do not reach. */
const strips = mm(1, 6).chain((n) =>
  fc.record({
    family: fc.constant('bent-strip'),
    width: mm(20, 400),
    legs: fc.array(mm(8, 110), { minLength: n + 1, maxLength: n + 1 }),
    angles: fc.array(fc.constantFrom(90, 90, -90, 45, -45, 30, 60, 120, -120, 135), {
      minLength: n,
      maxLength: n,
    }),
  }),
);

const boxes = fc.record(
  {
    family: fc.constant('open-box'),
    length: mm(50, 400),
    width: mm(50, 300),
    height: mm(12, 110),
    flangeReturn: mm(6, 20),
    corner: fc.constantFrom('open', 'lap', 'tabbed'),
    hem: fc.constantFrom({ type: 'closed', length: 10 }, { type: 'open', length: 10, gap: 1 }),
  },
  { requiredKeys: ['family', 'length', 'width', 'height'] },
);

const anyFamily = fc
  .constantFrom(...FAMILIES)
  .chain((family) => paramsOf(family).map((params): object => ({ family: family.name, ...params })));

export const parts: fc.Arbitrary<object> = fc
  .tuple(
    fc.oneof(strips as fc.Arbitrary<object>, boxes as fc.Arbitrary<object>, anyFamily, anyFamily),
    sheets,
  )
  .map(([part, sheet]) => ({ ...sheet, ...part }));

/** Planned; null where there is no such part. */
export function planned(part: object): JobPlan | null {
  try {
    return planJob(read({ units: 'mm', parts: [{ name: 'part', quantity: 1, ...part }] }));
  } catch (error) {
    if (error instanceof JobError) return null;
    throw error;
  }
}

/** True where every order was looked at and none found: why, and what would change it, takes longer to find than that. */
export function impossible(plan: JobPlan, shop: Shop): boolean | 'unproved' {
  for (const next of problems(plan, shop)) {
    const found = atOnce(planSearch(next()));
    if (found.moves !== null) return false;
    if (found.bound < Infinity) return 'unproved';
  }
  return true;
}

/** True where some order is soon found. */
export const possible = (plan: JobPlan, shop: Shop): boolean =>
  problems(plan, shop).some((next) => anyPlan(next(), 500).moves !== null);

const problems = (plan: JobPlan, shop: Shop) => problemsOf(partToBend(plan.parts[0] as PartPlan), shop);

/** A part as its files tell it; with its sequence where it is given. */
export function written(
  plan: JobPlan,
  shop: Shop | null,
): { readonly part: WrittenPart; readonly dxf: string } {
  const batch = { steps: [], seconds: 0, apart: 0, proved: true };
  const sequences = () => plan.parts.map((p) => planSequence(p, shop as Shop));
  const inShop = shop === null ? null : { shop, sequences: sequences(), batch, findings: [] };
  const files = jobFiles(plan, { dxf: 'r2000', inShop });
  const text = (path: string) => String(files.find((f) => f.path === path)?.content);
  const manifest = JSON.parse(text('job.json')) as { readonly parts: readonly WrittenPart[] };
  return { part: manifest.parts[0] as WrittenPart, dxf: text('parts/part.dxf') };
}
