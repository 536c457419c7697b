// Follows the README's section on embedding in a folder outside: outside.mjs FOLDER. The packages are installed, the
// program is compiled against their types and started. Then the example packages are tried as their READMEs say.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { root } from './ready.mjs';

const folder = resolve(process.argv[2] ?? '');
mkdirSync(folder, { recursive: true });
const [, section] = readFileSync(join(root, 'README.md'), 'utf8').split('## In your own program');
const block = (info) => new RegExp(`^\`\`\`${info}\\n(.*?)^\`\`\`$`, 'ms').exec(section)?.[1] ?? '';
for (const command of block('sh').trim().split('\n')) {
  const typed = command.replaceAll('../garden-tools', folder);
  execFileSync('sh', ['-c', typed], { cwd: root, stdio: ['ignore', 2, 2] });
}
writeFileSync(join(folder, 'tray.mts'), block('ts'));
const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
const types = ['--typeRoots', join(root, 'node_modules', '@types'), '--types', 'node'];
const options = ['--strict', '--module', 'nodenext', '--target', 'es2023', ...types];
execFileSync(process.execPath, [tsc, ...options, 'tray.mts'], { cwd: folder, stdio: 'inherit' });
execFileSync(process.execPath, ['tray.mjs'], { cwd: folder, stdio: 'inherit' });

const packed = readdirSync(join(root, 'out', 'packages'))
  .filter((f) => f.endsWith('.tgz'))
  .map((f) => join(root, 'out', 'packages', f));
for (const example of ['own-family', 'service']) {
  const own = `${folder}-${example}`;
  cpSync(join(root, 'examples', example), own, { recursive: true });
  const npm = (...args) => execFileSync('npm', args, { cwd: own, stdio: ['ignore', 2, 2] });
  npm('install', '--no-audit', '--no-fund', ...packed);
  npm('test');
}
