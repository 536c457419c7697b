// Replays bend plans: node .ci/replay.mjs plans|impossible|agree|known COUNT SEED
import { runBundled } from './run-bundled.mjs';

await runBundled('tests/replay/run.ts');
