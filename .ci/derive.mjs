// Writes again what follows from the families and schemas: `npm run derive`. Their pictures, the published schemas and
// the table of README.md. Tests hold each against what the tool makes now.
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parse } from 'yaml';
import { ready, root } from './ready.mjs';

ready();
const built = (name) => import(pathToFileURL(join(root, 'packages', name, 'dist', 'index.js')).href);
const [core, { assemblyPicture, familyPicture, jobJsonSchema, shopJsonSchema, toSvg }] = await Promise.all(
  ['core', 'files'].map(built),
);
const { FAMILIES, planJob, readJob } = core;
const write = (path, text) => writeFileSync(join(root, path), text);
const picture = (name) => `examples/pictures/${name}.svg`;

for (const family of FAMILIES) write(picture(family.name), toSvg(familyPicture(family)));
const carrier = parse(readFileSync(join(root, 'examples', 'harvest-carrier.yaml'), 'utf8'));
const { job, assembly } = planJob(readJob(carrier));
write(picture('harvest-carrier'), toSvg(assemblyPicture(job.name, assembly)));

const schema = (made) => `${JSON.stringify(made, null, 2)}\n`;
const { default: rowMarker } = await import(pathToFileURL(join(root, 'examples', 'row-marker.mjs')).href);
write('examples/tinwright.schema.json', schema(jobJsonSchema([...FAMILIES, rowMarker])));
write('examples/tinwright-shop.schema.json', schema(shopJsonSchema()));

const row = ({ name, describe: { title, summary } }) =>
  `| \`${name}\`: ${title}. ${summary.split('. ')[0]}. | ![${name}](${picture(name)}) |\n`;
const readme = readFileSync(join(root, 'README.md'), 'utf8');
write(
  'README.md',
  readme.replace(/(\| \| \|\n\|---\|---\|\n)(\| `.*\n)+/, (_, head) => head + FAMILIES.map(row).join('')),
);

execFileSync('npx', ['biome', 'format', '--write', 'examples'], {
  cwd: root,
  stdio: ['ignore', 'ignore', 'inherit'],
});
