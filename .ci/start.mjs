// `npm start`: from a fresh clone to cut files.
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ready, root } from './ready.mjs';

ready();
const { main } = await import(pathToFileURL(join(root, 'packages', 'cli', 'dist', 'index.js')).href);
const out = join('out', 'harvest-carrier');
process.chdir(root);
const exit = await main(['make', join('examples', 'harvest-carrier.yaml'), '--out', out]);
if (exit < 2) {
  const open = relative(process.cwd(), join(root, out, 'parts', 'body.svg'));
  process.stdout.write(
    `\nThe cut files of the example are in ${out}: a DXF and an SVG for every part, and job.json.\n` +
      `Open ${open} in a browser; change examples/harvest-carrier.yaml and run npm start again.\n`,
  );
}
process.exitCode = exit;
