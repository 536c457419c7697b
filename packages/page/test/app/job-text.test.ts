import { expect, test } from 'vitest';
import { readText, withChange, withoutPart } from '../../src/app/job-text.js';

const BOXES = `parts:
  - { name: a, height: &h 40, hem: &m { type: closed, length: 8 } } # a
  - { name: b, height: *h, hem: *m } # b
`;
const parts = (text: string) => (readText(text).data as { parts: unknown }).parts;

test('a value that others take by an alias: it changes in its own place alone', () => {
  expect(parts(withChange(BOXES, ['parts', 0, 'height'], 50))).toMatchObject([
    { height: 50 },
    { height: 40 },
  ]);
  expect(parts(withChange(BOXES, ['parts', 1, 'hem', 'length'], 9))).toMatchObject([
    { hem: { type: 'closed', length: 8 } },
    { hem: { type: 'closed', length: 9 } },
  ]);
});

test('a part goes whose values another one takes', () => {
  const text = withoutPart(BOXES, 0);
  expect(parts(text)).toEqual([{ name: 'b', height: 40, hem: { type: 'closed', length: 8 } }]);
  expect(text).toContain('# b');
});

test('a mark of an older YAML is not heeded, as the command does not', () => {
  const text = '%YAML 1.1\n---\nparts:\n  - { name: no, height: 010 }\n';
  expect(parts(text)).toEqual([{ name: 'no', height: 10 }]);
  expect(parts(withChange(text, ['parts', 0, 'height'], 11))).toEqual([{ name: 'no', height: 11 }]);
});

// the command refuses these by the same rules, `bad-input/text.test.ts` of it
test.each([
  ['a number of another base', 'parts:\n  - { length: 0x190 }', 2],
  ['a tag', 'a: 1\nb: !!float 400', 2],
  ['a merge key', 'a: &a { b: 1 }\nc: { <<: *a }', 2],
  ['a list where a key should stand', '? [a]\n: 1', 1],
  ['a key twice', 'a: 1\nb: 2\na: 3', 3],
  ['a zero byte', 'a: 1\nb: x\0y', 2],
  ['an alias of what it stands in', 'a: &a [*a]', 1],
  ['lists in lists without end', '['.repeat(17) + ']'.repeat(17), 1],
])('not read here either: %s', (_, text, line) => {
  const { data, problem } = readText(text);
  expect(data).toBeNull();
  expect(problem).toMatchObject({ line });
});

test('as many aliases are followed as by the command', () => {
  const many = `a: &a 1\nb: [${'*a, '.repeat(100)}]`;
  expect(readText(many)).toEqual({ data: { a: 1, b: Array(100).fill(1) }, problem: null });
  expect(readText(`${many}\nc: *a`).problem).toEqual({ line: 3, message: 'more than 100 aliases' });
});
