import { spawnSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { BIN } from './built.js';
import { tinwright, tinwrightInColour } from './host.js';
import { stripJob } from './jobs.js';
import { emptyFolder, jobFile } from './place.js';

const ESC = '\u001B';
const BIDI = '\u202E';

describe('an option that every object has by its nature', () => {
  test.each(['--constructor', '--toString', '--__proto__', '--hasOwnProperty=1'])(
    '%s is told apart',
    async (option) => {
      for (const argv of [[option], ['make', 'job.yaml', option]]) {
        const { exit, out, err } = await tinwright(...argv);
        expect({ exit, out }).toEqual({ exit: 2, out: '' });
        expect(err).toContain(`there is no option ${option.split('=')[0]}. `);
      }
    },
  );
});

describe('a module of somebody’s own', () => {
  const ran = async (source: string) => {
    const module = join(await emptyFolder(), 'mine.mjs');
    await writeFile(module, source);
    return spawnSync(process.execPath, [BIN, 'check', await jobFile(stripJob()), '--with', module], {
      encoding: 'utf8',
      timeout: 60_000,
    });
  };

  test.each([
    ['throws null', 'throw null;', 'cannot be loaded: it throws null.'],
    ['throws what cannot be said', 'throw Object.create(null);', 'it throws something that cannot be said.'],
    [
      'ends the program',
      'process.exit(0);',
      'the program was ended before it was done, by a module loaded with --with.',
    ],
    [
      'throws where nobody waits for it',
      "setTimeout(() => { throw new Error('late'); }); await new Promise((done) => setTimeout(done, 500));",
      'a fault of the program (Error: late); please report it with the job file.',
    ],
    ['waits for ever', 'await new Promise(() => {});', 'the program was ended before it was done'],
    [
      'throws control characters',
      `throw new Error('${'\\u001B'}[31mred \\u202Eback');`,
      'U+001B[31mred U+202Eback.',
    ],
  ])('%s: exit 2, one line', async (_, source, says) => {
    const { status, stdout, stderr } = await ran(source);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(says);
    expect(stderr.split('\n')).toHaveLength(2);
  });

  test('leaves a timer running: the command ends when its work is done', async () => {
    const rod =
      "{ name: 'rod', describe: {}, values: {}, params: () => ({}), part: () => null, derived: () => [] }";
    const { status, signal, stderr } = await ran(`setInterval(() => undefined, 100); export default ${rod};`);
    expect({ status, signal, stderr }).toEqual({ status: 0, signal: null, stderr: '' });
  });

  test.each(['/dev/zero', '.'])('%s is not a file', async (path) => {
    const { exit, err } = await tinwright('check', await jobFile(stripJob()), '--with', path);
    expect(exit).toBe(2);
    expect(err).toContain('is not a file.');
  });

  test('a file far too large is not read', async () => {
    const path = join(await emptyFolder(), 'large.mjs');
    await writeFile(path, ' '.repeat(10_000_001));
    const { err } = await tinwright('check', await jobFile(stripJob()), '--with', path);
    expect(err).toContain('a file of 10000001 bytes given, up to 10000000 allowed.');
  });
});

describe('control and direction-changing characters are printed by their number', () => {
  test('of a shop file', async () => {
    const shop = await jobFile(
      `name: "our ${ESC}[2Jshop${BIDI}"\n`.replace(ESC, '\\e').replace(BIDI, '\\u202E'),
    );
    for (const run of [tinwright, tinwrightInColour]) {
      const { out, err } = await run('shop', shop);
      expect(out + err).not.toContain(`${ESC}[2J`);
      expect(out + err).not.toContain(BIDI);
    }
  });

  test('of the name of a file or folder', async () => {
    const folder = await emptyFolder();
    const name = join(folder, `a${ESC}[2J${BIDI}.yaml`);
    await writeFile(name, 'units: furlongs\n');
    const { err } = await tinwright('check', name);
    expect(err).toContain('aU+001B[2JU+202E.yaml:1:8: ');
    const { out, exit } = await tinwright(
      'make',
      await jobFile(stripJob()),
      '--out',
      join(folder, `o${BIDI}ut`),
    );
    expect(exit).toBe(0);
    expect(out).toContain('oU+202Eut');
    expect(out).not.toContain(BIDI);
  });

  test('and escaped in JSON, which says the same', async () => {
    const out = join(await emptyFolder(), `o${BIDI}${ESC}ut`);
    const ran = await tinwright('make', await jobFile(stripJob()), '--out', out, '--json');
    expect(ran.out).not.toContain(BIDI);
    expect(JSON.parse(ran.out).out).toBe(out);
  });
});
