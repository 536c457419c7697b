// `npm start`: from a fresh clone to cut files.
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ready, root } from './ready.mjs';

ready();
const { main } = await import(pathToFileURL(join(root, 'packages', 'cli', 'dist', 'index.js')).href);
const out = join('out', 'harvest-carrier');
process.chdir(root);
const exit = await main(['make', join('examples', 'harvest-carrier.yaml'), '--out', out, '--pictures']);
if (exit < 2) {
  const show = (...path) => relative(process.cwd(), join(root, out, ...path));
  process.stdout.write(
    `\nThe example is in ${out}: cut files in parts, pictures in pictures, the object in 3D in assembly.glb.\n` +
      `Open ${show('pictures', 'assembly.svg')} in a browser; change examples/harvest-carrier.yaml and run npm start again.\n`,
  );
}
process.exitCode = exit;
