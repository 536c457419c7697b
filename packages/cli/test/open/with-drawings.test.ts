import { mkdtemp, rm, symlink, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { JobError } from '@tinwright/core';
import { expect, test } from 'vitest';
import { withDrawings } from '../../src/open/with-drawings.js';

const job = (cutout: object) => ({ units: 'mm', parts: [{ name: 'plate', cutouts: [cutout] }] });

test('a drawing beside the job is read into its cut-out; one that is missing is named by its place', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'drawings-'));
  try {
    await writeFile(
      join(folder, 'leaf.svg'),
      '<svg width="40mm" viewBox="0 0 40 20"><rect width="10" height="5"/></svg>',
    );
    const file = join(folder, 'job.yaml');
    const read = (await withDrawings(job({ type: 'outline', panel: 'base', cut: 'leaf.svg' }), file)) as {
      parts: { cutouts: { loops: number[][][] }[] }[];
    };
    expect(read.parts[0]?.cutouts[0]?.loops[0]).toHaveLength(4);
    const missing = withDrawings(job({ type: 'outline', panel: 'base', cut: 'lef.svg' }), file);
    await expect(missing).rejects.toThrow(JobError);
    await expect(missing).rejects.toThrow(
      /part "plate": cutouts\[0\]\.cut: "lef\.svg" cannot be read\. Put the file beside the job/,
    );
    await expect(withDrawings(job({ type: 'round', panel: 'base' }), file)).resolves.toEqual(
      job({ type: 'round', panel: 'base' }),
    );
  } finally {
    await rm(folder, { recursive: true });
  }
});

test('a drawing that is a device or far too long is not read', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'drawings-'));
  try {
    await symlink('/dev/zero', join(folder, 'endless.svg'));
    await writeFile(join(folder, 'long.dxf'), '');
    await truncate(join(folder, 'long.dxf'), 5_000_001);
    const read = (cut: string) =>
      withDrawings(job({ type: 'outline', panel: 'base', cut }), join(folder, 'job.yaml'));
    await expect(read('endless.svg')).rejects.toThrow('"endless.svg" cannot be read');
    await expect(read('long.dxf')).rejects.toThrow('"long.dxf" has 5000001 bytes, up to 5000000 allowed');
  } finally {
    await rm(folder, { recursive: true });
  }
});
