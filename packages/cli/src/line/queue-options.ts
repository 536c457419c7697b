import { plainDecimal } from '../text/plain-decimal.js';
import type { OptionSpec } from './command.js';

/** The option of verbs that share work out. */
export const QUEUE_OPTION: OptionSpec = {
  type: 'string',
  describe: 'Redis that workers take sizes from: redis://host:6379; needs npm install @tinwright/queue',
};

/** The option of verbs that trust what others send. */
export const KEY_OPTION: OptionSpec = {
  type: 'string',
  describe:
    'file with a secret that run and workers share: nobody else who writes to Redis can change a size',
};

const MOST_JOBS = 64;

/** How much is done at once; a text says what is wrong. */
export function readJobs(given: string | undefined, usual: number): number | string {
  const count = given === undefined ? Math.min(usual, MOST_JOBS) : (plainDecimal(given) ?? Number.NaN);
  return Number.isInteger(count) && count >= 1 && count <= MOST_JOBS
    ? count
    : `--jobs: ${given} given, a whole number from 1 to ${MOST_JOBS} allowed`;
}
