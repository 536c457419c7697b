import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { LongFirst } from './long-first.js';

const SOURCE = '@tinwright/source';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  ssr: { resolve: { conditions: [SOURCE, 'module', 'node', 'development|production'] } },
  test: {
    include: ['packages/*/test/**/*.test.ts', 'tests/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 600_000, // a busy machine fails no test
    hookTimeout: 600_000,
    maxWorkers: '100%',
    sequence: { sequencer: LongFirst },
    isolate: false, // nothing keeps state at module level
    server: { deps: { inline: [/@tinwright/] } },
  },
});
