// Builds the campaign and runs it: npm run campaign -- --minutes N --seed S.
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { ready, root } from './ready.mjs';

ready();
const bundle = join(root, 'out/campaign.mjs'); // under the root, where the packages are found
await build({
  entryPoints: [join(root, 'tests/campaign/run.ts')],
  outfile: bundle,
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  logLevel: 'warning',
});
process.argv.push('--root', root);
try {
  await import(pathToFileURL(bundle).href);
} finally {
  rmSync(bundle);
}
