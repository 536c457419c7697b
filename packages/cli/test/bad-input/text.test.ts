import { describe, expect, test } from 'vitest';
import { HEAD, STRIP, stripJob } from '../jobs.js';
import { make, refused } from '../place.js';

const JOB = stripJob();
const bytes = (text: string, encoding: BufferEncoding = 'utf8') =>
  new Uint8Array(Buffer.from(text, encoding));

describe('a file that is not a job at all', () => {
  test.each([
    ['empty', '', '1:1: the job file is empty'],
    ['of blanks and line ends', ' \n\n', '1:1: the job file is empty'],
    ['of a comment', '# seed trays\n', '1:1: the job file is empty'],
    ['of nothing, said in YAML', 'null\n', '1:1: nothing given'],
    ['of a word', 'hello\n', '1:1: "hello" given'],
    ['of a list', '- a\n- b\n', '1:1: a list given'],
    [
      'with zero bytes',
      bytes('\u0089PNG\r\n\u001a\n\u0000\u0000', 'latin1'),
      '1:1: the job file is not text',
    ],
    [
      'in UTF-16, as a shell of one system writes it',
      bytes(`\ufeff${JOB}`, 'utf16le'),
      '1:1: the job file is UTF-16 text. Save it as UTF-8',
    ],
    ['in UTF-16 without a mark', bytes(JOB, 'utf16le'), '1:1: the job file is not text'],
    [
      'with bytes that are no UTF-8',
      new Uint8Array([0x6e, 0xff, 0xfe, 0x0a]),
      '1:1: the job file is not UTF-8 text',
    ],
    [
      'in Latin-1',
      bytes(`note: Kräuter\n${JOB}`, 'latin1'),
      '1:1: the job file is not UTF-8 text. Save it as UTF-8',
    ],
    [
      'with the bytes of half a pair',
      new Uint8Array([0x6e, 0xed, 0xa0, 0x80]),
      '1:1: the job file is not UTF-8',
    ],
  ])('%s', async (_, content, says) => {
    const [problem, ...more] = await refused(content);
    expect(more).toEqual([]);
    expect(problem).toContain(says);
  });
});

describe('what some editors do to a file is taken', () => {
  test.each([
    ['a byte order mark', bytes(`\ufeff${JOB}`)],
    ['CRLF line ends', JOB.replaceAll('\n', '\r\n')],
    ['both', bytes(`\ufeff${JOB.replaceAll('\n', '\r\n')}`)],
    ['no line end at the end', JOB.trimEnd()],
    ['an end-of-document line', `---\n${JOB}...\n`],
    ['JSON', JSON.stringify({ units: 'mm', stock: STOCK, parts: [PART] }, null, '\t')],
    ['a value written once and used twice', stripJob(['s: 1.0', 's: &t 1.0'], ['Radius: 1.0', 'Radius: *t'])],
  ])('%s', async (_, content) => {
    const { exit, err } = await make(content);
    expect(err).toBe('');
    expect(exit).toBe(0);
  });

  test.each([
    ['a byte order mark', bytes(`\ufeff${JOB.replace('units', 'unitz')}`)],
    ['CRLF line ends', JOB.replace('units', 'unitz').replaceAll('\n', '\r\n')],
  ])('%s: places stay those of the text', async (_, content) => {
    const problems = await refused(bytes(`${Buffer.from(content).toString()}x: 1\n`));
    expect(problems.map((p) => p.split(': ').slice(0, 2))).toEqual([
      ['1:1', 'units'],
      ['1:1', 'unitz'],
      ['15:1', 'x'],
    ]);
  });
});

test.each([
  [
    'a no-break space behind a colon',
    '{ units: mm, parts: [{ width:\u00a030 }] }',
    /^1:24: a space in this key is no plain one/,
  ],
  [
    'a no-break space behind a colon in block style',
    stripJob(['    width: 40', '    width:\u00a040']),
    /^12:11: a space here is no plain one\. Type it anew with the space bar/,
  ],
  [
    'an indent of no-break spaces',
    stripJob(['    width: 40', '\u00a0   width: 40']),
    /^12:1: a space here is no plain one/,
  ],
  [
    'a bracket without an end',
    `${JOB}note: [a, [b\n`,
    /: a bracket that was opened before this is not closed\. Close it with \]/,
  ],
  [
    'a hexadecimal number',
    stripJob(['    width: 40', '    width: 0x28']),
    /^12:12: 0x28 given, a decimal number allowed/,
  ],
  ['an octal number', stripJob(['    width: 40', '    width: 0o50']), /^12:12: 0o50 given/],
  [
    'a decimal comma',
    `{ units: mm, parts: [{ width: 30,5 }] }`,
    /^1:34: a number stands where a key should\. Write decimals with a point: 12\.5/,
  ],
])('%s is told for what it is', async (_, content, says) => {
  expect((await refused(content))[0]).toMatch(says);
});

const STOCK = { material: 'mild-steel', thickness: 1 };
const PART = { name: 'clip', family: 'bent-strip', width: 20, legs: [30, 30], angles: [90] };

describe('YAML that a job does not need is refused at its place', () => {
  test.each([
    [
      'a key given twice',
      stripJob(['    width: 40', '    width: 40\n    width: 50']),
      '13:5: this key stands twice. Keep one of the two.',
    ],
    [
      'a merge key',
      stripJob(['    width: 40', '    <<: { width: 40 }']),
      '12:5: merge keys (<<) are not read',
    ],
    [
      'a merge key of an alias',
      `x: &b { width: 40 }\n${stripJob(['    width: 40', '    <<: *b'])}`,
      '13:5: merge keys',
    ],
    [
      'a second document',
      `${JOB}---\n${JOB}`,
      '15:1: a second document starts here. Keep one document in a file.',
    ],
    [
      'a tag of another program',
      stripJob(['40', '!!js/function "f"']),
      '12:12: tags (!…) are not read. Write the plain value',
    ],
    ['a tag of its own', stripJob(['width: 40', 'width: !size 40']), '12:12: tags (!…) are not read'],
    ['an alias of nothing', stripJob(['width: 40', 'width: *wide']), '12:12: there is nothing named &wide'],
    ['a list that is not closed', stripJob(['[90, 90]', '[90, 90']), ': '],
    ['a tab for an indent', JOB.replaceAll('    ', '\t'), '11:1: a tab is used to indent. Use spaces.'],
    ['a line that is no pair', `${JOB}foo\n`, '15:1: a colon, comma, quote or bracket is missing here'],
    ['a text without end', stripJob(['bracket', '"bracket']), ': '],
    [
      'a line without its colon',
      stripJob(['width: 40', 'width 40']),
      '12:5: a colon is missing on this line',
    ],
    ['no space behind a colon', stripJob(['width: 40', 'width:40']), '12:5: a colon is missing on this line'],
    ['a key of two thousand letters', `${'k'.repeat(2000)}: 1\n${JOB}`, '1:1: this key is far too long.'],
  ])('%s', async (_, job, says) => {
    expect((await refused(job)).join('\n')).toContain(says);
  });

  test.each([
    ['a list for a key', '? [a, b]\n: 1\n', '15:3'],
    ['a group for a key', '? { a: 1 }\n: 1\n', '15:3'],
    ['a list for a key, on one line', '[a, b]: 1\n', '15:1'],
  ])('%s: one problem at its place', async (_, lines, place) => {
    expect(await refused(JOB + lines)).toEqual([
      `${place}: a list or group stands where a key should. Write key: value.`,
    ]);
  });
});

describe('text made to use up memory or time is refused', () => {
  test('aliases of aliases: a billion words in nine lines', async () => {
    const letters = [...'abcdefghi'];
    const list = (letter: string) => Array.from({ length: 9 }, () => `*${letter}`).join(', ');
    const bomb = letters.map((l, i) => `${l}: &${l} [${i === 0 ? 'lol' : list(letters[i - 1] ?? '')}]`);
    expect(await refused(`${bomb.join('\n')}\n`)).toEqual([
      '1:1: aliases of aliases make far too much of this file. Write the values out.',
    ]);
  });

  test('five thousand aliases', async () => {
    const many = Array.from({ length: 5000 }, () => '*a').join(', ');
    const [problem] = await refused(`a: &a [x]\nb: [${many}]\n`);
    expect(problem).toMatch(/^2:\d+: more than 100 aliases/);
  });

  test('a list that holds itself', async () => {
    expect(await refused('a: &a [*a]\n')).not.toEqual([]);
  });

  test.each([
    ['thirty lists in each other', `a: ${'['.repeat(30)}${']'.repeat(30)}\n`],
    ['a hundred thousand lists in each other', `a: ${'['.repeat(100_000)}${']'.repeat(100_000)}\n`],
    ['five thousand maps in each other', `${'{ a: '.repeat(5000)}1${' }'.repeat(5000)}\n`],
    ['six hundred indents', `${Array.from({ length: 600 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')} 1\n`],
  ])('%s', async (_, job) => {
    expect((await refused(job)).join()).toMatch(/nested (more than 16 deep|too deeply)/);
  });
});

describe('keys that objects have by themselves', () => {
  test.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])(
    '%s is an unknown key',
    async (key) => {
      expect(await refused(`${JOB}${key}: { stock: 1 }\n`)).toEqual([
        expect.stringMatching(new RegExp(`^15:1: ${key}: unknown key "${key}"\\. `)),
      ]);
      expect(await refused(`${HEAD}${STRIP}    ${key}: { quantity: 9 }\n`)).toEqual([
        expect.stringMatching(new RegExp(`^15:5: part "bracket": ${key}: unknown key "${key}"\\. `)),
      ]);
      expect(Object.keys(Object.prototype)).toEqual([]);
    },
  );

  test('__proto__ in JSON gives a job no stock', async () => {
    const job = JSON.stringify({ units: 'mm', parts: [PART] });
    const hidden = job.replace('{', `{"__proto__":{"stock":${JSON.stringify(STOCK)}},`);
    expect((await refused(hidden)).join()).toContain('unknown key "__proto__"');
  });
});
