// Builds the page's template: program, workers' program and style in one file under a policy that allows nothing else.
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { PROGRAM } from '../packages/core/dist/index.js';

const page = join(dirname(fileURLToPath(import.meta.url)), '..', 'packages', 'page');

async function bundled(entry) {
  const { outputFiles } = await build({
    entryPoints: [join(page, 'dist', entry)],
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    legalComments: 'none',
    logLevel: 'warning',
    // the writer of PDF names a colour profile beside itself, which no page of ours asks for
    // pages open no font file: what reads them stays out, a quarter of the page
    alias: { fontkit: join(page, 'assets', 'no-fonts.js') },
    define: { 'import.meta.url': '"https://nowhere.invalid/"' },
    write: false,
  });
  return outputFiles[0].text.trim();
}

const [app, worker, style] = await Promise.all([
  bundled('app/main.js'),
  bundled('worker/main.js'),
  readFileSync(join(page, 'assets', 'page.css'), 'utf8'),
]);
if (/<\/script/i.test(app + worker)) throw new Error('a program would end its own element');
const hash = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
const policy = [
  "default-src 'none'",
  `script-src ${hash(app)}`,
  `style-src ${hash(style)}`,
  'worker-src blob:',
  'img-src blob: data:',
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');
const html = `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="generator" content="${PROGRAM.mark}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<title>Tinwright</title>
<style>${style}</style>
</head>
<body>
<div id="page"></div>
<script type="application/json" id="content">{"tinwright":"content"}</script>
<script type="text/plain" id="worker">${worker}</script>
<script>${app}</script>
</body>
</html>
`;
writeFileSync(join(page, 'dist', 'page.html'), html);
