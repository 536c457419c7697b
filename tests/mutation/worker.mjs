// Tries mutants: loads the program once, asks every test once which mutants it comes by, then runs those tests with one
// mutant after the other alive, until one fails. Without tests nothing is told to be covered.
import { parentPort, workerData } from 'node:worker_threads';

const { program, alive, numbers, plan } = workerData;
let [current, seen] = [alive, null];
globalThis.$mutant = (n) => {
  seen?.add(n);
  return n === current;
};

const say = (message) => parentPort.postMessage(message);

/** The error of a test that fails; null when it passes. */
async function failure({ work }) {
  try {
    await work();
    return null;
  } catch (error) {
    return error ?? new Error('threw nothing');
  }
}

let loaded;
seen = new Set();
try {
  loaded = await import(program);
  await loaded.load();
  for (const work of loaded.before) await work();
} catch (error) {
  say({ kind: 'broken', message: String(error) });
  process.exit();
}
const { collected } = loaded;
if (plan === undefined) say({ kind: 'loaded', covers: [...seen] });
seen = null;

if (plan === undefined) {
  // the first time round: what each test takes and comes by
  for (const [i, t] of collected.entries()) {
    seen = new Set();
    const start = process.cpuUsage();
    const error = await failure(t);
    const { user, system } = process.cpuUsage(start);
    say({
      kind: 'baseline',
      i,
      name: t.name,
      ms: (user + system) / 1000,
      failed: error === null ? null : String(error).slice(0, 300),
      covers: [...seen],
    });
  }
} else {
  for (const n of numbers) {
    say({ kind: 'start', n });
    if (alive === null) current = n;
    let by = null;
    for (const i of plan.get(n) ?? []) {
      const error = await failure(collected[i]);
      if (error === null) continue;
      by = collected[i].name;
      break;
    }
    say({ kind: 'tried', n, by });
  }
}
say({ kind: 'done' });
