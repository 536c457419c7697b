import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { stripJob } from '../jobs.js';
import { below, emptyFolder, jobFile } from '../place.js';

describe('a verb there is none of', () => {
  test.each([
    ['mak', 'make'],
    ['chek', 'check'],
    ['bnd', 'bend'],
    ['gauge', 'gauges'],
    ['MAKE', 'make'],
  ])('%s: did you mean %s?', async (typed, meant) => {
    const { exit, out, err } = await tinwright(typed, 'job.yaml');
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(
      err.startsWith(`tinwright: there is no verb "${typed}". Did you mean "${meant}"? Known: make, `),
    ).toBe(true);
  });

  test.each(['constructor', '__proto__', 'toString'])(
    '%s, which objects have by themselves',
    async (word) => {
      const { exit, err } = await tinwright(word);
      expect(exit).toBe(2);
      expect(err).toMatch(new RegExp(`there is no verb "${word}"\\. .*Known: make, `));
    },
  );
});

test.each([
  [
    'an option',
    ['make', 'job.yaml', '--out', 'a\nb'],
    'make: --out: "aU+000Ab" given, a text in one line allowed.\n',
  ],
  ['one of several', ['refit', 'job.yaml', '--made', 'a', '--made', 'b\r'], '--made: "bU+000D" given'],
  ['an argument', ['check', 'a\u2028b.yaml'], 'check: job: "aU+2028b.yaml" given'],
  ['one of several arguments', ['sizes', 'merge', 'a', 'b\nc'], 'sizes: job: "bU+000Ac" given'],
])('%s of two lines is refused before it is printed', async (_, argv, says) => {
  const { exit, out, err } = await tinwright(...argv);
  expect({ exit, out }).toEqual({ exit: 2, out: '' });
  expect(err).toContain(says);
});

describe('behind -- nothing is an option', () => {
  test('a job is one there too', async () => {
    const { exit, out } = await tinwright('check', '--json', '--', await jobFile(stripJob()));
    expect(exit).toBe(0);
    expect(JSON.parse(out)).toHaveProperty('findings');
  });

  test('what begins with a dash is a file, and one argument too many where there is a job', async () => {
    const { exit, err } = await tinwright('check', '--', '--json');
    expect({ exit, err }).toEqual({ exit: 2, err: './--json:1:1: there is no such file.\n' });
    const both = await tinwright('check', await jobFile(stripJob()), '--', '--out');
    expect(both).toMatchObject({ exit: 2, err: 'check: "./--out" is one argument too many.\n' });
  });
});

describe('options before the verb', () => {
  const MARKER = fileURLToPath(new URL('../../../../examples/row-marker.mjs', import.meta.url));

  test.each([
    [['--with', MARKER, 'families', 'row-marker', '--json']],
    [['--json', '--with', MARKER, 'families', 'row-marker']],
    [[`--with=${MARKER}`, 'families', '--json', 'row-marker']],
  ])('%j is the same as behind it', async (argv) => {
    const { exit, out, err } = await tinwright(...argv);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(JSON.parse(out)).toMatchObject([{ name: 'row-marker' }]);
  });

  test('options of the verb too', async () => {
    const { exit, out } = await tinwright('--thickness', '1', '--k', '0.42', 'bend');
    expect(exit).toBe(0);
    expect(out).toContain('K = 0.42');
  });

  test('a value that looks like a verb is a value', async () => {
    const { exit, err } = await tinwright('--with', 'make', 'families');
    expect(exit).toBe(2);
    expect(err).toBe('families: --with make: there is no such file.\n');
  });

  test('an unknown verb behind them is still named', async () => {
    expect((await tinwright('--with', MARKER, 'familes')).err).toContain('there is no verb "familes"');
  });
});

test('a verb is found though its argument is named like another one', async () => {
  const { err } = await tinwright('check', 'make', '--jsno');
  expect(err).toMatch(/^check: there is no option --jsno/);
});

test.each([[['make', '--foo', 'job.yaml']], [['--foo', 'make', 'job.yaml']]])(
  '%j: the unknown option is named, not the job it took for its value',
  async (argv) => {
    expect((await tinwright(...argv)).err).toMatch(/^make: there is no option --foo\. Known: out, /);
  },
);

describe('an option there is none of', () => {
  test.each([
    ['make', '--outt', 'out'],
    ['make', '--dfx', 'dxf'],
    ['explain', '--prt', 'part'],
    ['check', '--jsn', 'json'],
  ])('%s %s: did you mean %s?', async (verb, typed, meant) => {
    const { exit, out, err } = await tinwright(verb, 'job.yaml', typed);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err.startsWith(`${verb}: there is no option ${typed}. Did you mean "${meant}"? Known: `)).toBe(
      true,
    );
  });

  test('a word with a dot is no option with a part of its own', async () => {
    const { exit, err } = await tinwright('bend', '--thickness.a', '1');
    expect(exit).toBe(2);
    expect(err).toContain('bend: there is no option --thickness.a. Did you mean "thickness"?');
  });

  test('no- before an option is another option', async () => {
    const { exit, err } = await tinwright('bend', '--thickness', '1', '--no-thickness');
    expect(exit).toBe(2);
    expect(err).toContain('bend: there is no option --no-thickness. Did you mean "thickness"?');
  });
});

describe('an option given twice is refused', () => {
  test.each([
    ['thickness', ['--thickness', '1', '--thickness', '2']],
    ['legs', ['--thickness', '1', '--legs', '10', '--legs', '20']],
    ['units', ['--thickness', '1', '--units', 'mm', '--units', 'in']],
    ['rule', ['--rule', 'din-6935', '--rule=nominal', '--thickness', '1']],
  ])('bend: %s', async (option, argv) => {
    expect(await tinwright('bend', ...argv)).toEqual({
      exit: 2,
      out: '',
      err: `bend: --${option} given more than once, once allowed.\n`,
    });
  });

  test('make: two folders, and none is written', async () => {
    const job = await jobFile(stripJob());
    const folder = await emptyFolder();
    const { exit, err } = await tinwright('make', job, '--out', `${folder}/a`, '--out', `${folder}/b`);
    expect(exit).toBe(2);
    expect(err).toBe('make: --out given more than once, once allowed.\n');
    expect(await below(folder)).toEqual([]);
  });

  test('explain: two parts', async () => {
    const { exit, err } = await tinwright('explain', await jobFile(stripJob()), '--part', 'a', '--part', 'b');
    expect(exit).toBe(2);
    expect(err).toBe('explain: --part given more than once, once allowed.\n');
  });
});

describe('an option without its value is refused', () => {
  test.each([
    ['bend', '--thickness'],
    ['make', 'job.yaml', '--out'],
    ['explain', 'job.yaml', '--part'],
    ['families', '--with'],
  ])('%s %s %s', async (...argv) => {
    const { exit, out, err } = await tinwright(...argv);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toBe(`${argv[0]}: give a value after ${argv.at(-1)}.\n`);
  });
});

describe('with --json, what is refused is a list of problems on stdout', () => {
  test.each([
    ['an unknown verb', ['mak', '--json'], 'usage', 'tinwright: there is no verb "mak"'],
    ['an unknown option', ['check', 'a', '--jso', '--json'], 'usage', 'check: there is no option --jso'],
    ['no job', ['make', '--json'], 'usage', 'make: give a job file'],
    ['a word too many', ['materials', 'tin', '--json'], 'usage', 'materials: "tin" is one argument too many'],
    [
      'an option given twice',
      ['bend', '--k', '1', '--k', '1', '--json'],
      'usage',
      'bend: --k given more than',
    ],
    ['an unknown family', ['families', 'hendle', '--json'], 'family-unknown', 'families: "hendle" given'],
    ['an unknown gauge system', ['gauges', 'tin', '--json'], 'gauge-system', 'gauges: "tin" given'],
    [
      'a module that is not there',
      ['families', '--with', 'no.mjs', '--json'],
      'with',
      '--with no.mjs: there is',
    ],
  ])('%s', async (_, argv, code, says) => {
    const { exit, out, err } = await tinwright(...argv);
    expect({ exit, err }).toEqual({ exit: 2, err: '' });
    const { problems, ...rest } = JSON.parse(out);
    expect(rest).toEqual({});
    expect(problems).toMatchObject([{ code, path: '', fix: '' }]);
    expect(problems[0].message).toContain(says);
  });

  test('a bend that cannot be', async () => {
    const { exit, out, err } = await tinwright('bend', '--thickness', '0', '--json');
    expect({ exit, err }).toEqual({ exit: 2, err: '' });
    expect(JSON.parse(out).problems).toMatchObject([
      { code: 'value-range', message: '0 mm given, 0.1 mm to 6 mm allowed' },
    ]);
  });

  test('a part that is not in the job', async () => {
    const { exit, out, err } = await tinwright('explain', await jobFile(stripJob()), '--part', 'x', '--json');
    expect({ exit, err }).toEqual({ exit: 2, err: '' });
    expect(JSON.parse(out).problems).toMatchObject([{ code: 'part-unknown' }]);
  });

  test('a folder that cannot be written: exit 3', async () => {
    const job = await jobFile(stripJob());
    const { exit, out, err } = await tinwright('make', job, '--out', job, '--json');
    expect({ exit, err }).toEqual({ exit: 3, err: '' });
    const { problems } = JSON.parse(out);
    expect(problems).toMatchObject([{ code: 'unwritable', path: '' }]);
    expect(problems[0].message).toBe(`${job}: is a file. Choose another folder with --out`);
  });
});

describe('a value of no text, as from a variable that is not set', () => {
  test.each([
    [['make', 'job.yaml', '--out', ''], 'make: give a value after --out.\n'],
    [['packet', 'job.yaml', '--out='], 'packet: give a value after --out.\n'],
    [['shear', 'job.yaml', '--rack', ''], 'shear: give a value after --rack.\n'],
    [
      ['refit', 'job.yaml', '--measured', 'a.b=1', '--measured', ''],
      'refit: give a value after --measured.\n',
    ],
    [['check', 'job.yaml', '--with', ''], 'check: give a value after --with.\n'],
    [['make', ''], 'make: give a job file, - for standard input.\n'],
  ])('%j is refused by name', async (argv, err) => {
    expect(await tinwright(...argv)).toEqual({ exit: 2, out: '', err });
  });
});
