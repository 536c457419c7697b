// Puts the command into few files, so that it starts in half the time: a cold start is mostly looking for modules.
import { rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const cli = join(dirname(fileURLToPath(import.meta.url)), '..', 'packages', 'cli', 'dist');
rmSync(join(cli, 'bin'), { recursive: true, force: true });
await build({
  // what runs on threads stands apart
  entryPoints: ['main', 'stock/nest-lane', 'sizes/sizes-worker', 'sizes/queue-lane'].map((name) =>
    join(cli, `${name}.js`),
  ),
  entryNames: '[name]', // what starts a thread looks beside itself
  outdir: join(cli, 'bin'),
  bundle: true,
  splitting: true, // what only some verbs need stays apart
  minify: true,
  platform: 'node',
  format: 'esm',
  target: 'node20.19',
  legalComments: 'linked',
  logLevel: 'warning',
  // these look for files of their own, or are installed by whoever wants them
  plugins: [
    {
      name: 'apart',
      setup: ({ onResolve }) =>
        onResolve(
          { filter: /^(pdfkit(\/output)?|fontkit|highs|tinypool|@tinwright\/queue)$/ },
          ({ path }) => ({
            path,
            external: true,
          }),
        ),
    },
  ],
  // some libraries still ask for built-in modules by require
  banner: {
    js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
  },
});
