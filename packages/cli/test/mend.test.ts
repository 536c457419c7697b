import { FAMILIES, JobError, planJob, readJob } from '@tinwright/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withMends } from '../src/mend.js';
import { partJob } from './jobs.js';
import { make, refused } from './place.js';

const spiral = (legs: readonly number[], head: object = {}) =>
  partJob('bent-strip', { width: 24, legs, angles: legs.slice(1).map(() => 90) }, head);

// 1 mm sheet: the fifth leg comes up behind the first and runs through the second, which stands 52 off the floor
test('a strip that runs into itself: the leg and the length that would work, and it does', async () => {
  const [problem, ...more] = await refused(spiral([75, 52, 30, 12, 45]));
  expect(more).toEqual([]);
  expect(problem).toContain('part "tray": panels leg-2 and leg-5 pass through each other');
  const [, leg, length, way] = /Use legs\[(\d)\] of ([\d.]+) mm or (less|more)\.$/.exec(problem ?? '') ?? [];
  const legs = [75, 52, 30, 12, 45];
  const put = (size: number) => legs.map((l, i) => (i === Number(leg) ? size : l));
  expect((await make(spiral(put(Number(length))))).exit).toBe(0);
  // it is the edge of what works
  const step = way === 'less' ? 0.05 : -0.05;
  expect((await make(spiral(put(Number(length) + step)))).exit).toBe(2);
});

test('in a job in inches it is told in inches, and works as it is printed', async () => {
  const inches = {
    units: 'in',
    stock: { material: 'mild-steel', thickness: 0.04 },
    bending: { rule: 'k-factor', insideRadius: 0.04 },
  };
  const [problem] = await refused(spiral([3, 2, 1.2, 0.5, 1.8], inches));
  const [, leg, length] = /Use legs\[(\d)\] of ([\d.]+) in or (?:less|more)\.$/.exec(problem ?? '') ?? [];
  const legs = [3, 2, 1.2, 0.5, 1.8].map((l, i) => (i === Number(leg) ? Number(length) : l));
  expect((await make(spiral(legs, inches))).exit).toBe(0);
});

test('strips at random that run into themselves: what is named works by itself', () => {
  const legs = fc.array(fc.integer({ min: 8, max: 90 }), { minLength: 4, maxLength: 6 });
  let mended = 0;
  fc.assert(
    fc.property(legs, (list) => {
      const data = (of: readonly number[]) => JSON.parse(spiral(of)) as unknown;
      const job = readJob(data(list));
      const error = thrown(() => planJob(job));
      if (error === null) return;
      const [problem, ...more] = withMends(job, error).problems;
      expect(more).toEqual([]);
      const [, leg, size] =
        /^Use legs\[(\d)\] of ([\d.]+) mm or (?:less|more)$/.exec(problem?.fix ?? '') ?? [];
      if (leg === undefined) return; // the strip's width mends nothing, so no size may do
      mended += 1;
      const mend = list.map((l, i) => (i === Number(leg) ? Number(size) : l));
      expect(
        thrown(() => planJob(readJob(data(mend)))),
        JSON.stringify([list, problem]),
      ).toBeNull();
    }),
    { numRuns: 60 },
  );
  expect(mended).toBeGreaterThan(10);
});

test('a long strip rolled up in itself: one problem, not one for every two panels', async () => {
  const found = await refused(spiral(Array.from({ length: 24 }, () => 30)));
  expect(found).toHaveLength(1);
  expect(found[0]).toContain('Change the sizes so that they stay clear of each other.');
});

test('problems that no size mends keep their words', () => {
  const job = readJob(JSON.parse(spiral([30, 30])), FAMILIES);
  const problem = { code: 'flat-sum', path: [], message: 'panels and bends', fix: 'Say so', part: 'other' };
  expect(withMends(job, new JobError([problem])).problems).toEqual([problem]);
  const joint = { ...problem, code: 'joint-self', part: 'tray' };
  expect(withMends(job, new JobError([joint])).problems).toEqual([joint]);
});

function thrown(work: () => unknown): JobError | null {
  try {
    work();
    return null;
  } catch (error) {
    if (error instanceof JobError) return error;
    throw error;
  }
}
