// Makes the workspace usable: installs when the lockfile changed, builds when a source changed.
// Run by every npm script; does nothing, fast, when nothing changed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..');
export const PACKAGES = [
  'core',
  'shop',
  'cutting',
  'words',
  'files',
  'paper',
  'page',
  'testing',
  'queue',
  'cli',
];
const stampFile = (name) => join(root, 'node_modules', `.tinwright-${name}`);
const stamp = (name) => (existsSync(stampFile(name)) ? readFileSync(stampFile(name), 'utf8') : '');

/** Run a command in the root; what it prints goes to stderr so that stdout stays with the caller. */
function run(command, args) {
  const shell = process.platform === 'win32';
  const done = spawnSync(command, args, { cwd: root, stdio: ['ignore', 2, 2], shell });
  if (done.status === 0) return;
  process.stderr.write(`${command} ${args.join(' ')} failed${done.error ? `: ${done.error.message}` : ''}\n`);
  process.exit(done.status || 1);
}

function files(dir) {
  return readdirSync(dir, { withFileTypes: true })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((e) => (e.isDirectory() ? files(join(dir, e.name)) : [join(dir, e.name)]));
}

/** Size and time of every file a build depends on: cheap to take, changes when any of them does. */
function sourceState() {
  const hash = createHash('sha256').update(process.version.split('.')[0]);
  const roots = PACKAGES.flatMap((p) => [
    ...files(join(root, 'packages', p, 'src')),
    join(root, 'packages', p, 'tsconfig.json'),
    join(root, 'packages', p, 'package.json'),
  ]);
  for (const file of [...roots, join(root, 'tsconfig.base.json')]) {
    const s = statSync(file);
    hash.update(`${file}:${s.size}:${s.mtimeMs}\n`);
  }
  return hash.digest('hex');
}

function install() {
  const lock = createHash('sha256')
    .update(readFileSync(join(root, 'pnpm-lock.yaml')))
    .digest('hex');
  if (stamp('install') === lock && existsSync(join(root, 'node_modules', '.modules.yaml'))) return;
  const { packageManager } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  run('npx', ['-y', packageManager, 'install', '--frozen-lockfile', '--reporter=append-only']);
  writeFileSync(stampFile('install'), lock);
}

function build() {
  const state = sourceState();
  const built = [
    ...PACKAGES.map((p) => join(p, 'dist', 'index.js')),
    join('page', 'dist', 'page.html'),
    join('cli', 'dist', 'bin', 'main.js'),
  ].every((p) => existsSync(join(root, 'packages', p)));
  if (built && stamp('build') === state) return;
  run(process.execPath, [join(root, 'node_modules', 'typescript-native', 'bin', 'tsc'), '-b', 'packages']);
  for (const script of ['page.mjs', 'bundle.mjs']) run(process.execPath, [join(root, '.ci', script)]);
  mkdirSync(join(root, 'node_modules'), { recursive: true });
  writeFileSync(stampFile('build'), state);
}

export function ready() {
  install();
  build();
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) ready();
