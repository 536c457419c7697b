import { describe, expect, test } from 'vitest';
import { HEAD, STRIP, stripJob } from '../jobs.js';
import { make, refused } from '../place.js';

const LENGTH = 'a length such as 12.5 or "15 1/2 in" allowed';
const WIDTH = '12:12: part "bracket": width';
const PARTS_MISSING = HEAD.replace('parts:\n', '');

describe('one wrong value: one problem at its line and column', () => {
  test.each([
    // wrong types
    ['a list for a length', 'width: 40', 'width: [40]', `${WIDTH}: a list given, ${LENGTH}`],
    [
      'named values for a length',
      'width: 40',
      'width: { a: 1 }',
      `${WIDTH}: a group of keys and values given`,
    ],
    ['nothing for a length', 'width: 40', 'width:', `12:11: part "bracket": width: nothing given, ${LENGTH}`],
    ['yes for a length', 'width: 40', 'width: true', `${WIDTH}: true given, ${LENGTH}`],
    ['a word for a length', 'width: 40', 'width: wide', `${WIDTH}: "wide" is not a length`],
    ['an empty text for a length', 'width: 40', "width: ''", `${WIDTH}: an empty text is not`],
    [
      'a text for an angle',
      '[90, 90]',
      '[90, "90"]',
      '14:18: part "bracket": angles[1]: "90" given, a number',
    ],
    ['a number for a list', '[90, 90]', '90', '14:13: part "bracket": angles: 90 given, a list allowed'],
    [
      'a text for stock',
      'stock:\n  material: galvanised-steel\n  thickness: 1.0',
      'stock: tin',
      '2:8: stock: ',
    ],
    // not finite
    ['.nan for a length', 'width: 40', 'width: .nan', `${WIDTH}: NaN given, ${LENGTH}`],
    ['.inf for a length', 'width: 40', 'width: .inf', `${WIDTH}: Infinity given`],
    ['-.inf for a length', 'width: 40', 'width: -.inf', `${WIDTH}: -Infinity given`],
    [
      '.nan for an angle',
      '[90, 90]',
      '[.nan, 90]',
      '14:14: part "bracket": angles[0]: NaN given, a number allowed',
    ],
    ['.nan for K', 'k: 0.42', 'k: .nan', '7:6: bending.k: NaN given, a number allowed'],
    ['.inf for the thickness', 'thickness: 1.0', 'thickness: .inf', '4:14: stock.thickness: Infinity given'],
    // out of range, with the range
    [
      'a negative length',
      'width: 40',
      'width: -40',
      'part "bracket": width: -40 mm given, 1 mm to 10000 mm allowed',
    ],
    ['a length of zero', 'width: 40', 'width: 0', `${WIDTH}: 0 mm given, 1 mm to 10000 mm allowed`],
    [
      'a length of 1000 km',
      'width: 40',
      'width: 1e9',
      `${WIDTH}: 1000000000 mm given, 1 mm to 10000 mm allowed`,
    ],
    [
      'a leg of 20 m',
      '60, 30]',
      '20000, 30]',
      '13:16: part "bracket": legs[1]: 20000 mm given, more than 0 to 10000',
    ],
    ['a plate for sheet', 'thickness: 1.0', 'thickness: 100', '100 mm given, 0.1 mm to 6 mm allowed'],
    ['foil for sheet', 'thickness: 1.0', 'thickness: 0.05', '0.05 mm given, 0.1 mm to 6 mm allowed'],
    [
      'a radius of half a metre',
      'Radius: 1.0',
      'Radius: 500',
      '8:17: bending.insideRadius: 500 mm given, 0 mm to',
    ],
    [
      'a negative radius',
      'Radius: 1.0',
      'Radius: -1',
      '8:17: bending.insideRadius: -1 mm given, 0 mm to 100 mm',
    ],
    ['K of 7', 'k: 0.42', 'k: 7', '7:6: bending.k: 7 given, more than 0 to 1 allowed'],
    ['K of 0', 'k: 0.42', 'k: 0', '7:6: bending.k: 0 given, more than 0 to 1 allowed'],
    ['a negative leg', '60, 30]', '-60, 30]', '13:16: part "bracket": legs[1]: -60 mm given, more than 0'],
    [
      'an angle of 200',
      '[90, 90]',
      '[90, 200]',
      '14:18: part "bracket": angles[1]: 200 deg given, -180 to 180 deg',
    ],
    // lengths that cannot be read
    ['two units in one length', 'width: 40', 'width: 4 cm 3 mm', `${WIDTH}: "4 cm 3 mm" mixes units`],
    ['inches and millimetres', 'width: 40', 'width: "1 in 3 mm"', `${WIDTH}: "1 in 3 mm" mixes`],
    ['a length divided by zero', 'width: 40', 'width: 1/0 in', `${WIDTH}: `],
    ['a length in yards', 'width: 40', 'width: 1 yd', `${WIDTH}: "1 yd" is not a length`],
    ['a decimal comma', 'width: 40', "width: '12,5'", `${WIDTH}: "12,5" is not a length`],
    // words
    ['units there are none of', 'units: mm', 'units: cm', '1:8: units: "cm" given'],
    [
      'a material in other letters',
      'galvanised-steel',
      'galvanized-steel',
      '3:13: stock.material: "galvanized-steel"',
    ],
    [
      'an unknown rule',
      'rule: k-factor',
      'rule: kfactor',
      '6:9: bending.rule: "kfactor" given. Did you mean "k-factor"?',
    ],
    [
      'an unknown family',
      'bent-strip',
      'bent-stripe',
      '11:13: part "bracket": family: "bent-stripe" given. Did you mean "bent-strip"?',
    ],
  ])('%s', async (_, from, to, says) => {
    const problems = await refused(stripJob([from, to]));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(says);
  });
});

test.each([
  ['perRadius', 'perRadius: 9\n  perThickness: 1', '7:14: bending.perRadius: 9 given, 0 to 2 allowed.'],
  [
    'perThickness',
    'perRadius: 1\n  perThickness: -1',
    '8:17: bending.perThickness: -1 given, 0 to 3 allowed.',
  ],
])('a constant out of its range: %s of the linear rule, with the range', async (_, constants, says) => {
  const job = stripJob(['rule: k-factor\n  k: 0.42', `rule: linear\n  ${constants}`]);
  expect(await refused(job)).toEqual([says]);
});

describe('pieces of a part', () => {
  test.each([
    ['no pieces', '    quantity: 0\n', '15:15: part "bracket": quantity: 0 given, 1 to 10000 allowed'],
    [
      'half a piece',
      '    quantity: 1.5\n',
      '15:15: part "bracket": quantity: 1.5 given, a whole number allowed',
    ],
    [
      'a thousand million',
      '    quantity: 1e9\n',
      '15:15: part "bracket": quantity: 1000000000 given, 1 to 10000 allowed',
    ],
    ['a word', '    quantity: two\n', '15:15: part "bracket": quantity: "two" given, a '],
  ])('%s', async (_, line, says) => {
    expect((await refused(HEAD + STRIP + line)).map((p) => p.includes(says))).toEqual([true]);
  });
});

describe('unknown keys name the nearest known one', () => {
  test.each([
    ['of the job', 'stock:', 'stok:', '2:1: stok: unknown key "stok". Did you mean "stock"?'],
    [
      'of the stock',
      'thickness:',
      'thicknes:',
      '4:3: stock.thicknes: unknown key "thicknes". Did you mean "thickness"?',
    ],
    [
      'of the bending',
      'insideRadius:',
      'insideradius:',
      '8:3: bending.insideradius: unknown key "insideradius". Did you mean "insideRadius"?',
    ],
    ['of a part', 'legs:', 'legz:', '13:5: part "bracket": legz: unknown key "legz". Did you mean "legs"?'],
    [
      'of another rule',
      'k: 0.42',
      'group: soft',
      '7:3: bending.group: unknown key "group". Known: rule, insideRadius, k',
    ],
  ])('%s', async (_, from, to, says) => {
    expect((await refused(stripJob([from, to]))).join('\n')).toContain(says);
  });

  test('of a group inside a part', async () => {
    const channel = `  - name: body\n    family: hemmed-channel\n    length: 400\n    width: 200\n    height: 55\n`;
    const [problem, ...more] = await refused(
      `${HEAD}${channel}    hem: { type: closed, length: 15, gapp: 1 }\n`,
    );
    expect(more).toEqual([]);
    expect(problem).toContain('15:38: part "body": hem.gapp: unknown key "gapp". Known: type, length');
  });
});

describe('a misspelt key that tells kinds apart is named beside what is missing', () => {
  test.each([
    [
      'the family of a part',
      stripJob(['family: bent-strip', 'familly: bent-strip']),
      '10:5: part "bracket": family: missing. One of hemmed-channel',
      '11:5: part "bracket": familly: unknown key "familly". Did you mean "family"? Write family: bent-strip.',
    ],
    [
      'with a misspelt family',
      stripJob(['family: bent-strip', 'fam: bend-strip']),
      '10:5: part "bracket": family: missing.',
      '11:5: part "bracket": fam: unknown key "fam". Did you mean "family"? Write family: bent-strip.',
    ],
    [
      'the rule of the bending',
      stripJob(['rule: k-factor', 'ruel: 0.42']),
      '6:3: bending.rule: missing. One of k-factor',
      '6:3: bending.ruel: unknown key "ruel". Did you mean "rule"? Known: rule.',
    ],
  ])('%s', async (_, job, missing, misspelt) => {
    const [first, second, ...more] = await refused(job);
    expect(more).toEqual([]);
    expect(first).toContain(missing);
    expect(second).toBe(misspelt);
  });
});

describe('a value just out of its range is printed so that it can be told from the limit', () => {
  test.each([
    ['mm', 'thickness: 1.0', 'thickness: 0.00001', '0.00001 mm given, 0.1 mm to 6 mm allowed.'],
    ['mm', 'thickness: 1.0', 'thickness: 1e-30', '1e-30 mm given, 0.1 mm to 6 mm allowed.'],
    ['mm', 'thickness: 1.0', 'thickness: 0.0999', '0.0999 mm given, 0.1 mm to 6 mm allowed.'],
    ['mm', 'width: 40', 'width: 10000.001', '10000.001 mm given, 1 mm to 10000 mm allowed.'],
    ['mm', '60, 30]', '10000.00004, 30]', '10000.00004 mm given, more than 0 to 10000 mm allowed.'],
    // 6 mm are 0.23622 in and 10 m are 393.7008 in: what is said to be allowed is rounded so that it is
    ['in', 'thickness: 1.0', 'thickness: 0.2364', '0.2364 in given, 0.004 in to 0.236 in allowed.'],
    ['in', 'thickness: 1.0', 'thickness: 0.0039', '0.0039 in given, 0.004 in to 0.236 in allowed.'],
    ['in', 'width: 40', 'width: 393.701', '393.701 in given, 0.04 in to 393.7 in allowed.'],
  ])('in %s: %s -> %s', async (units, from, to, says) => {
    const sheet: readonly [string, string][] =
      units === 'in' && !from.startsWith('thick') ? [['thickness: 1.0', 'thickness: 0.04']] : [];
    const problems = await refused(stripJob(['units: mm', `units: ${units}`], ...sheet, [from, to]));
    expect(problems.filter((p) => p.endsWith(`: ${says}`))).toHaveLength(1);
  });

  test.each(['0.004', '0.236'])('the limits printed in inches are allowed: %s in', async (inches) => {
    const job = stripJob(['units: mm', 'units: in'], ['thickness: 1.0', `thickness: ${inches}`]);
    const { problems } = await make(job);
    expect(problems.filter((p) => p.includes('thickness'))).toEqual([]);
  });
});

test('a hem of no kind is none, whatever length and gap stand beside it', async () => {
  const channel = (hem: string) =>
    `${HEAD}  - name: body\n    family: hemmed-channel\n    length: 400\n    width: 200\n    height: 55\n    hem: ${hem}\n`;
  const bare = await make(channel('{ type: none }'));
  for (const hem of ['{ type: none, length: 15 }', '{ type: none, length: 0, gap: wide }']) {
    const { exit, out } = await make(channel(hem));
    expect(exit).toBe(0);
    expect(out.split('\n')[0]).toBe(bare.out.split('\n')[0]);
  }
  expect((await refused(channel('{ type: none, lenght: 15 }')))[0]).toContain('Did you mean "length"?');
});

describe('what is missing', () => {
  test.each([
    ['units', HEAD.replace('units: mm\n', '') + STRIP, '1:1: units: missing. One of mm, in'],
    ['parts', PARTS_MISSING, '1:1: parts: missing'],
    [
      'a part in the list',
      HEAD.replace('parts:', 'parts: []'),
      '9:8: parts: 0 in the list, 1 to 500 allowed',
    ],
    ['a name', (HEAD + STRIP).replace('name: bracket\n    ', ''), '10:5: part 1: name: missing'],
    [
      'a family',
      stripJob(['    family: bent-strip\n', '']),
      '10:5: part "bracket": family: missing. One of hemmed-channel',
    ],
    [
      'a length, with what it is',
      stripJob(['    width: 40\n', '']),
      '10:5: part "bracket": width: missing. Give a length such as 12.5 or "15 1/2 in": width along the bends',
    ],
    ['a thickness', stripJob(['  thickness: 1.0\n', '']), '3:3: stock: no thickness. Give thickness'],
  ])('%s', async (_, job, says) => {
    const problems = await refused(job);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(says);
  });

  test('stock, for the job and for the part: said at the part, with both places to give it', async () => {
    const [problem, ...more] = await refused(
      stripJob(['stock:\n  material: galvanised-steel\n  thickness: 1.0\n', '']),
    );
    expect(more).toEqual([]);
    expect(problem).toMatch(
      /^7:5: part "bracket": there is no stock for this part\. .* for the job or for the part/,
    );
  });
});

test('several problems are all told, in the order of the file', async () => {
  const problems = await refused(
    stripJob(
      ['thickness: 1.0', 'thickness: 90'],
      ['units: mm', 'unit: mm\nunits: mm'],
      ['width: 40', 'width: -4'],
    ) + STRIP.replace('bracket', 'a/b').replace('[30, 60, 30]', '[30]'),
  );
  const starts = [
    '1:1: unit: ',
    '5:14: stock.thickness: ',
    '13:12: part "bracket": width: ',
    '16:11: part 2: name: ',
    '19:11: part 2: legs: ',
  ];
  expect(problems.map((p, i) => p.slice(0, starts[i]?.length))).toEqual(starts);
});

test('more parts than a job may have are counted, with the number allowed', async () => {
  const parts = Array.from({ length: 501 }, (_, i) => STRIP.replace('bracket', `clip-${i}`)).join('');
  expect((await refused(HEAD + parts)).join()).toContain('parts: 501 in the list, 1 to 500 allowed');
});
