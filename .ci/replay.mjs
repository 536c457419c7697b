// Replays bend plans: node .ci/replay.mjs plans|impossible|agree|known COUNT SEED [OPEN]: how many are known to stand open.
import { runBundled } from './run-bundled.mjs';

await runBundled('tests/replay/run.ts');
