import { both, keyOf, type Mask } from '../part/mask.js';
import type { Mounting } from './station.js';

/**
 * Mountings of a line by the state of the steps that decide them, each computed once; the same answer is the same
 * object, so that what hangs on it can be kept too.
 * @param seen steps that decide anything at the line
 */
export function mountBook(seen: () => Mask, judge: (done: Mask) => Mounting): (done: Mask) => Mounting {
  const byState = new Map<number | string, Mounting>();
  const byAnswer = new Map<string, Mounting>();
  return (done) => {
    const key = keyOf(both(done, seen()));
    const known = byState.get(key);
    if (known !== undefined) return known;
    const judged = judge(done);
    const answer = nameOf(judged);
    const mounting = byAnswer.get(answer) ?? judged;
    byAnswer.set(answer, mounting);
    byState.set(key, mounting);
    return mounting;
  };
}

function nameOf({ obstacle, stretches, putIn, takeOff }: Mounting): string {
  if (obstacle !== null)
    return `${obstacle.code} ${obstacle.panel} ${obstacle.value ?? ''} ${obstacle.limit ?? ''}`;
  return `${putIn} ${takeOff} ${stretches.map((s) => `${s.from} ${s.to} ${s.least} ${s.most}`).join(' ')}`;
}
