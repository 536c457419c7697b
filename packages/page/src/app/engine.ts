import type { Answers, Asks, Reply } from '../protocol.js';

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

interface Desk {
  readonly worker: Worker;
  readonly waiting: Map<number, { resolve: (answer: unknown) => void; reject: (fault: Error) => void }>;
}

/** Two workers from one program: one answers at once, the other may take its time and be ended for it. */
export function engine(program: string): Engine {
  const url = URL.createObjectURL(new Blob([program], { type: 'text/javascript' }));
  let count = 0;
  const open = (): Desk => {
    const worker = new Worker(url);
    const waiting: Desk['waiting'] = new Map();
    worker.onmessage = ({ data: { id, answer, fault } }: MessageEvent<Reply>) => {
      const asked = waiting.get(id);
      waiting.delete(id);
      if (fault === null) asked?.resolve(answer);
      else asked?.reject(new Error(fault));
    };
    return { worker, waiting };
  };
  const put = ({ worker, waiting }: Desk, kind: keyof Asks, ask: unknown): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const id = ++count;
      waiting.set(id, { resolve, reject });
      worker.postMessage({ id, kind, ask });
    });
  const quick = open();
  let slow = open();
  const dropLong = () => {
    if (slow.waiting.size === 0) return;
    slow.worker.terminate();
    for (const { resolve } of slow.waiting.values()) resolve(null);
    slow = open();
  };
  return {
    ask: (kind, ask) => put(quick, kind, ask) as Promise<never>,
    askLong: (kind, ask) => put(slow, kind, ask) as Promise<never>,
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
