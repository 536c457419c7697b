import { breath } from './breath.js';

/** An `AbortSignal`, as far as it is asked; one of your own may hold a time limit, which is heard without an event too. */
export interface StopSignal {
  /** Throws the reason once the signal is aborted, nothing before. */
  throwIfAborted(): void;
}

/** Work that pauses between its pieces. */
export type Pieces<T> = Generator<undefined, T>;

/** All pieces one after the other; the signal is asked before each. @throws what it was aborted for */
export function atOnce<T>(pieces: Generator<unknown, T>, signal?: StopSignal): T {
  for (;;) {
    signal?.throwIfAborted();
    const piece = pieces.next();
    if (piece.done) return piece.value;
  }
}

/** The same, with room for timers, messages and a page's drawing after every so many pieces. */
export async function inTurns<T>(pieces: Pieces<T>, every: number, signal?: StopSignal): Promise<T> {
  for (let turn = 1; ; turn += 1) {
    signal?.throwIfAborted();
    const piece = pieces.next();
    if (piece.done) return piece.value;
    if (turn % every === 0) await breath();
  }
}
