// Runs the campaign: npm run campaign -- --minutes N --seed S.
import { root } from './ready.mjs';
import { runBundled } from './run-bundled.mjs';

process.argv.push('--root', root);
await runBundled('tests/campaign/run.ts');
