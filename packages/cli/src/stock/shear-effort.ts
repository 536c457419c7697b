import type { Progress, ShearEffort } from '@tinwright/cutting';
import type { Host } from '../host/console.js';
import type { JobBlanks } from './shear-blanks.js';

const MOST_STEPS = 100_000_000;
const MOST_SECONDS = 86_400;
const LARGEST_SEED = 2 ** 31;

/** How long to search, as it was typed. */
interface TypedEffort {
  readonly seed: string;
  readonly steps?: string;
  readonly seconds?: string;
}

/** Steps and seed as they were given, or a sentence about what cannot be. */
export async function shearEffort({ seed, steps, seconds }: TypedEffort): Promise<ShearEffort | string> {
  const { SHEAR_EFFORT } = await import('@tinwright/cutting');
  const whole = (name: string, text: string, most: number) => {
    const n = Number(text);
    const fine = /^\d+$/.test(text) && n <= most;
    return fine ? n : `--${name}: ${text} given, a whole number from 0 to ${most} allowed`;
  };
  const read = [
    whole('seed', seed, LARGEST_SEED),
    steps === undefined ? SHEAR_EFFORT.steps.sheets : whole('steps', steps, MOST_STEPS),
  ];
  const wrong = read.find((v) => typeof v === 'string');
  if (typeof wrong === 'string') return wrong;
  const [own, most] = read as [number, number];
  const time = seconds === undefined ? Number.POSITIVE_INFINITY : Number(seconds);
  if (!(time >= 0) || (time > MOST_SECONDS && seconds !== undefined))
    return `--seconds: ${seconds} given, 0 to ${MOST_SECONDS} allowed`;
  const offcut = Math.min(most, SHEAR_EFFORT.steps.offcut);
  const neat = Math.min(most, SHEAR_EFFORT.steps.neat);
  return { seed: own, steps: { sheets: most, offcut, neat }, enough: within(time) };
}

/** Pieces from which on a linear programme is worth loading. */
const MANY_PIECES = 60;

/** A solver of linear programmes, where there are pieces enough. */
export async function coverFor({ blanks }: JobBlanks): Promise<Pick<ShearEffort, 'cover'>> {
  if (blanks.reduce((sum, b) => sum + b.quantity, 0) < MANY_PIECES) return {};
  const { loadCoverSolver } = await import('./cover-solver.js');
  return { cover: await loadCoverSolver() };
}

/** The effort with a sign of how far it is; a metal after the other starts anew. */
export async function watchedEffort(
  host: Host,
  effort: ShearEffort,
): Promise<{ readonly watched: ShearEffort; readonly end: () => void }> {
  const { sheets, offcut, neat } = effort.steps;
  const bar = await host.progress?.('shear', sheets + offcut + neat);
  const enough = (at: Progress) => {
    bar?.to(at.steps);
    return effort.enough(at);
  };
  return { watched: { ...effort, enough }, end: () => bar?.end() };
}

/** Shares of the time after which each goal gives way to the next. */
const SHARES = { sheets: 0.7, offcut: 0.85, neat: 1 } as const;

function within(seconds: number): (at: Progress) => boolean {
  const start = Date.now();
  return ({ stage }) => (Date.now() - start) / 1000 >= seconds * SHARES[stage];
}
