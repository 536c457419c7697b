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
const STALLED = 300_000; // ms on a busy machine: a mutant that runs this long runs for ever
const SLOW = /\/(job|families)\/(advice|cutouts)\.test/; // try hundreds of parts to say a size that works
const MOST_FILES = 25; // of a mutant; the quickest that come by it

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
  const tests = testsOf(root, ['core']).filter((t) => !SLOW.test(t));
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

/** Runs a worker until it is done: true; or until it stands still. */
function work(data, heard) {
  const worker = new Worker(new URL('./worker.mjs', import.meta.url), { workerData: { program, ...data } });
  return new Promise((done, failed) => {
    let [timer, whole] = [undefined, false];
    const wait = () => {
      clearTimeout(timer);
      timer = setTimeout(() => void worker.terminate(), STALLED);
    };
    wait();
    worker.on('message', (m) => {
      wait();
      if (m.kind === 'done') whole = true;
      else heard(m);
    });
    worker.on('error', failed);
    worker.on('exit', () => {
      clearTimeout(timer);
      done(whole);
    });
  });
}

/** What each file and test takes and comes by: kept beside the program until that is another. */
async function baseline() {
  const hash = createHash('sha256').update(readFileSync(file)).digest('hex');
  const kept = join(root, 'out/mutants-baseline.json');
  if (existsSync(kept)) {
    const { of, files } = JSON.parse(readFileSync(kept, 'utf8'));
    if (of === hash) return files;
  }
  const files = [];
  const whole = await work({ alive: null }, (m) => {
    if (m.kind === 'file') files.push(m);
  });
  if (!whole) throw new Error('the tests did not come to their end');
  writeFileSync(kept, JSON.stringify({ of: hash, files }));
  return files;
}

const files = await baseline();
for (const { failed, tests } of files) {
  if (failed !== null) process.stdout.write(`left out, it does not load: ${failed}\n`);
  for (const t of tests.filter((t) => t.failed !== null))
    process.stdout.write(`left out, it fails by itself: ${t.name}: ${t.failed}\n`);
}

const due = ({ tests }) => tests.reduce((sum, t) => sum + t.ms, 0);
/** Files that come by a mutant, the quickest first, with the tests that do, or all of one that does when it is loaded. */
function filesFor(n) {
  return files
    .filter((f) => f.failed === null)
    .map(({ i, covers, tests }) => {
      const early = covers.includes(n);
      const places = [...tests.keys()].filter(
        (k) => tests[k].failed === null && (early || tests[k].covers.includes(n)),
      );
      return {
        i,
        tests: places.toSorted((a, b) => tests[a].ms - tests[b].ms),
        ms: due({ tests: places.map((k) => tests[k]) }),
      };
    })
    .filter((f) => f.tests.length > 0)
    .toSorted((a, b) => a.ms - b.ms)
    .slice(0, MOST_FILES);
}

let dead = 0;
for (const [done, { number, path, line, from, to }] of chosen.entries()) {
  const by = filesFor(number);
  let killer = 'it never ends';
  const whole = await work({ alive: number, files: by }, (m) => {
    killer = m.by;
  });
  if (killer !== null || !whole) dead += 1;
  else
    process.stdout.write(
      `lives: ${number} ${path}:${line} ${from} → ${to}${by.length === 0 ? ' (no test comes by)' : ''}\n`,
    );
  if (done % 10 === 9) process.stdout.write(`${dead} of ${done + 1} die\n`);
}
process.stdout.write(`${dead} of ${chosen.length} die, ${((100 * dead) / chosen.length).toFixed(1)} %\n`);
