// Sizes as the command makes them, with all that reading tables and writing folders takes: by two threads, and by two
// workers at a queue of whose Redis the time is counted too.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { started, tinwright } from './command.mjs';

const PORT = 17_391;
const URL = `redis://127.0.0.1:${PORT}`;

/** Lines that say what tables of carriers and boxes take. */
export async function byCommand(carrier, box, counts) {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-sizes-'));
  try {
    const carriers = table(
      folder,
      'carrier',
      carrier,
      counts.carriers,
      (i) => `${300 + i / 4},${150 + i / 10}`,
    );
    const boxes = table(folder, 'box', box, counts.boxes, (i) => `${150 + i / 4},${120 + (i % 7)}`);
    const two = await byThreads(folder, carriers);
    const many = await byThreads(folder, boxes);
    return [
      told(`${counts.carriers} carriers by the command, two threads`, two),
      told(`${counts.boxes} boxes`, many),
      await byQueue(folder, carriers, two),
    ].join('\n');
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function table(folder, name, data, count, values) {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${name}.yaml`), JSON.stringify(data));
  const part = data.parts[0].name;
  const rows = Array.from({ length: count }, (_, i) => `${name}-${i},${values(i)}\n`);
  writeFileSync(join(folder, `${name}.csv`), `name,${part}.length,${part}.width\n${rows.join('')}`);
  return ['sizes', `${name}.yaml`, '--table', `${name}.csv`];
}

async function byThreads(folder, argv) {
  const run = tinwright([...argv, '--out', `${argv[1]}-threads`, '--jobs', '2'], folder);
  if (![0, 1].includes(await run.ended)) throw new Error(run.said);
  return run;
}

const told = (what, { clock, processor, memory }) =>
  `${what}: ${clock.toFixed(1)} s by the clock, ${processor.toFixed(1)} s of processor, ${memory.toFixed(0)} MB at most`;

/** What a queue costs: processor time of the run, its two workers and Redis, above that of two threads. */
async function byQueue(folder, argv, threads) {
  const redis = started('redis-server', ['--port', `${PORT}`, '--save', '', '--dir', folder], folder);
  const gone = new Promise((_, failed) => redis.child.on('error', failed));
  try {
    await Promise.race([setTimeout(500), gone]);
  } catch {
    return 'no redis-server here';
  }
  const workers = [1, 2].map(() => tinwright(['worker', '--queue', URL, '--jobs', '1'], folder));
  const run = tinwright([...argv, '--out', `${argv[1]}-queue`, '--queue', URL], folder);
  if (![0, 1].includes(await run.ended)) throw new Error(run.said);
  for (const w of [...workers, redis]) {
    w.look();
    w.child.kill('SIGTERM');
    await w.ended;
  }
  const all = [run, ...workers, redis].reduce((s, r) => s + r.processor, 0);
  const more = (100 * (all - threads.processor)) / threads.processor;
  return `${told('the same carriers by a queue', run)} of the run; ${all.toFixed(1)} s with both workers and Redis (${redis.memory.toFixed(0)} MB), ${more.toFixed(0)} % above threads`;
}
