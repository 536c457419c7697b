// `npm run --silent tinwright -- …`: the installed command, built first if a source changed.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ready, root } from './ready.mjs';

ready();
await import(pathToFileURL(join(root, 'packages', 'cli', 'dist', 'bin', 'main.js')).href);
