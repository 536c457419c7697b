// What the page's workers run: questions come in, answers go out.
import * as z from 'zod/mini';
import type { Message, Reply } from '../protocol.js';
import { answering } from './answers.js';

z.config({ jitless: true }); // the page's policy allows no code from text

const answer = answering();
const scope = globalThis as unknown as {
  onmessage: (event: { readonly data: Message }) => void;
  postMessage: (reply: Reply) => void;
};

scope.onmessage = async ({ data: { id, kind, ask } }) => {
  try {
    scope.postMessage({ id, answer: await answer({ kind, ask } as Message), fault: null });
  } catch (error) {
    scope.postMessage({ id, answer: null, fault: error instanceof Error ? error.message : String(error) });
  }
};
