import type { Answers, Asks, Drop, Reply } from '../protocol.js';

/** Asks workers; a question of the slow kind is dropped when a later one of any slow kind is put. */
export interface Engine {
  readonly ask: <K extends keyof Asks>(kind: K, ask: Asks[K]) => Promise<Answers[K]>;
  /** A question that may take long; null when it was dropped for a later one. */
  readonly askLong: <K extends keyof Asks>(kind: K, ask: Asks[K]) => Promise<Answers[K] | null>;
  /** A question answered apart, whatever else goes on: nothing waits for it and nothing drops it. */
  readonly askApart: <K extends keyof Asks>(kind: K, ask: Asks[K]) => Promise<Answers[K]>;
  /** Drop what still takes long. */
  readonly dropLong: () => void;
  readonly close: () => void;
}

interface Waiting {
  readonly kind: keyof Asks;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (fault: Error) => void;
}

interface Desk {
  readonly worker: Worker;
  readonly waiting: Map<number, Waiting>;
  /** Dropped, and not yet told to be over. */
  readonly dropped: Set<number>;
}

/** Two workers from one program: one answers at once, the other may take its time and be ended for it. */
export function engine(program: string): Engine {
  const url = URL.createObjectURL(new Blob([program], { type: 'text/javascript' }));
  let count = 0;
  const open = (): Desk => {
    const worker = new Worker(url);
    const waiting: Desk['waiting'] = new Map();
    const dropped: Desk['dropped'] = new Set();
    worker.onmessage = ({ data: { id, answer, fault } }: MessageEvent<Reply>) => {
      const asked = waiting.get(id);
      waiting.delete(id);
      dropped.delete(id);
      if (fault === null) asked?.resolve(answer);
      else asked?.reject(new Error(fault));
    };
    return { worker, waiting, dropped };
  };
  const put = ({ worker, waiting }: Desk, kind: keyof Asks, ask: unknown): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const id = ++count;
      waiting.set(id, { kind, resolve, reject });
      worker.postMessage({ id, kind, ask });
    });
  const quick = open();
  let slow = open();
  const renew = () => {
    slow.worker.terminate();
    slow = open();
  };
  const dropLong = () => {
    if (slow.waiting.size === 0) return;
    const waiting = [...slow.waiting];
    slow.waiting.clear();
    // a bend order is looked for in slices and hears of it, findings are soon done; what else works is ended with its worker
    if (waiting.every(([, w]) => w.kind === 'order' || w.kind === 'findings'))
      for (const [id] of waiting) {
        slow.dropped.add(id);
        slow.worker.postMessage({ id, kind: 'drop' } satisfies Drop);
      }
    else renew();
    for (const [, { resolve }] of waiting) resolve(null);
  };
  return {
    ask: (kind, ask) => put(quick, kind, ask) as Promise<never>,
    askLong: (kind, ask) => {
      // what was dropped and still works has not come to a place where it hears of it
      if (slow.dropped.size > 0) renew();
      return put(slow, kind, ask) as Promise<never>;
    },
    askApart: async (kind, ask) => {
      const desk = open();
      try {
        return (await put(desk, kind, ask)) as never;
      } finally {
        desk.worker.terminate();
      }
    },
    dropLong,
    close: () => {
      quick.worker.terminate();
      slow.worker.terminate();
      URL.revokeObjectURL(url);
    },
  };
}
