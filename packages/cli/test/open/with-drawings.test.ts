import { mkdtemp, rm, writeFile } from 'node:fs/promises';
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
