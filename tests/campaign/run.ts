// npm run campaign -- --minutes N --seed S: random jobs and damaged files until the time is up. What fails is shrunk and
// kept as a case under tests/cases, which the tests run from then on.
import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { endure, type Outcome } from './endure.js';
import { jobs } from './jobs.js';
import { answered, texts } from './texts.js';

const ROUND = 50;
const option = (name: string, usual: string) => {
  const i = process.argv.indexOf(`--${name}`);
  return i < 0 ? usual : (process.argv[i + 1] ?? usual);
};

const root = option('root', '.');
const minutes = Number(option('minutes', '10'));
const seed = Number(option('seed', String(Math.floor(Date.now() / 1000))));
const until = Date.now() + minutes * 60_000;
const made = { jobs: 0, refused: 0, texts: 0 };
const refusals = new Map<string, number>();
let slowest = { ms: 0, job: '' };
let memory = 0;
const failures: string[] = [];

function count(outcome: Outcome): void {
  if (outcome.made) made.jobs += 1;
  else {
    made.refused += 1;
    for (const code of new Set(outcome.codes)) refusals.set(code, (refusals.get(code) ?? 0) + 1);
  }
}

/** Keep what broke something, shrunk, where the tests find it. */
function keep(kind: 'job' | 'text', data: unknown, error: unknown): void {
  const found = String(error instanceof Error ? error.message : error).split('\n')[0] ?? '';
  const name = `${kind}-${createHash('sha256').update(JSON.stringify(data)).digest('hex').slice(0, 8)}.json`;
  writeFileSync(join(root, 'tests/cases', name), `${JSON.stringify({ kind, found, data }, null, 2)}\n`);
  failures.push(`${name}: ${found}`);
  process.stderr.write(`${name}: ${found}\n`);
}

process.stdout.write(`campaign of ${minutes} min, seed ${seed}\n`);
for (let round = 0; Date.now() < until; round++) {
  const settings = {
    seed: seed + round,
    numRuns: ROUND,
    interruptAfterTimeLimit: Math.max(1, until - Date.now()),
  };
  const tried = fc.check(
    fc.property(jobs, (job) => {
      const start = process.cpuUsage();
      const outcome = endure(job, round % 2 === 0 ? 'r2000' : 'r12');
      const ms = process.cpuUsage(start).user / 1000;
      if (ms > slowest.ms) slowest = { ms, job: JSON.stringify(job).slice(0, 200) };
      memory = Math.max(memory, process.memoryUsage().rss);
      count(outcome);
    }),
    settings,
  );
  if (tried.failed && tried.counterexample !== null)
    keep('job', tried.counterexample[0], tried.errorInstance);
  const damaged = await fc.check(
    fc.asyncProperty(texts(join(root, 'examples')), async (text) => {
      await answered(text);
      made.texts += 1;
    }),
    { ...settings, numRuns: ROUND / 2 },
  );
  if (damaged.failed && damaged.counterexample !== null)
    keep('text', damaged.counterexample[0], damaged.errorInstance);
}

const codes = [...refusals].toSorted(([, a], [, b]) => b - a).map(([code, n]) => `${code} ${n}`);
process.stdout.write(
  [
    `${made.jobs} jobs made, ${made.refused} refused, ${made.texts} damaged files answered, ${failures.length} failures`,
    `refused for ${codes.join(', ')}`,
    `slowest ${slowest.ms.toFixed(0)} ms, ${(memory / 1e6).toFixed(0)} MB at most; ${slowest.job}`,
    '',
  ].join('\n'),
);
process.exitCode = failures.length === 0 ? 0 : 1;
