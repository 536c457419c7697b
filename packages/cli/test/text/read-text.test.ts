import { describe, expect, test } from 'vitest';
import { LONGEST_TEXT, readText, TextError } from '../../src/text/read-text.js';
import { stripJob } from '../jobs.js';

const read = (text: string) => readText(new Uint8Array(Buffer.from(text)));

const TEXT = `units: mm
parts:
  - name: tray
    hem: { type: closed, length: 15 }
    legs: [30,
      60]
`;

test('data is what the text says, as plain values', () => {
  expect(read(TEXT).data).toEqual({
    units: 'mm',
    parts: [{ name: 'tray', hem: { type: 'closed', length: 15 }, legs: [30, 60] }],
  });
});

describe('a path leads back to its line and column, counted from 1', () => {
  test.each([
    ['a value', ['units'], '1:8'],
    ['an entry of a list', ['parts', 0], '3:5'],
    ['a value in a group', ['parts', 0, 'hem', 'length'], '4:34'],
    ['an entry on the next line', ['parts', 0, 'legs', 1], '6:7'],
    ['a missing value: the group it should stand in', ['parts', 0, 'width'], '3:5'],
    ['a missing group: what is there of the way', ['parts', 0, 'endTabs', 'length'], '3:5'],
    ['an entry past the end of a list', ['parts', 7, 'name'], '3:3'],
    ['the job itself', [], '1:1'],
  ] as const)('%s', (_, path, place) => {
    const { line, column } = read(TEXT).locate({ path });
    expect(`${line}:${column}`).toBe(place);
  });

  test('a key at fault: where the key stands', () => {
    const { locate } = read(TEXT);
    expect(locate({ path: ['parts', 0, 'hem', 'length'], at: 'key' })).toEqual({ line: 4, column: 26 });
  });

  test('a value behind an alias: where it is written', () => {
    const { locate } = read('a: &hem\n  length: 15\nb: *hem\n');
    expect(locate({ path: ['b', 'length'] })).toEqual({ line: 2, column: 11 });
  });

  test('columns count from the start of the text, not of its byte order mark', () => {
    const { locate } = read(`\ufeff${TEXT}`);
    expect(locate({ path: ['units'] })).toEqual({ line: 1, column: 8 });
  });
});

test('numbers, words and dates are read as YAML 1.2: no yes, no octal, no sixty', () => {
  const { data } = read('a: yes\nb: 012\nc: 1:30\nd: 2026-11-25\ne: "0x10"\nf: 1e3\n');
  expect(data).toEqual({ a: 'yes', b: 12, c: '1:30', d: '2026-11-25', e: '0x10', f: 1000 });
});

test('all problems of the text are told, each with its place', () => {
  const text = `${stripJob(['width: 40', 'width: 40\n    width: 50'])}    legs: [1]\n`;
  const problems = () => {
    try {
      read(text);
      return [];
    } catch (error) {
      return error instanceof TextError ? error.problems : [];
    }
  };
  expect(problems().map((p) => p.place)).toEqual([
    { line: 13, column: 5 },
    { line: 16, column: 5 },
  ]);
  expect(problems().map((p) => p.message)).toEqual(['this key stands twice', 'this key stands twice']);
});

test('bytes beyond the longest job are not parsed', () => {
  expect(() => read('#'.repeat(LONGEST_TEXT + 1))).toThrow(TextError);
  expect(() => read(`a: 1\n${'#'.repeat(LONGEST_TEXT - 5)}`)).not.toThrow();
});
