import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { HEAD, STRIP } from '../jobs.js';
import { jobFile } from '../place.js';

const lines = async (text: string) => {
  const path = await jobFile(text);
  const { exit, err } = await tinwright('check', path);
  expect(exit).toBe(2);
  return err
    .trimEnd()
    .split('\n')
    .map((l) => l.slice(path.length + 1));
};
const times = (n: number, text: (i: number) => string) =>
  Array.from({ length: n }, (_, i) => text(i)).join('');

describe('what is wrong many times is read in the time that its length takes: the first hundred and a count', () => {
  test('20,000 unknown keys', async () => {
    const said = await lines(`${HEAD}${STRIP}${times(20_000, (i) => `key${i}: 1\n`)}`);
    expect(said).toHaveLength(101);
    expect(said[0]).toContain('15:1: key0: unknown key "key0"');
    expect(said[100]).toBe(' and 19900 more; --json lists all.');
  });

  test('--json lists all', async () => {
    const path = await jobFile(`${HEAD}${STRIP}${times(300, (i) => `key${i}: 1\n`)}`);
    const { out } = await tinwright('check', path, '--json');
    expect(JSON.parse(out).problems).toHaveLength(300);
  });
});

describe('what is far too much is one problem', () => {
  test.each([
    [
      '20,000 parts, all wrong',
      `${HEAD}${times(20_000, (i) => `  - {name: p${i}, w: 1}\n`)}`,
      'parts: 20000 in the list, 1 to 500 allowed',
    ],
    [
      '200,000 legs',
      `${HEAD}${STRIP.replace('[30, 60, 30]', `[${'10,'.repeat(200_000)}]`)}`,
      'legs: 200000 in the list, 2 to 61 allowed',
    ],
    [
      '160,000 legs that are lists',
      `${HEAD}${STRIP.replace('[30, 60, 30]', `[${'[],'.repeat(160_000)}]`)}`,
      'legs: 160000 in the list, 2 to 61 allowed',
    ],
    [
      '300,000 joints without a key',
      `${HEAD}${STRIP}joints: [${'{},'.repeat(300_000)}]\n`,
      'joints: 300000 in the list, 0 to 500 allowed',
    ],
    [
      '20,000 aliases',
      `name: &a x\nnote: [${'*a,'.repeat(20_000)}]\n${HEAD}${STRIP}`,
      'more than 100 aliases',
    ],
    [
      'a bracket left open before 300 parts',
      `${HEAD}  - { name: a, legs: [30\n${times(300, (i) => `  - { name: p${i}, family: bent-strip, width: 40, legs: [30, 30], angles: [90] }\n`)}`,
      '',
    ],
  ])('%s', async (_, text, says) => {
    const said = await lines(text);
    expect(said).toHaveLength(1);
    expect(said[0]).toContain(says);
  });
});

describe('what stands within itself', () => {
  test.each([
    ['a list of parts', HEAD.replace('parts:\n', 'parts: &p [*p]\n'), '9:12: *p'],
    [
      'a part',
      `${HEAD}${STRIP.replace('- name', '- &q\n    name').replace('[30, 60, 30]', '*q')}`,
      '14:11: *q',
    ],
    [
      'the stock',
      `${HEAD.replace('stock:\n', 'stock: &s\n').replace('galvanised-steel', '*s')}${STRIP}`,
      '3:13: *s',
    ],
  ])('%s', async (_, text, says) => {
    const [first, ...more] = await lines(text);
    expect(more).toEqual([]);
    expect(first).toBe(`${says} stands within what it names. Write the value out.`);
  });
});

test('a key that every object has by its nature is refused, not swallowed', async () => {
  expect(await lines(`${HEAD}${STRIP}measured: { __proto__: 5 }\n`)).toEqual([
    '15:13: measured.__proto__: "__proto__" given. Write part.size, such as body.insideWidth.',
  ]);
});

test.each(['assembly', 'exploded', 'Assembly'])('a part cannot be called %s', async (name) => {
  const [first] = await lines(`${HEAD}${STRIP.replace('bracket', name)}`);
  expect(first).toContain(`"${name}" given; pictures of the whole object have that name`);
});
