import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { changedText, type ListChange } from '../../src/text/changed-text.js';

const NEW = { name: 'n', size: [3, 4] };
const SAID = '{ name: n, size: [ 3, 4 ] }';

describe('a list changed, every other letter as it was', () => {
  test.each<[string, ListChange, string, string]>([
    [
      'blanks, quotes, numbers, comments and folded text',
      { list: 'offcuts', more: [NEW] },
      'units: mm       # u\n\n\nnote: >\n  folded\n  twice\nname: "\\x41"   # n\noffcuts:\n    -   {size: [ 1e3,2 ],   name: a}   # ours\n\n# end\n',
      'units: mm       # u\n\n\nnote: >\n  folded\n  twice\nname: "\\x41"   # n\noffcuts:\n    -   {size: [ 1e3,2 ],   name: a}   # ours\n    - NEW\n\n# end\n',
    ],
    [
      'line ends of two characters and a byte order mark',
      { list: 'offcuts', more: [NEW] },
      '\uFEFFunits: mm\r\noffcuts:\r\n- { name: a }\r\n',
      '\uFEFFunits: mm\r\noffcuts:\r\n- { name: a }\r\n- NEW\r\n',
    ],
    [
      'a list the file does not have, behind it a mark of its end',
      { list: 'offcuts', more: [NEW] },
      'units: mm # u\n...\n',
      'units: mm # u\noffcuts:\n  - NEW\n...\n',
    ],
    [
      'rows in lines: one goes with what stands behind it, a comment before it stays',
      { list: 'offcuts', without: new Set([1]), more: [NEW] },
      'offcuts:\n  - name: a # a\n    k: 1\n\n  # of the tray job\n  - name: b # b\n    k: 2 # two\n  - name: c\nunits: mm\n',
      'offcuts:\n  - name: a # a\n    k: 1\n\n  # of the tray job\n  - name: c\n  - NEW\nunits: mm\n',
    ],
    [
      'the last row goes, another comes',
      { list: 'offcuts', without: new Set([0]), more: [NEW] },
      'offcuts: # ours\n  - { name: a }',
      'offcuts: # ours\n  - NEW\n',
    ],
    [
      'none is left',
      { list: 'offcuts', without: new Set([0, 1]) },
      'offcuts: # ours\n- { name: a }\n- { name: b }\nunits: mm\n',
      'offcuts: [] # ours\nunits: mm\n',
    ],
    [
      'between brackets: the first two go',
      { list: 'offcuts', without: new Set([0, 1]) },
      'offcuts: [{name: a},  {name: b},{name: c}] # d\n',
      'offcuts: [{name: c}] # d\n',
    ],
    [
      'between brackets: the last two go, another comes',
      { list: 'offcuts', without: new Set([1, 2]), more: [NEW] },
      'offcuts: [{name: a},  {name: b},{name: c}]\n',
      'offcuts: [{name: a}, NEW]\n',
    ],
    [
      'between brackets: all go',
      { list: 'offcuts', without: new Set([0]) },
      'offcuts: [ {name: a} ]\n',
      'offcuts: []\n',
    ],
    [
      'an empty list, and a file in braces',
      { list: 'offcuts', more: [NEW] },
      '{units: mm, offcuts: []} # x\n',
      '{units: mm, offcuts: [NEW]} # x\n',
    ],
    [
      'a value alone',
      { list: 'sheets', rows: new Map([[1, { name: 'b', size: [2, 1], count: 2 }]]) },
      'sheets:\n  - { name: a, count: 0x3 }\n  - { name:  b,   size: [2,1], count:  3 }\n',
      'sheets:\n  - { name: a, count: 0x3 }\n  - { name:  b,   size: [2,1], count:  2 }\n',
    ],
  ])('%s', (_, change, before, after) => {
    expect(changedText(before, change)).toBe(after.replace('NEW', SAID));
  });
});

describe('what is used a second time is written out', () => {
  test('a count that two rows share: only one of them changes', () => {
    const text = 'sheets:\n  - { name: a, count: &c 3 } # a\n  - { name: b, count: *c } # b\n';
    const first = changedText(text, { list: 'sheets', rows: new Map([[0, { name: 'a', count: 2 }]]) });
    expect(first).toBe('sheets:\n  - { name: a, count: 2 } # a\n  - { name: b, count: 3 } # b\n');
    expect(changedText(text, { list: 'sheets', rows: new Map([[1, { name: 'b', count: 2 }]]) })).toBe(
      'sheets:\n  - { name: a, count: &c 3 } # a\n  - { name: b, count: 2 } # b\n',
    );
  });

  test('a row goes whose size another one takes', () => {
    const text = 'offcuts:\n  - &a { name: a, size: &s [1, 2] }\n  - { name: b, size: *s } # b\n';
    expect(changedText(text, { list: 'offcuts', without: new Set([0]) })).toBe(
      'offcuts:\n  - { name: b, size: [ 1, 2 ] } # b\n',
    );
  });

  test('a list that is another one', () => {
    const text = 'spare: &l [{ name: a }] # ours\noffcuts: *l\n';
    expect(changedText(text, { list: 'offcuts', more: [NEW] })).toBe(
      `spare: [{ name: a }] # ours\noffcuts: [ { name: a }, ${SAID} ]\n`,
    );
  });
});

test.each([
  ['{ "units": "mm", "offcuts": [{ "name": "a" }] }', '{ "units": "mm", "offcuts": [{ "name": "a" }, NEW] }'],
  [
    '{\n\t"offcuts": [\n\t\t{"name": "a"}\n\t]\n}\n',
    '{\n\t"offcuts": [\n\t\t{"name": "a"},\n\t\tNEW\n\t]\n}\n',
  ],
  ['{ "units": "mm" }', '{ "units": "mm", "offcuts": [NEW] }'],
])('JSON stays JSON: %s', (before, after) => {
  const changed = changedText(before, { list: 'offcuts', more: [NEW] });
  expect(changed).toBe(after.replace('NEW', JSON.stringify(NEW)));
  expect(JSON.parse(changed).offcuts.at(-1)).toEqual(NEW);
});

test('keys written the long way: what the file says stays, though not how', () => {
  const text = '? offcuts\n: - { name: a }\n';
  const changed = changedText(text, { list: 'offcuts', without: new Set([0]), more: [NEW] });
  expect(parse(changed)).toEqual({ offcuts: [NEW] });
});

test('a mark of an older YAML is not heeded, as where files are read', () => {
  const text = '%YAML 1.1\n---\nsheets:\n  - { name: yes, count: 010 }\n';
  expect(changedText(text, { list: 'sheets', rows: new Map([[0, { name: 'yes', count: 9 }]]) })).toBe(
    text.replace('010', '9'),
  );
});
