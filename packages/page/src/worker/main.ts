// What the page's workers run: questions come in, answers go out.
import * as z from 'zod/mini';
import type { Drop, Message, Reply } from '../protocol.js';
import { answering } from './answers.js';

z.config({ jitless: true }); // the page's policy allows no code from text

const answer = answering();
const scope = globalThis as unknown as {
  onmessage: (event: { readonly data: Message | Drop }) => void;
  postMessage: (reply: Reply) => void;
};

const under = new Map<number, AbortController>();

scope.onmessage = async ({ data }) => {
  const { id } = data;
  if (data.kind === 'drop') {
    under.get(id)?.abort();
    return;
  }
  const stop = new AbortController();
  under.set(id, stop);
  try {
    scope.postMessage({ id, answer: await answer(data, stop.signal), fault: null });
  } catch (error) {
    // what was dropped is only told to be over
    const fault = error instanceof Error ? error.message : String(error);
    scope.postMessage({ id, answer: null, fault: stop.signal.aborted ? null : fault });
  } finally {
    under.delete(id);
  }
};
