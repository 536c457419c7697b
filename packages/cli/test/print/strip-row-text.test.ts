import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { rowData, withRow } from '../../src/print/strip-row-text.js';

const ROW = { name: 'lot 7', material: 'mild-steel', thickness: 1, k: 0.41 };
const LINE = '{ name: lot 7, material: mild-steel, thickness: 1, k: 0.41 }';

describe('a row more: every other letter of the file stays', () => {
  test.each([
    ['no strips yet', 'units: mm   # here\n', 'units: mm   # here\nstrips:\n  - ROW\n'],
    ['no line end', 'units: mm', 'units: mm\nstrips:\n  - ROW\n'],
    [
      'behind others, a comment and more behind them',
      'strips:  # ours\n    - { name: a,  k: 0.4 }   # first\n\nname: x # y\n',
      'strips:  # ours\n    - { name: a,  k: 0.4 }   # first\n    - ROW\n\nname: x # y\n',
    ],
    [
      'behind one that stands in lines',
      'strips:\n- name: a\n  k: 0.4  # first\nname: x\n',
      'strips:\n- name: a\n  k: 0.4  # first\n- ROW\nname: x\n',
    ],
    ['at the end, no line end', 'strips:\n  - { name: a }', 'strips:\n  - { name: a }\n  - ROW\n'],
    ['line ends of two characters', 'units: mm\r\n# c\r\n', 'units: mm\r\n# c\r\nstrips:\r\n  - ROW\r\n'],
  ])('%s', (_, before, after) => {
    expect(withRow(before, ROW, null)).toBe(after.replace('ROW', LINE));
  });

  test.each([
    ['an empty list', '# ours\nunits: mm # here\nstrips: [] # none yet\n'],
    ['a list on one line', '# ours\nunits: mm # here\nstrips: [{ name: a }] # one\n'],
    ['JSON', '{ "units": "mm", "strips": [{ "name": "a" }] }'],
    ['a file that ends in so many words', '# ours\nunits: mm # here\n...\n'],
  ])('%s: written anew, its comments kept', (_, before) => {
    const after = withRow(before, ROW, null);
    expect(parse(after)).toEqual({ ...parse(before), strips: [...(parse(before).strips ?? []), ROW] });
    for (const [comment] of before.matchAll(/# \w+/g)) expect(after).toContain(comment);
  });
});

describe('a row in the place of another', () => {
  test('the same keys: only values change', () => {
    const before =
      'strips: # ours\n  - { name: a, k: 0.4 } # one\n  - name: lot 7   # the new coil\n    material: mild-steel\n    k: 0.3     # was\n    thickness: 2\nname: x  # y\n';
    expect(withRow(before, ROW, 1)).toBe(
      before.replace('k: 0.3', 'k: 0.41').replace('thickness: 2', 'thickness: 1'),
    );
  });

  test('other keys: the row anew, comments of the file kept', () => {
    const after = withRow('# ours\nstrips:\n  - { name: lot 7, k: 0.3 }\n  - { name: b } # two\n', ROW, 0);
    expect(parse(after)).toEqual({ strips: [ROW, { name: 'b' }] });
    for (const comment of ['# ours', '# two']) expect(after).toContain(comment);
  });

  test('a name that has to be quoted is', () => {
    const row = { ...ROW, name: 'a: b, "c" # d' };
    const before = 'strips:\n  - { name: lot 7, material: mild-steel, thickness: 1, k: 0.3 }\n';
    expect(parse(withRow(before, row, 0))).toEqual({ strips: [row] });
    expect(parse(withRow(before, row, null)).strips[1]).toEqual(row);
  });
});

test('numbers of a row: what the readings carry, in the unit of the file', () => {
  const row = {
    name: 'lot 7',
    material: 'mild-steel',
    thickness: 25.4 / 16,
    insideRadius: 1.5000000001,
    k: 0.400001,
    kError: 0.01234567,
    springback: null,
    springbackError: 0,
    strips: 3,
  };
  expect(rowData(row, 'in')).toEqual({
    name: 'lot 7',
    material: 'mild-steel',
    thickness: 0.0625,
    insideRadius: 0.059055,
    k: 0.4,
    kError: 0.0123,
    strips: 3,
  });
  expect(rowData({ ...row, springback: 1.234 }, 'mm')).toMatchObject({ insideRadius: 1.5, springback: 1.23 });
});
