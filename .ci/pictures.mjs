// Draws the pictures of README.md again: `npm run pictures`. A test holds them against what the tool draws now.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parse } from 'yaml';
import { ready, root } from './ready.mjs';

ready();
const built = (name) => import(pathToFileURL(join(root, 'packages', name, 'dist', 'index.js')).href);
const [{ FAMILIES, planJob, readJob }, { assemblyPicture, toSvg }, { main }] = await Promise.all(
  ['core', 'files', 'cli'].map(built),
);
process.chdir(root);
for (const { name } of FAMILIES)
  await main(['families', name, '--picture', join('examples', 'pictures', `${name}.svg`)]);
const { job, assembly } = planJob(
  readJob(parse(readFileSync(join('examples', 'harvest-carrier.yaml'), 'utf8'))),
);
writeFileSync(
  join('examples', 'pictures', 'harvest-carrier.svg'),
  toSvg(assemblyPicture(job.name, assembly)),
);
