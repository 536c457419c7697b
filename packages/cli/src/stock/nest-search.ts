import type { Nest, NestAsk } from '@tinwright/cutting';
import type { ConsoleWords } from '@tinwright/words/internal';
import type { Host } from '../host/console.js';
import type { NestNumbers } from '../line/nest-options.js';

/** Search a nest with several seeds on threads, and keep the best; an interrupt ends the search with the best so far. */
export async function nestOn(
  ask: NestAsk,
  n: Pick<NestNumbers, 'lanes' | 'seed' | 'moves' | 'seconds'> & {
    readonly threads: number;
    readonly words: ConsoleWords;
  },
  host: Host,
): Promise<Nest> {
  const [{ benchOf, bestLayout, metalsOf, nestFrom }, { runLanes }] = await Promise.all([
    import('@tinwright/cutting/internal'),
    import('./run-lanes.js'),
  ]);
  const stop = new SharedArrayBuffer(4);
  let said = performance.now();
  const end = () => {
    Atomics.store(new Int32Array(stop), 0, 1);
    host.err(`nest: ${n.words.ending}\n`);
  };
  process.once('SIGINT', end);
  try {
    const metals = metalsOf(ask);
    const layouts = [];
    for (const { problem } of metals) {
      const { moves, seconds } = n;
      const lanes = Array.from({ length: n.lanes }, (_, k) => ({
        problem,
        seed: n.seed + k,
        moves,
        seconds,
        stop,
      }));
      const found = await runLanes(lanes, n.threads, ({ seed, beds }) => {
        if (performance.now() - said < QUIET) return;
        said = performance.now();
        host.err(`nest: ${n.words.soFar(beds, seed)}\n`);
      });
      layouts.push(bestLayout(benchOf(problem), found));
    }
    return nestFrom(ask, metals, layouts);
  } finally {
    process.removeListener('SIGINT', end);
  }
}

/** Time between two lines of progress, ms. */
const QUIET = 5000;
