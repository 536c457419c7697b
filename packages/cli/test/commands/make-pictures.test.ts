import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CARRIER } from '../carrier.js';
import { tinwright, tinwrightWatched } from '../host.js';
import { stripJob } from '../jobs.js';
import { below, jobFile, make } from '../place.js';

const PICTURES = [
  'out/assembly.glb',
  'out/pictures/assembly.svg',
  'out/pictures/body.glb',
  'out/pictures/body.svg',
  'out/pictures/end.glb',
  'out/pictures/end.svg',
  'out/pictures/exploded.svg',
  'out/pictures/handle.glb',
  'out/pictures/handle.svg',
];
const VIEWS = ['out/views/body.dxf', 'out/views/end.dxf', 'out/views/handle.dxf'];

const extra = (files: readonly string[]) =>
  files.filter((f) => /\.(glb|svg|dxf)$/.test(f) && !f.startsWith('out/parts/')).toSorted();

describe('make of a carrier', () => {
  test('plain: cut files and manifest only', async () => {
    const { exit, files } = await make(CARRIER);
    expect(exit).toBe(0);
    expect(extra(files)).toEqual([]);
  });

  test('--pictures: pictures and models of parts and object, and which to open', async () => {
    const { exit, err, out, files } = await make(CARRIER, '--pictures');
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(extra(files)).toEqual(PICTURES);
    expect(out).toMatch(/^16 files in .*out: open .*assembly\.svg in a browser\.$/m);
  });

  test('--views: a DXF of three views for every part', async () => {
    const { exit, files } = await make(CARRIER, '--views');
    expect(exit).toBe(0);
    expect(extra(files)).toEqual(VIEWS);
  });

  test('both, as R12: the views are R12 too', async () => {
    const job = await jobFile(CARRIER);
    const folder = join(dirname(job), 'out');
    const { exit } = await tinwright('make', job, '--out', folder, '--pictures', '--views', '--dxf', 'r12');
    expect(exit).toBe(0);
    expect(extra((await below(dirname(job))).filter((f) => f.startsWith('out/')))).toEqual(
      [...PICTURES, ...VIEWS].toSorted(),
    );
    for (const path of ['parts/body.dxf', 'views/body.dxf'])
      expect(/AC\d+/.exec(await readFile(join(folder, path), 'latin1'))?.[0]).toBe('AC1009');
  });

  test('a model on disk is binary glTF, as long as it says', async () => {
    const job = await jobFile(CARRIER);
    const folder = join(dirname(job), 'out');
    await tinwright('make', job, '--out', folder, '--pictures');
    const bytes = await readFile(join(folder, 'assembly.glb'));
    expect(bytes.toString('latin1', 0, 4)).toBe('glTF');
    expect(bytes.readUInt32LE(8)).toBe(bytes.length);
  });

  test('run again without --pictures, the set is replaced: no picture is left', async () => {
    const job = await jobFile(CARRIER);
    const folder = join(dirname(job), 'out');
    await tinwright('make', job, '--out', folder, '--pictures');
    await tinwright('make', job, '--out', folder);
    expect(await below(folder)).not.toContain('assembly.glb');
    expect(await below(folder)).not.toContain('pictures');
  });

  test('run twice, the bytes are the same', async () => {
    const job = await jobFile(CARRIER);
    const folder = join(dirname(job), 'out');
    const read = async () => {
      await tinwright('make', job, '--out', folder, '--pictures', '--views');
      const files = (await below(folder)).filter((f) => f.includes('.'));
      return Promise.all(files.map(async (f) => [f, await readFile(join(folder, f), 'base64')] as const));
    };
    const first = await read();
    expect(first.length).toBeGreaterThan(15);
    expect(await read()).toEqual(first);
  });

  test('--json lists them all', async () => {
    const { out } = await make(CARRIER, '--pictures', '--views', '--json');
    const { files } = JSON.parse(out) as { files: string[] };
    expect(files.filter((f) => !f.startsWith('parts/')).toSorted()).toEqual(
      [...PICTURES, ...VIEWS]
        .map((f) => f.slice(4))
        .concat('job.json')
        .toSorted(),
    );
  });
});

test('a job without joints: pictures of its parts, none of an object', async () => {
  const { files, out } = await make(stripJob(), '--pictures');
  expect(extra(files)).toEqual(['out/pictures/bracket.glb', 'out/pictures/bracket.svg']);
  expect(out).toMatch(/open .*\.svg in a browser/);
});

test('the help tells of both', async () => {
  const { out } = await tinwright('make', '--help');
  expect(out).toMatch(/--pictures\b/);
  expect(out).toMatch(/--views\b/);
});

test('a job of many parts tells how far orders, pictures of bends and files are', async () => {
  const plate = { family: 'divider', length: 40, height: 20 };
  const clip = { name: 'clip', family: 'bent-strip', width: 20, legs: [12, 12], angles: [90] };
  const job = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    parts: [...Array.from({ length: 20 }, (_, i) => ({ name: `plate-${i}`, ...plate })), clip],
  };
  const file = await jobFile(JSON.stringify(job));
  const { exit, watched } = await tinwrightWatched(
    ...['make', file, '--out', join(dirname(file), 'out'), '--pictures', '--steps'],
  );
  expect(exit).toBe(0);
  expect(watched).toEqual([
    ['bend orders', 21, 21],
    ['parts with pictures of bends', 21, 21],
    ['files', 87, 87], // for each DXF, SVG, picture and model; a step, the cut list and the manifest
  ]);
});
