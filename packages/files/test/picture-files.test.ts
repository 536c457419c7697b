import { jobFiles, pictureFiles, viewFiles } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { plannedCarrier } from './carrier.js';
import { readDxf } from './dxf-reader.js';
import { readGlb } from './glb-reader.js';
import { planned } from './samples.js';
import { readSvg } from './svg-reader.js';

const plan = plannedCarrier();

describe('pictures of a carrier', () => {
  test('a picture and a model for every part, the object together, apart and as a model', async () => {
    const files = pictureFiles(plan);
    expect(files.map((f) => f.path).toSorted()).toEqual([
      'assembly.glb',
      'pictures/assembly.svg',
      'pictures/body.glb',
      'pictures/body.svg',
      'pictures/end.glb',
      'pictures/end.svg',
      'pictures/exploded.svg',
      'pictures/handle.glb',
      'pictures/handle.svg',
    ]);
    for (const { path, content } of files)
      if (path.endsWith('.glb')) expect(readGlb(content as Uint8Array).nodes.length).toBeGreaterThan(0);
      else expect(readSvg(content as string).name).toBe('svg');
  });

  test('without joints there is no object to draw', async () => {
    const loose = planned([{ name: 'tray', family: 'open-box', length: 120, width: 80, height: 40 }]);
    const files = pictureFiles(loose);
    expect(files.map((f) => f.path)).toEqual(['pictures/tray.svg', 'pictures/tray.glb']);
  });
});

test('views of every part, as R2000 or R12', () => {
  for (const form of ['r2000', 'r12'] as const) {
    const files = viewFiles(plan, form);
    expect(files.map((f) => f.path)).toEqual(['views/body.dxf', 'views/end.dxf', 'views/handle.dxf']);
    for (const { content } of files) expect(readDxf(content as string).entities.length).toBeGreaterThan(10);
  }
});

describe('what a job writes', () => {
  const paths = async (wanted: object) => jobFiles(plan, { dxf: 'r2000', ...wanted }).map((f) => f.path);

  test('pictures and views only when they are wanted, the manifest last', async () => {
    const plain = await paths({});
    expect(plain.filter((p) => /^(pictures|views)|\.glb$/.test(p))).toEqual([]);
    const all = await paths({ pictures: true, views: true });
    expect(all.length).toBe(plain.length + 9 + 3);
    expect(all.at(-1)).toBe('job.json');
    expect(new Set(all).size).toBe(all.length);
  });

  test('the manifest lists them', async () => {
    const files = jobFiles(plan, { dxf: 'r2000', pictures: true, views: true });
    const manifest = JSON.parse(String(files.at(-1)?.content)) as { files: string[] };
    expect(manifest.files).toEqual(files.slice(0, -1).map((f) => f.path));
  });

  test('the same job gives the same bytes', async () => {
    const wanted = { dxf: 'r2000', pictures: true, views: true } as const;
    expect(jobFiles(plannedCarrier(), wanted)).toEqual(jobFiles(plan, wanted));
  });
});
