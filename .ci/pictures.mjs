// Draws the pictures of README.md again: `npm run pictures`. A test holds them against what the tool draws now.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ready, root } from './ready.mjs';

ready();
const built = (name) => import(pathToFileURL(join(root, 'packages', name, 'dist', 'index.js')).href);
const [{ FAMILIES }, { main }] = await Promise.all([built('core'), built('cli')]);
process.chdir(root);
for (const { name } of FAMILIES)
  await main(['families', name, '--picture', join('examples', 'pictures', `${name}.svg`)]);
