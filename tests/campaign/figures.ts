// What a campaign counts.
import type { Outcome } from './lean.js';

/** Figures of a campaign so far. Times ms of processor time, memory bytes. */
export interface Figures {
  made: number;
  refused: number;
  texts: number;
  deep: number;
  readonly codes: Map<string, number>;
  slowest: { ms: number; job: string };
  memory: number;
  readonly failures: string[];
}

export const figures = (): Figures => ({
  made: 0,
  refused: 0,
  texts: 0,
  deep: 0,
  codes: new Map(),
  slowest: { ms: 0, job: '' },
  memory: 0,
  failures: [],
});

/** Counts a trial, and what it took. */
export function count(f: Figures, outcome: Outcome, ms: number, job: unknown): void {
  if (outcome.made) f.made += 1;
  else f.refused += 1;
  if (!outcome.made)
    for (const code of new Set(outcome.codes)) f.codes.set(code, (f.codes.get(code) ?? 0) + 1);
  if (ms > f.slowest.ms) f.slowest = { ms, job: JSON.stringify(job).slice(0, 400) };
}

/** The figures in lines. */
export function told({ made, refused, texts, deep, codes, slowest, memory, failures }: Figures): string {
  const refusals = [...codes].toSorted(([, a], [, b]) => b - a).map(([code, n]) => `${code} ${n}`);
  return [
    `${made} jobs made, ${refused} refused, ${deep} of them by every command, ${texts} damaged files answered, ${failures.length} failures`,
    `refused for ${refusals.join(', ')}`,
    `slowest ${slowest.ms.toFixed(0)} ms, ${(memory / 1e6).toFixed(0)} MB at most; ${slowest.job}`,
    '',
  ].join('\n');
}
