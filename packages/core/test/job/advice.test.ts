// A part that cannot be comes with a size that works, whoever plans the job.
import { FAMILIES, JobError, type JobPart, jobReader, type Problem, planJob, readJob } from '@tinwright/core';
import { valueAt, withValue } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const read = jobReader(); // keeps the schemas that it builds

const STOCK = {
  stock: { material: 'mild-steel', thickness: 1 },
  bending: { rule: 'k-factor', insideRadius: 1 },
};

const job = (family: string, params: object, head: object = {}) => ({
  units: 'mm',
  ...STOCK,
  ...head,
  parts: [{ name: 'tray', family, ...params }],
});

const spiral = (legs: readonly number[]) =>
  job('bent-strip', { width: 24, legs, angles: legs.slice(1).map(() => 90) });

function problemsOf(data: unknown): readonly Problem[] {
  try {
    planJob(read(data));
    return [];
  } catch (error) {
    if (error instanceof JobError) return error.problems;
    throw error;
  }
}

/** The job as a problem's advice has it. */
function mended(data: unknown, { path, fix }: Problem): unknown {
  const [, size] = /^Use ([\d.]+ (?:mm|in)) or (?:more|less)$/.exec(fix) ?? [];
  return size === undefined ? null : withValue(data, path, size);
}

// 1 mm sheet: the fifth leg comes up behind the first and runs through the second, which stands 52 off the floor
test('a strip that runs into itself: the leg and the length that would work, and it does', () => {
  const data = spiral([75, 52, 30, 12, 45]);
  const [problem, ...more] = problemsOf(data);
  expect(more).toEqual([]);
  expect(problem?.message).toContain('panels leg-2 and leg-5 pass through each other');
  expect(problem?.path.slice(0, 3)).toEqual(['parts', 0, 'legs']);
  expect(problemsOf(mended(data, problem as Problem))).toEqual([]);
});

test('strips at random that run into themselves: what is named works by itself', () => {
  const legs = fc.array(fc.integer({ min: 8, max: 90 }), { minLength: 4, maxLength: 6 });
  let count = 0;
  fc.assert(
    fc.property(legs, (list) => {
      const data = spiral(list);
      const [problem] = problemsOf(data);
      const other = problem === undefined ? null : mended(data, problem);
      if (other === null) return;
      count += 1;
      expect(problemsOf(other), JSON.stringify([list, problem])).toEqual([]);
    }),
    { numRuns: 60 },
  );
  expect(count).toBeGreaterThan(10);
});

test('a long strip rolled up in itself: one problem, not one for every two panels', () => {
  const found = problemsOf(spiral(Array.from({ length: 34 }, () => 30)));
  expect(found).toHaveLength(1);
  expect(found[0]?.fix).toBe('Change the sizes so that they stay clear of each other');
});

test('two sizes too short are both named, each with its own', () => {
  const found = problemsOf(
    job('hemmed-channel', {
      length: 400,
      width: 200,
      height: 55,
      hem: { type: 'closed', length: 1 },
      endTabs: { length: 2 },
    }),
  );
  expect(found.map((p) => [p.path.slice(2).join('.'), p.fix])).toEqual([
    ['hem.length', 'Use 2 mm or more'],
    ['endTabs.length', 'Use 2.5 mm or more'],
  ]);
});

test('a family builds from what it is given and refuses what is no parameter', () => {
  const [channel] = FAMILIES.filter((f) => f.describe.example.endTabs !== undefined);
  const data = job('bent-strip', { width: 20, legs: [20, 20], angles: [90] });
  const { sheet } = readJob(data as unknown).parts[0] as JobPart;
  const part = channel?.part({ length: 300, width: 100, height: 40 }, sheet);
  expect(part?.panels.map((p) => p.id)).toEqual(['base', 'north', 'south']);
  for (const wrong of [null, {}, { length: 'x' }, [], 3])
    expect(() => channel?.part(wrong, sheet)).toThrow(JobError);
  expect(valueAt(data, ['parts', 0, 'legs', 1])).toBe(20);
});

test('a folded pan with a small gap, walls upright: its pattern would meet itself, a tab that works is named', () => {
  const data = job(
    'flared-pan',
    {
      bottom: { length: 120, width: 80 },
      depth: 40,
      flare: 0,
      edge: { type: 'hem', length: 8 },
      corner: 'folded',
      gap: 0.05,
    },
    { stock: { material: 'mild-steel', thickness: 2 } },
  );
  const [problem, ...more] = problemsOf(data);
  expect(more).toEqual([]);
  expect(problem?.code).toBe('flat-crosses');
  expect(problemsOf(mended(data, problem as Problem))).toEqual([]);
});

test('an allowance far over the wire comes with the one that reaches round it', () => {
  const data = job('flared-pan', {
    bottom: { length: 120, width: 80 },
    depth: 40,
    flare: 10,
    edge: { type: 'wire', diameter: 3, allowance: 60 },
  });
  const [problem] = problemsOf(data);
  // three quarters round a middle radius of 2, and nine tenths of the wire's radius
  expect([problem?.path.slice(2), problem?.fix]).toEqual([['edge', 'allowance'], 'Use 10.77 mm or less']);
  expect(problemsOf(mended(data, problem as Problem))).toEqual([]);
});

test('a size under a hundredth of a millimetre is none', () => {
  const [problem] = problemsOf(job('bent-strip', { width: 20, legs: [20, 0.004], angles: [90] }));
  expect(problem?.message).toBe('0.004 mm given, 0.01 mm or more allowed');
});
