// What programs pay for @tinwright/core: doors bundled, minified and gzipped, each held to its bound.
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

const resolveDir = join(dirname(fileURLToPath(import.meta.url)), '..', 'tests');

/** Bytes at most; the aim for everything is 55,000, missed: it brings every family, cut-outs, and plans that cross threads. */
const DOORS = [
  { name: 'everything', code: "export * from '@tinwright/core';", most: 98_900 },
  { name: 'jobs', code: "export { planJob, readJob } from '@tinwright/core';", most: 96_750 },
  {
    name: 'one family',
    code: "import { makePart, openBox } from '@tinwright/core'; export const box = (size, sheet) => makePart(openBox, size, sheet);",
    most: 53_650,
  },
];

for (const { name, code, most } of DOORS) {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    logLevel: 'warning',
  });
  const size = gzipSync(outputFiles[0].contents, { level: 9 }).length;
  process.stdout.write(`core, ${name}: ${size} bytes gzipped, ${most} at most\n`);
  if (size > most) process.exitCode = 1;
}
