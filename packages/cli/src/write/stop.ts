import { WriteError } from '../host/failure.js';

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Asked between two steps: whether somebody pressed Ctrl-C. @throws WriteError when so */
export type StopHere = () => void;

/**
 * Do some work that a signal ends only where it asks whether to stop: what it began is cleared up. One that comes
 * too late for that ends the program afterwards, a second one at once.
 */
export async function stoppable<T>(place: string, work: (stopHere: StopHere) => Promise<T>): Promise<T> {
  let signal: NodeJS.Signals | null = null;
  const heard = (given: NodeJS.Signals) => {
    if (signal !== null) process.exit(128 + 2);
    signal = given;
  };
  for (const s of SIGNALS) process.on(s, heard);
  let told = false;
  try {
    return await work(() => {
      if (signal === null) return;
      told = true;
      throw new WriteError(place, 'was stopped. Nothing was changed', signal);
    });
  } finally {
    for (const s of SIGNALS) process.off(s, heard);
    if (signal !== null && !told) process.kill(process.pid, signal); // all was written, or failed, as it came
  }
}
