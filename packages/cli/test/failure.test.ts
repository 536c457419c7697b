import { JobError, type Problem } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import type { Host } from '../src/console.js';
import { placedProblems, printProblems } from '../src/failure.js';
import { readJobText, TextError } from '../src/job-text.js';

const text = readJobText(new Uint8Array(Buffer.from('units: mm\nname: tray\nparts: [1, 2]\n')));
const problem = (path: Problem['path'], message: string, fix = ''): Problem => ({
  code: 'size-too-large',
  path,
  message,
  fix,
});

test('problems come in the order of the file, whatever the order they were found in', () => {
  const error = new JobError([
    problem(['parts', 1], 'third'),
    problem(['units'], 'first'),
    problem(['parts', 0], 'second'),
  ]);
  const placed = placedProblems(error, 'job.yaml', text);
  expect(placed.map((p) => [p.message, p.line, p.column, p.path])).toEqual([
    ['first', 1, 8, 'units'],
    ['second', 3, 9, 'parts[0]'],
    ['third', 3, 12, 'parts[1]'],
  ]);
});

test('problems at one place stay in the order they were found in', () => {
  const error = new JobError(['b', 'a', 'c'].map((m) => problem(['units'], m)));
  expect(placedProblems(error, 'job.yaml', text).map((p) => p.message)).toEqual(['b', 'a', 'c']);
});

test('without a text to look in, a problem stands at the start of the file', () => {
  const placed = placedProblems(new JobError([problem(['units'], 'm')]), 'job.yaml', null);
  expect(placed).toMatchObject([{ file: 'job.yaml', line: 1, column: 1 }]);
});

test('a problem that knows its place keeps it', () => {
  const error = new TextError([{ ...problem([], 'm'), place: { line: 7, column: 3 } }]);
  expect(placedProblems(error, 'job.yaml', text)).toMatchObject([{ line: 7, column: 3 }]);
});

describe('printing', () => {
  const printed = (json: boolean) => {
    const said = { out: '', err: '' };
    const host: Host = {
      out: (t) => {
        said.out += t;
      },
      err: (t) => {
        said.err += t;
      },
      colour: true,
      stdin: async () => new Uint8Array(),
    };
    const error = new JobError([problem(['units'], 'too wide', 'Use 5 mm'), problem([], 'no job')]);
    printProblems(host, placedProblems(error, 'job.yaml', text), json);
    return said;
  };

  test('one a line: file, line, column, path, what, fix', () => {
    const { out, err } = printed(false);
    expect(out).toBe('');
    expect(err).toBe('job.yaml:1:1: no job.\njob.yaml:1:8: units: too wide. Use 5 mm.\n');
  });

  test('as JSON on stdout, with nothing on stderr', () => {
    const { out, err } = printed(true);
    expect(err).toBe('');
    const { problems } = JSON.parse(out);
    expect(problems[1]).toEqual({
      file: 'job.yaml',
      line: 1,
      column: 8,
      code: 'size-too-large',
      path: 'units',
      where: 'units',
      message: 'too wide',
      fix: 'Use 5 mm',
    });
  });
});
