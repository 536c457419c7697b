// A cold `make` of the example, less a bare `node -e 0`.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { EXAMPLE } from './carrier.mjs';
import { median } from './measure.mjs';

const MAIN = fileURLToPath(new URL('../../packages/cli/dist/bin/main.js', import.meta.url));
const ROUNDS = 11;

function seconds(args) {
  const start = performance.now();
  const done = spawnSync(process.execPath, args, { stdio: 'ignore' });
  if (done.status !== 0) throw new Error(`${args.join(' ')} ended with ${done.status}`);
  return (performance.now() - start) / 1000;
}

export default function run() {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-bench-'));
  try {
    const times = Array.from({ length: ROUNDS }, (_, i) => ({
      bare: seconds(['-e', '0']),
      make: seconds([MAIN, 'make', fileURLToPath(EXAMPLE), '--out', join(folder, `o${i}`)]),
    }));
    const bare = median(times.map((t) => t.bare));
    const make = median(times.map((t) => t.make));
    return {
      ours: make - bare,
      peer: bare,
      peerName: 'bare node -e 0',
      unit: 's',
      n: ROUNDS,
      detail: `make ${make.toFixed(3)} s in all, node alone ${bare.toFixed(3)} s; medians`,
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
