import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { tinwright, tinwrightWatched } from '../host.js';
import { HEAD, STRIP } from '../jobs.js';
import { below, emptyFolder, jobFile } from '../place.js';

const named = (name: string, ...parts: readonly string[]) =>
  `${name === '' ? '' : `name: ${name}\n`}${HEAD}${parts.map((p) => STRIP.replace('bracket', p)).join('')}`;

/** A folder that a command has filled with what is made of a job. */
async function standing(job: string, ...verbs: readonly string[]) {
  const out = join(await emptyFolder(), 'out');
  for (const verb of verbs)
    expect(await tinwright(verb, await jobFile(job), '--out', out)).toMatchObject({ err: '', exit: 0 });
  return out;
}

const SHELF = named('shelf', 'bracket', 'stay');
const BIN = named('bin', 'bracket', 'stay');
const VERBS = ['make', 'plan', 'template', 'packet'] as const;

describe('a folder holds what is made of one job', () => {
  test.each(VERBS.flatMap((a) => VERBS.filter((b) => a !== b).map((b) => [b, a] as const)))(
    '%s into what %s left of another job: refused by its name, nothing changed',
    async (verb, stood) => {
      const out = await standing(SHELF, stood);
      const before = await below(dirname(out));
      const ran = await tinwright(verb, await jobFile(BIN), '--out', out);
      expect(ran.exit).toBe(3);
      expect(ran.err).toMatch(
        /: holds \w+\.json of another job or size, "shelf"\. Choose another folder with --out, or take those files away\. Nothing was changed\.\n$/,
      );
      expect(await below(dirname(out))).toEqual(before);
    },
  );

  test.each(['plan', 'template'])('%s --part beside the parts of another job: refused', async (verb) => {
    const out = await standing(SHELF, verb);
    const path = join(out, `${verb}s.json`);
    const before = await readFile(path, 'utf8');
    const ran = await tinwright(verb, await jobFile(BIN), '--part', 'stay', '--out', out);
    expect(ran.exit).toBe(3);
    expect(ran.err).toContain(`holds ${verb}s.json of another job or size, "shelf".`);
    expect(await readFile(path, 'utf8')).toBe(before);
  });

  test('without names parts tell: one that goes on standing in a list, or none in common', async () => {
    const out = await standing(named('', 'bracket', 'stay'), 'plan');
    const part = await tinwright(
      'plan',
      await jobFile(named('', 'bracket')),
      '--part',
      'bracket',
      '--out',
      out,
    );
    expect(part).toMatchObject({ exit: 3, err: expect.stringContaining('with a part "stay"') });
    const other = await tinwright('make', await jobFile(named('', 'lid')), '--out', out);
    expect(other).toMatchObject({ exit: 3, err: expect.stringContaining('with a part "bracket"') });
  });
});

test.each(['plan', 'packet'])('%s: told before anything is drawn', async (verb) => {
  const out = await standing(SHELF, 'make');
  const job = await jobFile(BIN);
  const ran = await tinwrightWatched(verb, job, '--shop', 'default', '--out', out);
  expect(ran).toMatchObject({ exit: 3, watched: [] });
  const alone = await tinwrightWatched(verb, job, '--shop', 'default', '--out', join(out, '..', 'alone'));
  expect(alone.watched).not.toEqual([]);
});

describe('packets of all sizes of a job', () => {
  const sized = (job: string) =>
    `${job}sizes:\n  - { name: low, bracket.width: 30 }\n  - { name: high, bracket.width: 50 }\n`;

  test('are not put beside what is made of another job, nor that beside them', async () => {
    const out = await standing(SHELF, 'make');
    const job = await jobFile(sized(BIN));
    const refused = await tinwright('packet', job, '--sizes', '--out', out);
    expect(refused).toMatchObject({ exit: 3, err: expect.stringContaining('another job or size, "shelf"') });
    const packets = join(out, '..', 'packets');
    expect((await tinwright('packet', job, '--sizes', '--out', packets)).exit).toBe(0);
    const made = await tinwright('make', await jobFile(SHELF), '--out', packets);
    expect(made).toMatchObject({ exit: 3, err: expect.stringContaining('another job or size, "bin"') });
    expect((await tinwright('make', job, '--out', packets)).exit).toBe(0);
  });
});

describe('not refused', () => {
  test.each(VERBS)('%s of another job where it replaces all there is', async (verb) => {
    const out = await standing(SHELF, verb);
    expect(await tinwright(verb, await jobFile(BIN), '--out', out)).toMatchObject({ err: '', exit: 0 });
  });

  test.each(['shelf', ''])('a job %j with a part less, beside what stands of it', async (name) => {
    const out = await standing(named(name, 'bracket', 'stay'), ...VERBS);
    for (const verb of VERBS)
      expect(await tinwright(verb, await jobFile(named(name, 'stay')), '--out', out)).toMatchObject({
        err: '',
        exit: 0,
      });
  });
});
