// Writes random jobs as folders of files, for auditors outside: node .ci/write-random.mjs FOLDER COUNT SEED.
import { runBundled } from './run-bundled.mjs';

await runBundled('tests/kit/write-random.ts');
