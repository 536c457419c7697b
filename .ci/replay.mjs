// Builds the replay of bend plans and runs it: node .ci/replay.mjs plans|impossible|known COUNT SEED.
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { ready, root } from './ready.mjs';

ready();
const bundle = join(root, `out/replay-${process.pid}.mjs`); // under the root, where the packages are found
await build({
  entryPoints: [join(root, 'tests/replay/run.ts')],
  outfile: bundle,
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  logLevel: 'warning',
});
try {
  await import(pathToFileURL(bundle).href);
} finally {
  rmSync(bundle);
}
