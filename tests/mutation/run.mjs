// npm run mutants -- --files fold,bending --sample N --seed S: small faults put into core, one at a time; the tests have
// to fail for each. Prints what they let through.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { ready, root } from '../../.ci/ready.mjs';
import { buildTests, sourcesIn, testsOf } from './build.mjs';
import { mutate } from './mutate.mjs';

const { values } = parseArgs({
  options: {
    files: { type: 'string', default: 'fold,bending,joining,plane' },
    sample: { type: 'string', default: '150' },
    seed: { type: 'string', default: '1' },
    only: { type: 'string', default: '' },
  },
});
const STALLED = 120_000; // ms on a busy machine: a mutant that runs this long runs for ever
const MOST_TESTS = 400; // of a mutant; the quickest that come by it

ready();
mkdirSync(join(root, 'out'), { recursive: true });
const file = join(root, 'out/mutants.mjs');
const program = pathToFileURL(file).href;
const mutants = await build(values.files.split(','));
process.stdout.write(`${mutants.length} mutants in ${values.files}, seed ${values.seed}\n`);

/** Writes the program with every mutant of these folders of core. */
async function build(rooms) {
  const texts = new Map();
  const found = [];
  for (const path of rooms.flatMap((r) => sourcesIn(join(root, 'packages/core/src', r)))) {
    const made = mutate(relative(root, path), readFileSync(path, 'utf8'), found.length);
    texts.set(path, made.text);
    found.push(...made.mutants);
  }
  const tests = [...testsOf(root, ['core']), join(root, 'tests/families.test.ts')];
  await buildTests({ root, tests, texts }, file);
  return found;
}

/** Mutants in an order that the seed gives. */
const order = (n) => createHash('sha256').update(`${values.seed} ${n}`).digest('hex');
const chosen = mutants
  .map((m) => ({ ...m, key: order(m.number) }))
  .toSorted((a, b) => (a.key < b.key ? -1 : 1))
  .slice(0, Number(values.sample))
  .filter((m) => values.only === '' || values.only.split(',').includes(String(m.number)));

/** Runs a worker to its end, or to where it stands still. */
function work(data, heard) {
  const worker = new Worker(new URL('./worker.mjs', import.meta.url), { workerData: { program, ...data } });
  return new Promise((done, failed) => {
    let timer;
    const wait = () => {
      clearTimeout(timer);
      timer = setTimeout(() => void worker.terminate(), STALLED);
    };
    wait();
    worker.on('message', (m) => {
      wait();
      heard(m);
    });
    worker.on('error', failed);
    worker.on('exit', () => {
      clearTimeout(timer);
      done();
    });
  });
}

const { tests, loaded } = await baseline();
/** Mutants that work when the modules are loaded: they have to be alive from then on. */
const early = new Set(loaded);
/** What each test takes and comes by: kept beside the program until that is another. */
async function baseline() {
  const hash = createHash('sha256').update(readFileSync(file)).digest('hex');
  const kept = join(root, 'out/mutants-baseline.json');
  if (existsSync(kept)) {
    const { of, found } = JSON.parse(readFileSync(kept, 'utf8'));
    if (of === hash) return found;
  }
  const found = { tests: [], loaded: [] };
  await work({ alive: null }, (m) => {
    if (m.kind === 'loaded') found.loaded = m.covers;
    if (m.kind === 'baseline') found.tests[m.i] = m;
    if (m.kind === 'broken') throw new Error(m.message);
  });
  writeFileSync(kept, JSON.stringify({ of: hash, found }));
  return found;
}

const failing = tests.filter((t) => t.failed !== null);
for (const { name, failed } of failing)
  process.stdout.write(`left out, it fails by itself: ${name}: ${failed}\n`);

/** Tests that come by a mutant, the quickest first. */
const plan = new Map(chosen.map(({ number }) => [number, []]));
for (const t of tests.toSorted((a, b) => a.ms - b.ms))
  if (t.failed === null)
    for (const n of t.covers) if ((plan.get(n)?.length ?? MOST_TESTS) < MOST_TESTS) plan.get(n).push(t.i);

const results = new Map();
const heard = ({ n, by }) => {
  results.set(n, by);
  const { path, line, from, to } = mutants[n];
  if (by === null) process.stdout.write(`lives: ${n} ${path}:${line} ${from} → ${to}\n`);
};
const late = chosen.filter((m) => !early.has(m.number)).map((m) => m.number);
while (late.length > 0) {
  let at = null;
  await work({ alive: null, numbers: late, plan }, (m) => {
    if (m.kind === 'start') at = m.n;
    if (m.kind === 'tried') heard(m);
  });
  if (at !== null && !results.has(at)) results.set(at, 'it never ends');
  const left = late.filter((n) => !results.has(n));
  late.splice(0, late.length, ...left);
}
// what works when the module is loaded: a program each, and every test of those that are quick
const all = tests.toSorted((a, b) => a.ms - b.ms).filter((t) => t.failed === null);
const quick = all.slice(0, Math.floor(all.length * 0.9)).map((t) => t.i);
for (const { number } of chosen.filter((m) => early.has(m.number))) {
  let by = 'it never ends';
  await work({ alive: number, numbers: [number], plan: new Map([[number, quick]]) }, (m) => {
    if (m.kind === 'broken') by = m.message;
    if (m.kind === 'tried') by = m.by;
  });
  heard({ n: number, by });
}

const survivors = chosen.filter((m) => results.get(m.number) === null);
const unseen = survivors.filter((m) => !early.has(m.number) && plan.get(m.number).length === 0);
for (const { number } of unseen) process.stdout.write(`no test comes by ${number}\n`);
const dead = chosen.length - survivors.length;
process.stdout.write(`${dead} of ${chosen.length} die, ${((100 * dead) / chosen.length).toFixed(1)} %\n`);
