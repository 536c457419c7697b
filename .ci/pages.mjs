// `npm run page`: a page of every example in `out/pages`.
import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ready, root } from './ready.mjs';

ready();
const OWN = 'row-markers.yaml'; // of a family that pages do not know
process.chdir(root);
mkdirSync('out/pages', { recursive: true });
const { main } = await import(pathToFileURL(join(root, 'packages/cli/dist/index.js')).href);
for (const file of readdirSync('examples').filter((f) => /(?<!-shop)\.yaml$/.test(f) && f !== OWN))
  await main([
    'page',
    join('examples', file),
    '--out',
    join('out/pages', file.replace('.yaml', '.html')),
    '--force',
  ]);
