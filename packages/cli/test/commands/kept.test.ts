import { readFile, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CARRIER, measuredJob } from '../carrier.js';
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

  test('with a cut list and bend orders: what was of the old sizes goes, is told, and job.json says so', async () => {
    const job = await jobFile(CARRIER);
    const rack = join(dirname(job), 'rack.yaml');
    await writeFile(
      rack,
      'units: mm\nsheets:\n  - { name: full, material: mild-steel, thickness: 1, size: [2000, 1000] }\n',
    );
    const out = join(dirname(job), 'set');
    await tinwright('make', job, '--out', out, '--rack', rack, '--steps');
    const before = await below(out);
    const ran = await tinwright('refit', job, '--out', out, ...measured);
    const now = await below(out);
    const gone = before.filter((f) => !now.includes(f));
    expect(gone).toEqual(expect.arrayContaining(['cutlist.csv', 'fasteners.csv']));
    expect(gone.filter((f) => /^steps\/(body|handle)/.test(f))).toEqual([]);
    for (const file of gone) expect(ran.out).toContain(file);
    expect(ran.out).toContain('taken away: ');
    const manifest = await list(out, 'job.json');
    expect(manifest).not.toHaveProperty('cutList');
    expect(manifest).not.toHaveProperty('batch');
    expect(manifest.parts.map((p: object) => 'sequence' in p)).toEqual([true, false, true]);
    const folders = ['parts', 'steps', 'job.json'];
    expect(now).toEqual([...manifest.files, ...folders].toSorted());
    // what it says to do for a cut list of these sizes
    const again = await jobFile(measuredJob('body.insideWidth: 157.7'));
    expect((await tinwright('make', again, '--out', out, '--rack', rack)).exit).toBe(0);
    const made = await list(out, 'job.json');
    expect(made.cutList).toBeDefined();
    expect(made.parts[1].blank).toEqual(manifest.parts[1].blank);
  });

  test('whose files say what to cut them from: they go on doing so', async () => {
    const { job, out } = await carrierSet('make', '--file-names', 'full');
    const before = await below(out);
    const handle = join(out, 'parts', 'handle_1x_mild-steel_1mm.svg');
    await writeFile(handle, 'with notes of its user');
    const ran = await tinwright('refit', job, '--out', out, ...measured);
    expect(await below(out)).toEqual(before);
    expect(await read(handle)).toBe('with notes of its user');
    expect(ran.out).toMatch(/1 part to cut anew: end\. 3 files in .*\.\n$/);
  });

  test('of an earlier refit to a measure that is not given again: refused, and what it says to give works', async () => {
    const { job, out } = await carrierSet('refit', ...measured);
    const manifest = await list(out, 'job.json');
    expect(named(manifest.parts)).toEqual(['end']);
    expect(manifest.measured).toEqual({ 'body.insideWidth': 157.7 });
    const other = ['--measured', 'body.insideLength=317.8'];
    const refused = await tinwright('refit', job, '--out', out, ...other);
    expect(refused.exit).toBe(3);
    expect(refused.err).toContain('give that too, --measured "body.insideWidth=157.7 mm", or choose another');
    expect(await list(out, 'job.json')).toEqual(manifest);
    const given = ['--measured', 'body.insideWidth=157.7 mm'];
    const ran = await tinwright('refit', job, '--out', out, ...other, ...given);
    expect(ran.exit).toBe(0);
    const { parts, files } = await list(out, 'job.json');
    expect(named(parts)).toEqual(['end', 'handle']);
    expect(parts[0].blank).toEqual(manifest.parts[0].blank);
    expect(await below(out)).toEqual([...files, 'job.json', 'parts'].toSorted());
    // a measure that stands in the job is not lost either
    const inJob = await jobFile(measuredJob('body.insideWidth: 157.7'));
    expect((await tinwright('refit', inJob, '--out', out, ...other)).exit).toBe(0);
  });

  test('a part that follows no measure and stood there at other sizes is named', async () => {
    const { job, out } = await carrierSet('refit', ...measured, '--measured', 'body.insideLength=317.8');
    const corrected = ['--measured', 'body.insideWidth=158', '--measured', 'body.insideLength=317.6'];
    const ran = await tinwright('refit', job, '--out', out, ...corrected);
    expect(ran.out).toMatch(
      /1 part to cut anew: handle\. .* held end at other sizes: written again\. 5 files/,
    );
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
        /Nothing to cut anew\. .* held end at other sizes: written again\. 3 files in .*\.\n$/,
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
