import { ancestors } from '../part/fold-tree.js';
import type { HeldSide } from '../part/line.js';
import { isEmpty, keyOf, type Mask, within, without } from '../part/mask.js';
import { isNext, isOpen, type LineStroke } from '../part/operations.js';
import type { AtMachines } from './at-machines.js';

/** Strokes in an order in which nothing is in the way; none where there is no such order; unknown where it was not looked for to the end. */
export type FromEnd = readonly LineStroke[] | 'none' | 'unknown';

const SIDES: readonly HeldSide[] = ['parent', 'child'];

/**
 * Whether some steps can all be done, the others left flat, looked at from the end: what can come last is taken back, then what
 * can come last before it, never twice into a state that leads nowhere (Lawler 1973). What excludes each other is seen at
 * once, where from the start everything else is done first. `none` is proof: what is asked here, any plan needs.
 * @param most states looked at before it gives up
 */
export function* fromEnd(
  { work: whole, stations, contact, covers }: AtMachines,
  steps: Mask,
  most: number,
): Generator<void, FromEnd> {
  const depth = ({ panels }: LineStroke) => ancestors(whole.tree, panels[0] as number).length;
  const own = whole.operations.filter((o) => within(o.mask, steps));
  const work = { ...whole, operations: own };
  // what others hang on mostly comes last
  const order = own.toSorted((a, b) => depth(a) - depth(b) || b.index - a.index);
  const goes = (operation: LineStroke, before: Mask): boolean =>
    contact(operation, before) === null &&
    stations.some((station) =>
      SIDES.some((held) => {
        if (station.limits(operation, held) !== null) return false;
        const mounting = station.mount(operation, held, before);
        // tools for several stretches hang on what is on
        return mounting.obstacle === null && (mounting.stretches.length > 1 || covers(mounting, station));
      }),
    );
  const dead = new Set<number | string>();
  let looked = 0;
  function* from(done: Mask): Generator<void, FromEnd> {
    if (isEmpty(done)) return [];
    const key = keyOf(done);
    if (dead.has(key)) return 'none';
    if (looked >= most) return 'unknown';
    looked += 1;
    yield;
    for (const operation of order) {
      const before = without(done, operation.mask);
      const last =
        within(operation.mask, done) && isOpen(operation, before) && isNext(work, operation, before);
      if (!last || !goes(operation, before)) continue;
      const rest = yield* from(before);
      if (rest !== 'none') return rest === 'unknown' ? rest : [...rest, operation];
    }
    dead.add(key);
    return 'none';
  }
  return yield* from(steps);
}
