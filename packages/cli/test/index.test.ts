import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { COMMANDS } from '../src/commands/index.js';
import { tinwright, tinwrightInColour } from './host.js';
import { stripJob } from './jobs.js';
import { jobFile } from './place.js';

const VERBS = COMMANDS.map((c) => c.verb);
const ESCAPE = '\u001b';

test('there are verbs to test', () => {
  expect(VERBS).toEqual([
    'make',
    'check',
    'refit',
    'explain',
    'order',
    'plan',
    'template',
    'packet',
    'page',
    'shear',
    'nest',
    'sizes',
    'worker',
    'shop',
    'strip',
    'starter',
    'families',
    'bend',
    'materials',
    'gauges',
    'completion',
  ]);
});

test('help lists every verb with what it does', async () => {
  const { exit, out, err } = await tinwright('--help');
  expect(exit).toBe(0);
  expect(err).toBe('');
  for (const { verb, argument, summary } of COMMANDS) {
    const all = `${argument?.name}${argument?.several === true ? '..' : ''}`;
    const name = argument?.needed === false ? ` [${all}]` : ` <${all}>`;
    expect(out).toContain(`tinwright ${verb}${argument === undefined ? '' : name} `);
    expect(out).toContain(summary);
  }
});

describe.each(VERBS)('%s', (verb) => {
  test('help shows its examples', async () => {
    const { exit, out } = await tinwright(verb, '--help');
    const examples = COMMANDS.find((c) => c.verb === verb)?.examples ?? [];
    expect(exit).toBe(0);
    expect(examples.length).toBeGreaterThan(0);
    expect(out).toContain('Examples:');
    // whole, so that they can be copied
    for (const [line] of examples) expect(out.split('\n')).toContain(`  ${line.replace('$0', 'tinwright')}`);
  });

  test('an unknown option is refused and named', async () => {
    const job = COMMANDS.find((c) => c.verb === verb)?.argument?.needed === true ? ['job.yaml'] : [];
    const { exit, out, err } = await tinwright(verb, ...job, '--sheen');
    expect(exit).toBe(2);
    expect(err).toMatch(new RegExp(`^${verb}: there is no option --sheen\\. .*Known: .*help\\.\n$`));
    expect(out).toBe('');
  });
});

test.each([[['--version']], [['make', '--version']]])(
  '%j prints the version of the package',
  async (argv) => {
    const { version } = JSON.parse(await readFile(new URL('../package.json', import.meta.url), 'utf8'));
    expect(await tinwright(...argv)).toEqual({ exit: 0, out: `${version}\n`, err: '' });
  },
);

test('no verb at all is refused, with where to look', async () => {
  const { exit, err } = await tinwright();
  expect(exit).toBe(2);
  expect(err).toBe('tinwright: give a verb; tinwright --help lists them.\n');
});

test('an unknown verb is refused and named', async () => {
  const { exit, out, err } = await tinwright('fold');
  expect(exit).toBe(2);
  expect(err).toMatch(/^tinwright: there is no verb "fold"\. Known: make, .*\.\n$/);
  expect(out).toBe('');
});

test('an unknown option of a good verb is named, and nothing is done', async () => {
  const job = await jobFile(stripJob());
  const { exit, out, err } = await tinwright('check', job, '--jsno');
  expect(exit).toBe(2);
  expect(err).toMatch(/^check: there is no option --jsno\. Did you mean "json"\? Known: .*\n$/);
  expect(out).toBe('');
});

test('a verb without its job is refused', async () => {
  for (const verb of ['make', 'check', 'explain'])
    expect(await tinwright(verb)).toEqual({
      exit: 2,
      out: '',
      err: `${verb}: give a job file, - for standard input.\n`,
    });
});

test('a word too many is refused and named', async () => {
  const { exit, err } = await tinwright('materials', 'brass');
  expect(exit).toBe(2);
  expect(err).toBe('materials: "brass" is one argument too many.\n');
});

const QUIET = [
  ...VERBS.map((verb) => [verb, '--help']),
  ['families'],
  ['families', 'handle'],
  ['starter', 'open-box'],
  ['bend', '--thickness', '1'],
  ['materials'],
  ['gauges'],
];

test.each(QUIET)('%s %s without colour prints no colour codes', async (...argv) => {
  const { exit, out, err } = await tinwright(...argv);
  expect(exit).toBe(0);
  expect(out.length).toBeGreaterThan(20);
  expect(out + err).not.toContain(ESCAPE);
});

test('job verbs without colour print no colour codes, with colour they do', async () => {
  const tight = await jobFile(stripJob(['insideRadius: 1.0', 'insideRadius: 0.5']));
  for (const verb of ['check', 'explain']) {
    const plain = await tinwright(verb, tight);
    const bright = await tinwrightInColour(verb, tight);
    expect(plain.out).not.toContain(ESCAPE);
    expect(bright.out).toContain(ESCAPE);
    expect(withoutColour(bright.out)).toBe(plain.out);
  }
});

test('results for a program are never coloured', async () => {
  const tight = await jobFile(stripJob(['insideRadius: 1.0', 'insideRadius: 0.5']));
  const { out } = await tinwrightInColour('check', tight, '--json');
  expect(out).not.toContain(ESCAPE);
  expect(JSON.parse(out).findings).toHaveLength(1);
});

const withoutColour = (text: string) => text.replaceAll(new RegExp(`${ESCAPE}\\[\\d+m`, 'g'), '');
