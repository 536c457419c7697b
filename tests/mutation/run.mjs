// npm run mutants -- --files fold,bending --sample N --seed S: small faults put into core, one at a time; the tests have
// to fail for each. Prints what they let through.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { ready, root } from '../../.ci/ready.mjs';
import { buildTests, sourcesIn, testsOf } from './build.mjs';
import { reasonOf, unmet } from './equal.mjs';
import { mutate } from './mutate.mjs';

const { values } = parseArgs({
  options: {
    files: { type: 'string', default: 'fold,bending,joining,plane' },
    sample: { type: 'string', default: '150' },
    seed: { type: 'string', default: '1' },
    only: { type: 'string', default: '' },
    threads: { type: 'string', default: '1' },
  },
});
const STALLED = 5; // s of processor time, and ten times what its slowest test takes: a mutant that runs on runs for ever
const SLOW = /\/(job|families)\/(advice|cutouts)\.test/; // try hundreds of parts to say a size that works
const MOST_FILES = 25; // of a mutant, that come by it

ready();
mkdirSync(join(root, 'out'), { recursive: true });
const file = join(root, 'out/mutants.mjs');
const program = pathToFileURL(file).href;
const tests = testsOf(root, ['core']).filter((t) => !SLOW.test(t));
const mutants = await build(values.files.split(','));
const threads = Array.from({ length: Number(values.threads) }, (_, k) => k);
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

/** Processor time of all threads so far, s. */
const spent = () => process.cpuUsage().user / 1e6;

/** Runs a worker until it is done: true; or until it takes more than so many s of processor time over one test. */
function work(data, limit, heard) {
  const worker = new Worker(new URL('./worker.mjs', import.meta.url), {
    workerData: { program, count: mutants.length, ...data },
  });
  return new Promise((done, failed) => {
    let [since, whole] = [spent(), false];
    // threads share what there is
    const watch = setInterval(() => {
      if (spent() - since > limit * threads.length) void worker.terminate();
    }, 1000);
    worker.on('message', (m) => {
      since = spent();
      if (m.kind === 'done') whole = true;
      else if (m.kind !== 'alive') heard(m);
    });
    worker.on('error', failed);
    worker.on('exit', () => {
      clearInterval(watch);
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
  const shares = threads.map((k) => [...tests.keys()].filter((i) => i % threads.length === k));
  const whole = await Promise.all(
    shares.map((share) =>
      work({ alive: null, files: share.map((i) => ({ i })) }, Infinity, (m) => {
        if (m.kind === 'file') files.push(m);
      }),
    ),
  );
  if (whole.includes(false)) throw new Error('the tests did not come to their end');
  writeFileSync(kept, JSON.stringify({ of: hash, files }));
  return files;
}

const files = await baseline();
for (const { failed, tests } of files) {
  if (failed !== null) process.stdout.write(`left out, it does not load: ${failed}\n`);
  for (const t of tests.filter((t) => t.failed !== null))
    process.stdout.write(`left out, it fails by itself: ${t.name}: ${t.failed}\n`);
}

const took = ({ tests }) => tests.reduce((sum, t) => sum + t.ms, 0);
/** How far a test file stands from a source: 0 the one of its name, 1 one of its folder, 2 any other. */
function away(i, path) {
  const [folder, name] = [basename(dirname(path)), basename(path, '.ts')];
  if (basename(dirname(tests[i])) !== folder) return 2;
  return basename(tests[i], '.test.ts') === name ? 0 : 1;
}

/**
 * Files that come by a mutant, those of its own folder first, then the quickest, with the tests that do, or all of one
 * that does when it is loaded.
 */
function filesFor({ number, path }) {
  return files
    .filter((f) => f.failed === null)
    .map((f) => {
      const early = f.covers.includes(number);
      const places = [...f.tests.keys()].filter(
        (k) => f.tests[k].failed === null && (early || f.tests[k].covers.includes(number)),
      );
      return {
        i: f.i,
        tests: places.toSorted((a, b) => f.tests[a].ms - f.tests[b].ms),
        ms: took({ tests: places.map((k) => f.tests[k]) }),
        slowest: Math.max(0, ...places.map((k) => f.tests[k].ms)),
      };
    })
    .filter((f) => f.tests.length > 0)
    .toSorted((a, b) => away(a.i, path) - away(b.i, path) || a.ms - b.ms)
    .slice(0, MOST_FILES);
}

const count = { tried: 0, dead: 0, equal: 0 };
const share = (n, of) => `${n} of ${of} die, ${((100 * n) / of).toFixed(1)} %`;

async function tryOne(mutant) {
  const { number, path, line, from, to } = mutant;
  const by = filesFor(mutant);
  let killer = 'it never ends';
  const slowest = Math.max(0, ...by.map((f) => f.slowest)) / 1000;
  const whole = await work({ alive: number, files: by }, STALLED + 10 * slowest, (m) => {
    killer = m.by;
  });
  count.tried += 1;
  if (killer !== null || !whole) count.dead += 1;
  else {
    const why = reasonOf(mutant);
    if (why !== null) count.equal += 1;
    const more = why !== null ? ` (equal: ${why})` : by.length === 0 ? ' (no test comes by)' : '';
    process.stdout.write(`lives: ${number} ${path}:${line} ${from} → ${to}${more}\n`);
  }
  if (count.tried % 10 === 0) process.stdout.write(`${share(count.dead, count.tried)}\n`);
}

const due = [...chosen];
await Promise.all(
  threads.map(async () => {
    for (let next = due.shift(); next !== undefined; next = due.shift()) await tryOne(next);
  }),
);
for (const { path, text } of unmet(mutants))
  process.stdout.write(`no mutant is like this one now: ${path}: ${text}\n`);
const { tried, dead, equal } = count;
process.stdout.write(
  `${share(dead, tried)}; without ${equal} that read the same: ${share(dead, tried - equal)}\n`,
);
