// Loads test files one after the other and runs their tests. Without a mutant alive it tells what each file and test
// takes and comes by; with one it runs those that come by it, the quickest file first, until one fails.
import { parentPort, workerData } from 'node:worker_threads';

const { program, alive, files, count } = workerData;
/** Of every mutant: was it come by? */
const seen = new Uint8Array(count);
const look = (n) => {
  seen[n] = 1;
  return false;
};
globalThis.$mutant = alive === null ? look : (n) => n === alive;

/** Mutants come by since this was last asked. */
function come() {
  const found = [...seen.keys()].filter((n) => seen[n] === 1);
  seen.fill(0);
  return found;
}

const say = (message) => parentPort.postMessage(message);

/** What a piece of work throws; null when it goes well. */
async function failure(work) {
  try {
    await work();
    return null;
  } catch (error) {
    return error ?? new Error('threw nothing');
  }
}

/** Loads a file: its tests, and what has to run before them. */
async function load({ loaders, collected, before }, i) {
  const [tests, works] = [collected.length, before.length];
  const error = await failure(async () => {
    await loaders[i]();
    for (const work of before.slice(works)) await work();
  });
  return { tests: collected.slice(tests), error };
}

async function measure(loaded) {
  const core = come();
  for (const { i } of files) {
    const { tests, error } = await load(loaded, i);
    const covers = [...core, ...come()];
    const found = [];
    for (const { name, work } of tests) {
      const start = process.cpuUsage();
      const failed = await failure(work);
      const { user, system } = process.cpuUsage(start);
      const ms = (user + system) / 1000;
      found.push({ name, ms, failed: failed && String(failed).slice(0, 300), covers: come() });
      say({ kind: 'alive' });
    }
    say({ kind: 'file', i, failed: error && String(error), covers, tests: found });
  }
}

/** The first test that fails; null when none does. Each file has the places of its tests to run. */
async function killer(loaded) {
  for (const { i, tests: places } of files) {
    const { tests, error } = await load(loaded, i);
    if (error !== null) return String(error).slice(0, 100);
    for (const k of places) {
      if ((await failure(tests[k].work)) !== null) return tests[k].name;
      say({ kind: 'alive' });
    }
  }
  return null;
}

try {
  const loaded = await import(program);
  if (alive === null) await measure(loaded);
  else say({ kind: 'tried', by: await killer(loaded) });
} catch (error) {
  say({ kind: 'tried', by: String(error).slice(0, 100) }); // core does not load
}
say({ kind: 'done' });
