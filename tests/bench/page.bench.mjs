// One change of a size in the page to its pattern on the screen, in headless Chromium, against one frame.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { latencies, withJobPage } from '../../.ci/page-driver.mjs';

const FRAME = 1000 / 60;
const CHANGES = 60;

const share = (times, p) =>
  times.toSorted((a, b) => a - b)[Math.min(times.length - 1, Math.floor(p * times.length))];

export default async function run() {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-page-'));
  try {
    return await withJobPage({ folder, job: 'examples/harvest-carrier.yaml' }, async (page, { first }) => {
      await latencies(page, 10);
      const { pattern, findings } = await latencies(page, CHANGES);
      return {
        ours: share(pattern, 0.95),
        peer: FRAME,
        peerName: 'one frame',
        unit: 'ms',
        n: CHANGES,
        detail: `median ${share(pattern, 0.5).toFixed(1)} ms; findings ${share(findings, 0.95).toFixed(1)} ms, 95 of 100; first picture ${first} ms after opening`,
      };
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}
