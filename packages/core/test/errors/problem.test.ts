import { inspect } from 'node:util';
import { JobError, type Problem, pathText, problemText } from '@tinwright/core';
import { fail } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { within } from '../../src/errors/problem.js';

const thrown = (work: () => unknown): unknown => {
  try {
    work();
  } catch (error) {
    return error;
  }
  throw new Error('nothing was thrown');
};

const problems = (work: () => unknown): readonly Problem[] => {
  const error = thrown(work);
  if (error instanceof JobError) return error.problems;
  throw error;
};

test.each([
  [[], ''],
  [['units'], 'units'],
  [['parts', 0, 'hem', 'length'], 'parts[0].hem.length'],
  [['legs', 2], 'legs[2]'],
  [[1], '[1]'],
  [['grid', 0, 3], 'grid[0][3]'],
] as const)('the path %j: %s', (path, text) => {
  expect(pathText(path)).toBe(text);
});

test('a problem in one line: place, what is wrong, how to mend it', () => {
  const problem: Problem = {
    code: 'angle-range',
    path: ['parts', 0, 'angles', 1],
    message: '200 deg given, -180 to 180 deg allowed',
    fix: 'For a closed fold write 180',
  };
  expect(problemText(problem)).toBe(
    'part 1: angles[1]: 200 deg given, -180 to 180 deg allowed. For a closed fold write 180.',
  );
});

test('a problem of the whole job without a fix: the message alone', () => {
  expect(problemText({ code: 'job-empty', path: [], message: 'the job is empty', fix: '' })).toBe(
    'the job is empty.',
  );
});

test('fail: throws one problem with its code, path, message and fix', () => {
  expect(problems(() => fail('gauge-unknown', ['stock', 'gauge'], 'gauge 9 given', 'Nearest: 10'))).toEqual([
    { code: 'gauge-unknown', path: ['stock', 'gauge'], message: 'gauge 9 given', fix: 'Nearest: 10' },
  ]);
  expect(problems(() => fail('x', [], 'y'))).toEqual([{ code: 'x', path: [], message: 'y', fix: '' }]);
});

test('an error of two problems: both in its message, a line each, in order', () => {
  const list: readonly Problem[] = [
    { code: 'a', path: ['parts', 0], message: 'first', fix: '' },
    { code: 'b', path: ['units'], message: 'second', fix: 'Write mm' },
  ];
  const error = new JobError(list);
  expect(error.message).toBe('part 1: first.\nunits: second. Write mm.');
  expect(error.problems).toEqual(list);
  expect(error.name).toBe('JobError');
  expect(error).toBeInstanceOf(Error);
});

test('within: the result comes through', () => {
  expect(within(['parts', 0], () => 7)).toBe(7);
});

test('within: its path is put before the path of every problem, the rest stays', () => {
  const inner: readonly Problem[] = [
    { code: 'a', path: ['hem', 'length'], message: 'm', fix: 'f', at: 'key' },
    { code: 'b', path: [], message: 'n', fix: '' },
  ];
  const found = problems(() =>
    within(['parts', 2], () => {
      throw new JobError(inner);
    }),
  );
  expect(found).toEqual([
    { code: 'a', path: ['parts', 2, 'hem', 'length'], message: 'm', fix: 'f', at: 'key' },
    { code: 'b', path: ['parts', 2], message: 'n', fix: '' },
  ]);
  expect(inner[0]?.path).toEqual(['hem', 'length']);
});

test('within twice: outer path first', () => {
  const work = () => within(['parts'], () => within([3], () => fail('c', ['width'], 'm')));
  expect(problems(work)[0]?.path).toEqual(['parts', 3, 'width']);
});

test('within: another error comes through untouched', () => {
  const fault = new TypeError('not ours');
  const work = () =>
    within(['parts'], () => {
      throw fault;
    });
  expect(thrown(work)).toBe(fault);
});

test('a runtime that prints the error prints each problem once', () => {
  const printed = inspect(
    new JobError([{ code: 'leg-short', path: ['parts', 0], message: '5 mm given', fix: '' }]),
  );
  expect(printed.match(/5 mm given/g)).toHaveLength(1);
  expect(printed).not.toContain('leg-short');
});
