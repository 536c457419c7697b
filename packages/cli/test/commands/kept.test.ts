import { readFile, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CARRIER } from '../carrier.js';
import { tinwright } from '../host.js';
import { stripJob } from '../jobs.js';
import { below, emptyFolder, jobFile } from '../place.js';

const read = (...path: readonly string[]) => readFile(join(...path), 'utf8');
const list = async (...path: readonly string[]) => JSON.parse(await read(...path));
const named = (parts: readonly { readonly name: string }[]) => parts.map((p) => p.name);

/** A carrier's job, and a folder that one of its sets stands in. */
async function carrierSet(verb: string, ...options: readonly string[]) {
  const job = await jobFile(CARRIER);
  const out = join(dirname(job), 'set');
  expect((await tinwright(verb, job, '--out', out, ...options)).exit).toBe(0);
  return { job, out };
}

describe.each([
  ['plan', 'plans'],
  ['template', 'templates'],
])('%s --part into a folder where all parts stand', (verb, folder) => {
  test('replaces the files of that part; those of the others stay, and the list names them', async () => {
    const { job, out } = await carrierSet(verb);
    const before = await below(out);
    const body = join(out, folder, 'body.pdf');
    await writeFile(body, 'marked by its user');
    const ran = await tinwright(verb, job, '--out', out, '--part', 'handle', '--paper', 'A3');
    expect(ran.exit).toBe(0);
    expect(await read(body)).toBe('marked by its user');
    const now = await below(out);
    expect(before.filter((n) => !now.includes(n) && !n.includes('handle'))).toEqual([]);
    const { parts, files } = await list(out, `${folder}.json`);
    expect(named(parts)).toEqual(['body', 'end', 'handle']);
    expect([...files, `${folder}.json`, folder].toSorted()).toEqual(now);
  });

  test('and all parts again, later: no file of an older list is left', async () => {
    const { job, out } = await carrierSet(verb);
    const before = await below(out);
    await tinwright(verb, job, '--out', out, '--part', 'body', '--paper', 'A3');
    await tinwright(verb, job, '--out', out);
    expect(await below(out)).toEqual(before);
  });
});

describe('refit into the set of the job', () => {
  const measured = ['--measured', 'body.insideWidth=157.7'];

  test('replaces the changed part; the others stay as they are and job.json whole', async () => {
    const { job, out } = await carrierSet('make', '--pictures');
    const before = await list(out, 'job.json');
    const files = await below(out);
    await writeFile(join(out, 'parts', 'body.svg'), 'with notes of its user');
    const oldEnd = await read(out, 'parts', 'end.dxf');
    const oldPicture = await read(out, 'pictures', 'end.svg');
    expect((await tinwright('refit', job, '--out', out, ...measured)).exit).toBe(0);
    const after = await list(out, 'job.json');
    expect(named(after.parts)).toEqual(['body', 'end', 'handle']);
    expect(after.parts[0]).toEqual(before.parts[0]);
    expect(after.parts[1].blank.x).toBeCloseTo(before.parts[1].blank.x - 0.3, 6);
    expect(after.assembly.placements).toHaveLength(4);
    expect(await below(out)).toEqual(files);
    expect(after.files.toSorted()).toEqual(before.files.toSorted());
    expect(await read(out, 'parts', 'body.svg')).toBe('with notes of its user');
    expect(await read(out, 'parts', 'end.dxf')).not.toBe(oldEnd);
    expect(await read(out, 'pictures', 'end.svg')).not.toBe(oldPicture);
  });

  test('into the folder of an earlier refit: its part is brought up to date too', async () => {
    const { job, out } = await carrierSet('refit', ...measured);
    expect(named((await list(out, 'job.json')).parts)).toEqual(['end']);
    await tinwright('refit', job, '--out', out, '--measured', 'body.insideLength=317.8');
    const { parts, files } = await list(out, 'job.json');
    expect(named(parts)).toEqual(['end', 'handle']);
    expect(parts[0].blank.x).toBeCloseTo(155.6, 6); // of the computed width: this time it was not measured
    expect(await below(out)).toEqual([...files, 'job.json', 'parts'].toSorted());
  });

  test.each([
    ['the computed size', ['--measured', 'body.insideWidth=158']],
    ['a part that is made', [...measured, '--made', 'end']],
  ])(
    'of an earlier refit, and nothing to cut anew for %s: its part is brought up to date',
    async (_, again) => {
      const { job, out } = await carrierSet('refit', ...measured);
      const old = await read(out, 'parts', 'end.dxf');
      const ran = await tinwright('refit', job, '--out', out, ...again);
      expect(ran.exit).toBe(0);
      expect(ran.out).toMatch(
        /Nothing to cut anew\. .* held parts of other sizes: 3 files written again\.\n$/,
      );
      expect((await list(out, 'job.json')).parts[0].blank.x).toBeCloseTo(155.6, 6);
      expect(await read(out, 'parts', 'end.dxf')).not.toBe(old);
    },
  );

  test.each([
    ['of the job as it is', CARRIER],
    ['of another job', stripJob()],
  ])('nothing to cut anew, into the set %s: nothing is written', async (_, text) => {
    const job = await jobFile(CARRIER);
    const out = join(dirname(job), 'set');
    await tinwright('make', await jobFile(text), '--out', out, '--shop', 'default');
    const before = await stat(join(out, 'job.json'));
    const ran = await tinwright('refit', job, '--out', out, '--measured', 'body.insideWidth=158');
    expect(ran).toMatchObject({ exit: 0, out: 'No size changes.\nNothing to cut anew.\n' });
    expect((await stat(join(out, 'job.json'))).ino).toBe(before.ino);
  });

  test('into the set of another job: refused, nothing changed', async () => {
    const { job, out } = await carrierSet('refit', ...measured);
    const other = join(out, '..', 'other');
    await tinwright('make', await jobFile(stripJob()), '--out', other);
    const before = await below(other);
    const { exit, err } = await tinwright('refit', job, '--out', other, ...measured);
    expect(exit).toBe(3);
    expect(err).toContain(
      'holds job.json of another job or size, with a part "bracket". Choose another folder',
    );
    expect(await below(other)).toEqual(before);
  });
});

describe.each(['pdf', 'html'])('packet --out FILE.%s', (form) => {
  test('replaces a packet, but no file that the program did not write, unless that is forced', async () => {
    const job = await jobFile(stripJob());
    const path = join(dirname(job), `thesis.${form}`);
    const theirs = form === 'pdf' ? '%PDF-1.4 my thesis\n%%EOF\n' : '<!DOCTYPE html><title>thesis</title>';
    await writeFile(path, theirs);
    const refused = await tinwright('packet', job, '--out', path);
    expect(refused.exit).toBe(3);
    expect(refused.err).toBe(
      `${path}: is there and not as tinwright wrote it. Name another file, or give --force to replace it.\n`,
    );
    expect(await read(path)).toBe(theirs);
    expect((await tinwright('packet', job, '--out', path, '--force')).exit).toBe(0);
    const first = (await stat(path)).ino;
    expect((await tinwright('packet', job, '--out', path)).exit).toBe(0); // its own: no need
    expect((await stat(path)).ino).not.toBe(first);
  });
});

test('a packet with notes that a reader appended is the user’s own', async () => {
  const job = await jobFile(stripJob());
  const path = join(dirname(job), 'packet.pdf');
  await tinwright('packet', job, '--out', path);
  const noted = Buffer.concat([await readFile(path), Buffer.from('1 0 obj\n<<>>\nendobj\n%%EOF\n')]);
  await writeFile(path, noted);
  expect((await tinwright('packet', job, '--out', path)).exit).toBe(3);
  expect(await readFile(path)).toEqual(noted);
});

test('two packets to one file at once: one of them whole, the other too or refused', async () => {
  const job = await jobFile(stripJob());
  const path = join(dirname(job), 'packet.html');
  await tinwright('packet', job, '--out', path, '--date', '1');
  const one = await read(path);
  await tinwright('packet', job, '--out', path, '--date', '2');
  const two = await read(path);
  const runs = await Promise.all(
    ['1', '2', '1', '2'].map((date) => tinwright('packet', job, '--out', path, '--date', date)),
  );
  expect(runs.map((r) => r.exit)).toContain(0);
  for (const { exit, err } of runs) if (exit !== 0) expect(err).toMatch(/another run|meanwhile/);
  expect([one, two]).toContain(await read(path));
  expect(await below(dirname(job))).toEqual(['job.yaml', 'packet.html']);
});

test('strip fit into one shop file six times at once: all six rows are kept', async () => {
  const folder = await emptyFolder();
  const shop = join(folder, 'shop.yaml');
  await writeFile(shop, '# ours\nunits: mm\n');
  const runs = [0.8, 1, 1.2, 1.5, 1.8, 2].map(async (thickness, i) => {
    const measured = join(folder, `measured-${i}.yaml`);
    await writeFile(
      measured,
      `name: coil ${i}\nunits: mm\nmaterial: mild-steel\nthickness: ${thickness}\ninsideRadius: ${thickness}\nstrips:\n  - { flat: 100, legs: [${50 + 0.885 * thickness}, ${50 + 0.885 * thickness}], angle: 90 }\n`,
    );
    return tinwright('strip', 'fit', '--measured', measured, '--shop', shop);
  });
  for (const { exit, err } of await Promise.all(runs)) expect({ exit, err }).toEqual({ exit: 0, err: '' });
  const text = await read(shop);
  expect(text).toMatch(/^# ours/);
  for (let i = 0; i < 6; i++) expect(text).toContain(`coil ${i}`);
});
