// npm run campaign: random jobs and damaged files until the time is up, or with --jobs until so many are through. What
// fails is shrunk and kept as a case under tests/cases, which the tests run from then on.
//   --minutes N   everything to each job, and damaged files; 10 when left out
//   --jobs N      so many, the short way, one of --every K (2000) by every command too, its cut files in --keep FOLDER
//   --seed S      printed when left out
import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import fc from 'fast-check';
import { endureDeep } from './deep.js';
import { endure } from './endure.js';
import { count, figures, told } from './figures.js';
import { jobs } from './jobs.js';
import { endureLean, type Outcome } from './lean.js';
import { answered, texts } from './texts.js';
import { leanTrials } from './trials.js';

const option = (name: string, usual: string) => {
  const i = process.argv.indexOf(`--${name}`);
  return i < 0 ? usual : (process.argv[i + 1] ?? usual);
};

const root = option('root', '.');
const minutes = Number(option('minutes', '10'));
const wanted = Number(option('jobs', '0'));
const every = Number(option('every', '2000'));
const keepIn = option('keep', '');
const seed = Number(option('seed', String(Math.floor(Date.now() / 1000))));
const f = figures();

/** Keep what broke something, shrunk, where the tests find it. */
function keep(kind: 'job' | 'text' | 'trial', data: unknown, error: unknown): void {
  const found = String(error instanceof Error ? error.message : error).split('\n')[0] ?? '';
  const name = `${kind}-${createHash('sha256').update(JSON.stringify(data)).digest('hex').slice(0, 8)}.json`;
  writeFileSync(join(root, 'tests/cases', name), `${JSON.stringify({ kind, found, data }, null, 2)}\n`);
  f.failures.push(`${name}: ${found}`);
  process.stderr.write(`${name}: ${found}\n`);
}

/** Counts how a job ends and what it takes. */
function measured(job: unknown, work: () => Outcome): void {
  const start = process.cpuUsage();
  const outcome = work();
  const { user, system } = process.cpuUsage(start);
  count(f, outcome, (user + system) / 1000, job);
}

let stopped = false;
for (const signal of ['SIGINT', 'SIGTERM'] as const)
  process.once(signal, () => {
    stopped = true; // what was counted so far is told
  });

const rss = () => {
  f.memory = Math.max(f.memory, process.memoryUsage().rss);
};

async function everything(): Promise<void> {
  const until = Date.now() + minutes * 60_000;
  for (let round = 0; Date.now() < until && !stopped; round++) {
    const numRuns = 50;
    const settings = { seed: seed + round, interruptAfterTimeLimit: Math.max(1, until - Date.now()) };
    const tried = fc.check(
      fc.property(jobs, (job) => {
        measured(job, () => endure(job, round % 2 === 0 ? 'r2000' : 'r12'));
        rss();
      }),
      { ...settings, numRuns },
    );
    if (tried.failed && tried.counterexample !== null)
      keep('job', tried.counterexample[0], tried.errorInstance);
    const damaged = await fc.check(
      fc.asyncProperty(texts(join(root, 'examples')), async (text) => {
        await answered(text);
        f.texts += 1;
      }),
      { ...settings, numRuns: numRuns / 2 },
    );
    if (damaged.failed && damaged.counterexample !== null)
      keep('text', damaged.counterexample[0], damaged.errorInstance);
  }
}

async function lean(): Promise<void> {
  const numRuns = Math.min(500, every);
  let deep = 0;
  for (let round = 0; f.made + f.refused < wanted && !stopped; round++) {
    const left = wanted - f.made - f.refused;
    const settings = { seed: seed + round, numRuns: Math.min(numRuns, left) };
    const tried = fc.check(
      fc.property(leanTrials, (trial) => measured(trial, () => endureLean(trial))),
      settings,
    );
    if (tried.failed && tried.counterexample !== null)
      keep('trial', tried.counterexample[0], tried.errorInstance);
    for (; deep < Math.floor((f.made + f.refused) / every); deep++) {
      const also = await fc.check(
        fc.asyncProperty(leanTrials, (trial) => endureDeep(trial, keepIn === '' ? null : keepIn)),
        { seed: seed + round, numRuns: 1 },
      );
      f.deep += 1;
      if (also.failed && also.counterexample !== null)
        keep('trial', also.counterexample[0], also.errorInstance);
    }
    rss();
    await turn(); // signals are heard
    if (round % 20 === 19) process.stderr.write(`${f.made + f.refused} of ${wanted}\n`);
  }
}

process.stdout.write(`campaign of ${wanted > 0 ? `${wanted} jobs` : `${minutes} min`}, seed ${seed}\n`);
await (wanted > 0 ? lean() : everything());
process.stdout.write(told(f));
process.exitCode = f.failures.length === 0 ? 0 : 1;
