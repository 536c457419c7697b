import type { Host } from '@tinwright/cli';
import { JobError, type Problem } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { fault, placedProblems, printProblems } from '../../src/host/failure.js';
import { readText, TextError } from '../../src/text/read-text.js';

const text = readText(new Uint8Array(Buffer.from('units: mm\nname: tray\nparts: [1, 2]\n')));
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

/** A host that keeps what is printed. */
function listening(of: Pick<Host, 'colour' | 'debug'>) {
  const said = { out: '', err: '' };
  const host: Host = {
    ...of,
    out: (t) => {
      said.out += t;
    },
    err: (t) => {
      said.err += t;
    },
    stdin: async () => new Uint8Array(),
  };
  return { host, said };
}

describe('printing', () => {
  const printed = (json: boolean) => {
    const { host, said } = listening({ colour: true });
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

describe('a fault of the program', () => {
  const told = (error: unknown, json: boolean, debug: boolean) => {
    const { host, said } = listening({ colour: false, debug });
    return { exit: fault(host, json, error), ...said };
  };
  const error = new TypeError('x is not a function\nin the second line');
  const LINE = 'a fault of the program (TypeError: x is not a function); please report it with the job file';

  test('is one line on stderr, exit 2, no stack', () => {
    expect(told(error, false, false)).toEqual({ exit: 2, out: '', err: `tinwright: ${LINE}.\n` });
  });

  test('may be anything that was thrown', () => {
    expect(told('no error at all', false, true).err).toMatch(/^tinwright: a fault .*\(no error at all\);/);
  });

  test('is a problem as JSON', () => {
    const { exit, out, err } = told(error, true, false);
    expect({ exit, err }).toEqual({ exit: 2, err: '' });
    expect(JSON.parse(out).problems).toEqual([
      { code: 'fault', path: '', message: `tinwright: ${LINE}`, fix: '' },
    ]);
  });

  test('shows its stack to who debugs it', () => {
    expect(told(error, false, true).err).toMatch(
      /^TypeError: x is not a function\n.*\n +at .*failure\.test/s,
    );
  });
});
