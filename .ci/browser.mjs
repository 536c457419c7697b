// Every package but the command bundled for a browser with esbuild's defaults, then the files of the example written in
// headless Chromium and here: the same bytes. browser.mjs FOLDER
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { parse } from 'yaml';
import { withPage } from './chromium.mjs';
import { PACKAGES, ready, root } from './ready.mjs';

ready();
const [folder] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });

const defaults = { bundle: true, format: 'esm', logLevel: 'warning', absWorkingDir: root };
for (const name of PACKAGES.filter((p) => p !== 'cli' && p !== 'queue')) {
  const contents = `export * from '@tinwright/${name}';`;
  await build({
    ...defaults,
    stdin: { contents, resolveDir: root },
    outfile: join(folder, `${name}.js`),
    minify: true,
  });
}

const entry = join(root, 'tests/kit/write-files.ts');
const inBrowser = join(folder, 'in-browser.js');
const here = join(root, 'tests/kit/.write-files.mjs');
await build({ ...defaults, entryPoints: [entry], outfile: inBrowser });
await build({
  ...defaults,
  entryPoints: [entry],
  outfile: here,
  platform: 'node',
  packages: 'external',
});

const job = parse(readFileSync(join(root, 'examples/harvest-carrier.yaml'), 'utf8'));
const hash = (content) => createHash('sha256').update(content).digest('hex');
const { writeFiles } = await import(pathToFileURL(here).href);
rmSync(here);
const ours = Object.entries(await writeFiles(job)).map(([name, content]) => [name, hash(content)]);

const theirs = await withPage(async (page) => {
  const faults = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  page.on('console', (said) => faults.push(said.text()));
  await page.route('http://garden.test/**', (route) =>
    route.request().url().endsWith('.js')
      ? route.fulfill({ contentType: 'text/javascript', body: readFileSync(inBrowser) })
      : route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>files</title>' }),
  );
  await page.goto('http://garden.test/');
  const written = await page.evaluate(async (data) => {
    const { writeFiles: write } = await import('/in-browser.js');
    return Object.entries(await write(data)).map(([name, content]) => [
      name,
      typeof content === 'string' ? content : [...content],
    ]);
  }, job);
  if (faults.length > 0) throw new Error(`Chromium says: ${faults.join('; ')}`);
  return written;
});
const found = new Map(
  theirs.map(([name, c]) => [name, hash(typeof c === 'string' ? c : Uint8Array.from(c))]),
);
const differing = ours.filter(([name, h]) => found.get(name) !== h).map(([name]) => name);
if (ours.length < 10 || found.size !== ours.length || differing.length > 0) {
  for (const [name, c] of theirs)
    writeFileSync(join(folder, name.replaceAll('/', '-')), typeof c === 'string' ? c : Uint8Array.from(c));
  throw new Error(`${found.size} of ${ours.length} files, other bytes in Chromium: ${differing.join(', ')}`);
}
process.stdout.write(`${ours.length} files written in Chromium: the bytes Node writes\n`);
