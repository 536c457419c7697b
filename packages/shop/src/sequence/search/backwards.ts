import { isEmpty, type Mask, within, without } from '../part/mask.js';
import { isOpen, type LineStroke } from '../part/operations.js';
import { gaugedNext } from './gauging.js';
import { type BendProblem, clean, type Node, START, stepTo } from './states.js';

/**
 * A plan from its end: always the last operation in an order that goes with all that is left before it. The less is
 * bent, the less is in the way as a rule, so that what can come last may as well (Lawler 1973). Tools are looked at when it
 * is gone through forwards. Null where it finds none.
 */
export function* backwards(problem: BendProblem, order: readonly LineStroke[]): Generator<void, Node | null> {
  const { work } = problem;
  const last: LineStroke[] = [];
  for (let done = work.all; !isEmpty(done); ) {
    yield;
    const next = order.findLast((o) => goesLast(problem, o, done));
    if (next === undefined) return null;
    last.push(next);
    done = without(done, next.mask);
  }
  let node: Node | null = START;
  for (const operation of last.toReversed()) {
    yield;
    node = cheapestStep(problem, node, operation);
    if (node === null) return null;
  }
  return node;
}

/** True when an operation can be the one that brings a part to a state. */
function goesLast({ ways, contact }: BendProblem, operation: LineStroke, done: Mask): boolean {
  const before = without(done, operation.mask);
  // all of it is done by then, and nothing else is that has to come after it
  if (!within(operation.mask, done) || !isOpen(operation, before)) return false;
  return (
    (ways[operation.index] ?? []).some((w) => w.station.mount(operation, w.held, before).obstacle === null) &&
    contact(operation, before) === null
  );
}

/** An operation on the machine and side that cost least in a state; null where none goes. */
export function cheapestStep(problem: BendProblem, node: Node, operation: LineStroke): Node | null {
  const { at, done } = node;
  const set = at?.gauge ?? 0n;
  const ways = (problem.ways[operation.index] ?? [])
    .map((way) => {
      const { seconds } = gaugedNext(way, done, set, problem.costs);
      return { way, least: problem.positions.least(at, way) + seconds };
    })
    .toSorted((a, b) => a.least - b.least);
  let best: Node | null = null;
  for (const { way, least } of ways) {
    // geometry is asked only of what may still be cheaper
    if (best !== null && node.cost + least >= best.cost) break;
    const made = stepTo(problem, node, way);
    if (made !== null && clean(problem, made) && (best === null || made.cost < best.cost)) best = made;
  }
  return best;
}
