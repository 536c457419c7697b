// Plans and templates of random jobs: nothing on a page is in the way of a text, and every size is the pattern's.
import { FAMILIES, JobError, type PartPlan, planJob, readJob } from '@tinwright/core';
import { DIMS_NAMES, PAPERS, partPlan, partTemplate } from '@tinwright/export';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { paramsOf, sheets } from './kit/arbitrary.js';
import { pageFlaws } from './kit/page-flaws.js';

const JOBS = 200;

interface Random {
  readonly family: number;
  readonly paper: string;
  readonly dims: (typeof DIMS_NAMES)[number];
  readonly seed: number;
}

const random = fc.record({
  part: fc.constantFrom(...FAMILIES).chain((family) =>
    fc.record({ family: fc.constant(family), params: paramsOf(family), sheet: sheets }),
  ),
  paper: fc.constantFrom(...PAPERS.map((p) => p.name)),
  dims: fc.constantFrom(...DIMS_NAMES),
});

function planned(family: (typeof FAMILIES)[number], params: object, sheet: object): PartPlan | null {
  try {
    const data = { units: 'mm', ...sheet, parts: [{ name: 'part', family: family.name, ...params }] };
    return planJob(readJob(data)).parts[0] as PartPlan;
  } catch (error) {
    if (error instanceof JobError) return null;
    throw error;
  }
}

test(`on the plans of ${JOBS} random jobs no text meets a text, a line or the edge of the paper`, () => {
  let [drawn, small] = [0, 0];
  const flaws: string[] = [];
  for (const { part, paper, dims } of fc.sample(random, { numRuns: 6 * JOBS })) {
    const plan = planned(part.family, part.params, part.sheet);
    if (plan === null || drawn >= JOBS) continue;
    try {
      const { pages } = partPlan('random', plan, { paper, dims });
      const which = JSON.stringify([part.family.name, part.params, part.sheet, paper, dims]);
      flaws.push(...pages.flatMap((page, i) => pageFlaws(page).map((flaw) => `sheet ${i + 1}: ${flaw}: ${which}`)));
      drawn += 1;
    } catch (error) {
      if (!(error instanceof JobError)) throw error;
      expect(error.problems[0]?.code).toBe('paper-small');
      small += 1;
    }
  }
  expect(flaws).toEqual([]);
  expect(drawn).toBe(JOBS);
  expect(small).toBeLessThan(JOBS / 4);
});
