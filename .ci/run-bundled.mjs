import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { ready, root } from './ready.mjs';

/** Build a program of the tests and run it here; several may run at once. @param entry its file, from the root */
export async function runBundled(entry) {
  ready();
  const bundle = join(root, `out/bundled-${process.pid}.mjs`); // under the root, where the packages are found
  await build({
    entryPoints: [join(root, entry)],
    outfile: bundle,
    bundle: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'warning',
    plugins: [
      {
        name: 'packages',
        // what a source of a package asks for may stand beside that package only
        setup: ({ onResolve }) =>
          onResolve({ filter: /^[^./]/ }, ({ path, importer, kind }) =>
            kind === 'entry-point' || (importer.includes('/packages/') && !/^(@tinwright|node:)/.test(path))
              ? undefined
              : { path, external: true },
          ),
      },
    ],
  });
  try {
    await import(pathToFileURL(bundle).href);
  } finally {
    rmSync(bundle);
  }
}
