// Sources and the tests of some packages as one program, with vitest's place taken by a runner of our own: loaded once,
// its tests run as often as wanted.
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const RUNS = 22; // of each property test

/** Every source below a folder, in the order of their paths. */
export const sourcesIn = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile() && e.name.endsWith('.ts') && !e.name.endsWith('.d.ts'))
    .map((e) => join(e.parentPath, e.name))
    .toSorted();

/** Test files of packages. */
export const testsOf = (root, packages) =>
  packages.flatMap((p) => sourcesIn(join(root, 'packages', p, 'test'))).filter((f) => f.endsWith('.test.ts'));

/**
 * @param tests their files
 * @param texts of sources by their path, in place of what stands in the files
 * @param sourcemap as esbuild takes it
 */
export async function buildTests({ root, tests, texts = new Map(), sourcemap = false }, outfile) {
  const entry = [
    `import fc from 'fast-check';`,
    `fc.configureGlobal({ seed: 20261125, numRuns: ${RUNS} });`,
    `export { collected, before } from 'vitest';`,
    `export * from '@tinwright/core';`, // loaded before any of them
    `export const loaders = [`,
    ...tests.map((t) => `() => import(${JSON.stringify(t)}),`),
    `];`,
  ];
  await build({
    stdin: { contents: entry.join('\n'), resolveDir: root, loader: 'js' },
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    conditions: ['@tinwright/source'],
    logLevel: 'error',
    sourcemap,
    banner: {
      js: `import { createRequire as $requireFrom } from 'node:module'; const require = $requireFrom(${JSON.stringify(join(root, 'package.json'))}); const $m = globalThis.$mutant;`,
    },
    plugins: [inPlace(root, texts)],
  });
}

const inPlace = (root, texts) => ({
  name: 'in place',
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^vitest$/ }, () => ({ path: join(root, 'tests/mutation/shim.mjs') }));
    // what vitest compares with, from where vitest has it
    const vitest = createRequire(createRequire(join(root, 'package.json')).resolve('vitest/package.json'));
    const expect = vitest.resolve('@vitest/expect');
    onResolve({ filter: /^@vitest\/expect$/ }, () => ({ path: expect }));
    onResolve({ filter: /^chai$/ }, () => ({ path: createRequire(expect).resolve('chai') }));
    onResolve(
      { filter: /^(manifold-3d|clipper2-ts|makerjs|pdfkit|fontkit|gltf-validator)$/ },
      ({ path }) => ({
        path,
        external: true,
      }),
    );
    onLoad({ filter: /\/(packages|tests)\/.*\.ts$/ }, ({ path }) => {
      const text = texts.get(path) ?? readFileSync(path, 'utf8');
      return {
        contents: text.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)),
        loader: 'ts',
      };
    });
  },
});
