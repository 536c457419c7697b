import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { FAMILIES } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { tinwright, tinwrightInColour } from '../host.js';
import { partJob, stripJob } from '../jobs.js';
import { below, jobFile, make } from '../place.js';

// 30 + 60 + 30 less two deductions of 4 − (π/2)·1.42 mm; FAA-H-8083-31 ch. 4 with the K of the job
const BLANK = 120 - 2 * (4 - (Math.PI / 2) * 1.42);

test('a job of one strip: three files, a line that says the blank, exit 0', async () => {
  const { exit, out, err, files } = await make(stripJob());
  expect(exit).toBe(0);
  expect(err).toBe('');
  expect(files).toEqual([
    'job.yaml',
    'out',
    'out/job.json',
    'out/parts',
    'out/parts/bracket.dxf',
    'out/parts/bracket.svg',
  ]);
  expect(out).toContain('bracket  1 x bent-strip');
  expect(out).toContain(`blank ${BLANK.toFixed(2)} x 40 mm`);
});

test('the manifest on disk holds the part, its blank and the list of files', async () => {
  const job = await jobFile(stripJob());
  const out = join(job, '..', 'out');
  await tinwright('make', job, '--out', out);
  const manifest = JSON.parse(await readFile(join(out, 'job.json'), 'utf8'));
  expect(manifest.files).toEqual(['parts/bracket.dxf', 'parts/bracket.svg']);
  expect(manifest.parts).toHaveLength(1);
  expect(manifest.parts[0].name).toBe('bracket');
  expect(manifest.parts[0].blank.x).toBeCloseTo(BLANK, 6);
});

test('--json prints the folder, the files and the findings, and nothing else', async () => {
  const { exit, out, err } = await make(stripJob(['insideRadius: 1.0', 'insideRadius: 0.5']), '--json');
  const said = JSON.parse(out);
  expect(exit).toBe(0); // a warning is no error
  expect(err).toBe('');
  expect(Object.keys(said).toSorted()).toEqual(['files', 'findings', 'out']);
  expect(said.files).toEqual(['parts/bracket.dxf', 'parts/bracket.svg', 'job.json']);
  // DIN 6935 (1975-10): 1 mm least inside radius up to 1 mm of mild steel
  expect(said.findings).toMatchObject([{ code: 'radius-small', part: 'bracket', value: 0.5, limit: 1 }]);
});

test('a finding is told with its fix and its source', async () => {
  const { out } = await make(stripJob(['insideRadius: 1.0', 'insideRadius: 0.5']));
  expect(out).toMatch(/^warning bracket: inside radius 0\.5 mm at .* 1 mm is the least/m);
  expect(out).toMatch(/^ {2}fix: bend to 1 mm inside.*\(DIN 6935/m);
});

test('with colour the name is bold and the warning yellow', async () => {
  const job = await jobFile(stripJob(['insideRadius: 1.0', 'insideRadius: 0.5']));
  const { out } = await tinwrightInColour('make', job, '--out', join(job, '..', 'out'));
  expect(out).toContain('\u001b[1mbracket\u001b[0m');
  expect(out).toContain('\u001b[33mwarning\u001b[0m');
});

test('without colour there are no colour codes', async () => {
  const { out } = await make(stripJob(['insideRadius: 1.0', 'insideRadius: 0.5']));
  expect(out).not.toContain('\u001b');
});

test('--dxf r12 writes R12, otherwise R2000', async () => {
  const job = await jobFile(stripJob());
  const versions = await Promise.all(
    [[], ['--dxf', 'r12'], ['--dxf', 'r2000']].map(async (options, i) => {
      const out = join(job, '..', `out-${i}`);
      await tinwright('make', job, '--out', out, ...options);
      const dxf = await readFile(join(out, 'parts', 'bracket.dxf'), 'utf8');
      return /AC\d+/.exec(dxf)?.[0];
    }),
  );
  expect(versions).toEqual(['AC1015', 'AC1009', 'AC1015']);
});

test('another form of DXF is refused with the forms there are', async () => {
  const { exit, err, files } = await make(stripJob(), '--dxf', 'r13');
  expect(exit).toBe(2);
  expect(err).toBe('make: --dxf: "r13" given. Known: r2000, r12.\n');
  expect(files).toEqual(['job.yaml']);
});

test('a second run gives the same bytes', async () => {
  const job = await jobFile(stripJob());
  const out = join(job, '..', 'out');
  const read = async () =>
    Promise.all(
      ['job.json', 'parts/bracket.dxf', 'parts/bracket.svg'].map((f) => readFile(join(out, f), 'utf8')),
    );
  await tinwright('make', job, '--out', out);
  const first = await read();
  await tinwright('make', job, '--out', out);
  expect(await read()).toEqual(first);
});

test('a rerun with another part leaves no file of the old one', async () => {
  const job = await jobFile(stripJob());
  const out = join(job, '..', 'out');
  await tinwright('make', job, '--out', out);
  await writeFile(job, stripJob(['bracket', 'shelf-clip']));
  expect((await tinwright('make', job, '--out', out)).exit).toBe(0);
  expect(await below(out)).toEqual(['job.json', 'parts', 'parts/shelf-clip.dxf', 'parts/shelf-clip.svg']);
});

test('a folder that cannot be written: exit 3, one line, nothing written', async () => {
  const job = await jobFile(stripJob());
  const { exit, out, err } = await tinwright('make', job, '--out', join(job, 'out'));
  expect(exit).toBe(3);
  expect(err.split('\n')).toHaveLength(2);
  expect(err).toContain(join(job, 'out'));
  expect(out).toBe('');
  expect(await below(join(job, '..'))).toEqual(['job.yaml']);
});

test('a job in inches gives the parts of the same job in millimetres', async () => {
  const sizes = {
    mm: { width: 50.8, legs: [25.4, 63.5, 38.1], angles: [90, 90] },
    in: { width: 2, legs: [1, '2 1/2', '1-1/2"'], angles: [90, 90] },
  };
  const sheet = {
    stock: { material: 'galvanised-steel', thickness: '1 mm' },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: '1 mm' },
  };
  const parts = async (units: 'mm' | 'in') => {
    const job = await jobFile(partJob('bent-strip', sizes[units], { units, ...sheet }));
    const out = join(job, '..', 'out');
    expect((await tinwright('make', job, '--out', out)).exit).toBe(0);
    return JSON.parse(await readFile(join(out, 'job.json'), 'utf8')).parts;
  };
  expect(await parts('in')).toEqual(await parts('mm'));
});

describe.each(FAMILIES.map((f) => f.name))('the starter of %s', (family) => {
  test('runs unchanged, with nothing to note', async () => {
    const starter = await tinwright('starter', family);
    expect(starter.exit).toBe(0);
    const { exit, err, out } = await make(starter.out, '--json');
    expect(err).toBe('');
    expect(exit).toBe(0);
    expect(JSON.parse(out).findings).toEqual([]);
  });
});

test('the folder is `out` when none is given', async () => {
  const { out } = await tinwright('make', '--help');
  expect(out).toMatch(/--out .*\[default: "out"\]/);
});

test('--file-names full: quantity, material and thickness in the name, and the manifest leads there', async () => {
  const job = await jobFile(stripJob());
  const out = join(job, '..', 'named');
  expect((await tinwright('make', job, '--out', out, '--file-names', 'full')).exit).toBe(0);
  const manifest = JSON.parse(await readFile(join(out, 'job.json'), 'utf8'));
  const [part] = manifest.parts;
  expect(part.files.dxf).toBe(`parts/${part.name}_1x_galvanised-steel_1mm.dxf`);
  expect(manifest.files).toContain(part.files.dxf);
  expect(await readFile(join(out, part.files.dxf), 'utf8')).toContain('AC1015');
});
