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
