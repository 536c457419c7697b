// `npm run packages`: the packages as files that a program outside this repository can install.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join, relative } from 'node:path';
import { PACKAGES, ready, root } from './ready.mjs';

ready();
const { packageManager } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const folder = join(root, 'out', 'packages');
const APART = ['queue']; // in a folder of its own: `out/packages/*.tgz` is what everybody installs
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
for (const name of PACKAGES) {
  const place = APART.includes(name) ? join(folder, name) : folder;
  const args = ['-y', packageManager, 'pack', '--pack-destination', place];
  const done = spawnSync('npx', args, {
    cwd: join(root, 'packages', name),
    stdio: ['ignore', 'ignore', 2],
    shell: process.platform === 'win32',
  });
  if (done.status !== 0) process.exit(done.status ?? 1);
}
for (const file of readdirSync(folder, { recursive: true }).filter((f) => f.endsWith('.tgz')))
  process.stdout.write(`${relative(root, join(folder, file))}\n`);
