import { atOnce } from '@tinwright/core/internal';
import { ancestors } from '../part/fold-tree.js';
import { sameMask, stepsOf } from '../part/mask.js';
import { isOpen, type LineStroke } from '../part/operations.js';
import { axesOf } from './axes.js';
import { backwards, cheapestStep } from './backwards.js';
import { byStops } from './by-stops.js';
import { type BendProblem, type FoundMoves, type Node, pathTo, START } from './states.js';

/** Which of two operations comes first. */
export type SweepOrder = (a: LineStroke, b: LineStroke) => number;

/**
 * Orders a setter tries first: round the part, one side up and then the other, what lies the same way from the outside inwards; from one end of the part
 * to the other, from the outside inwards, and the reverse of both.
 */
export function sweepOrders(problem: BendProblem): readonly SweepOrder[] {
  const { work, heading } = problem;
  const { tree, operations } = work;
  const headings = new Map(operations.map((o) => [o.index, heading(o, 'parent')]));
  const axes = axesOf([...headings.values()]);
  const axis = ({ index }: LineStroke) => axes.get(headings.get(index) as number)?.axis ?? 0;
  const many = new Set(operations.map(axis)).size > FEW_AXES;
  const depth = (o: LineStroke) => ancestors(tree, o.panels[0] as number).length;
  const joined = (a: LineStroke, b: LineStroke) => b.steps.length - a.steps.length;
  const round: SweepOrder = (a, b) =>
    axis(a) - axis(b) || depth(b) - depth(a) || joined(a, b) || a.index - b.index;
  const up = (o: LineStroke) => Math.sign(o.angle);
  const both = new Set(operations.map(up)).size > 1;
  const rounds: readonly SweepOrder[] = both
    ? [(a, b) => up(a) - up(b) || round(a, b), (a, b) => up(b) - up(a) || round(a, b)]
    : [round];
  const stops = byStops(problem);
  const together: readonly SweepOrder[] = stops === null ? [] : [(a, b) => stops(a, b) || round(a, b)];
  return [
    ...(many ? [...rounds, ...together] : together),
    (a, b) => joined(a, b) || a.index - b.index,
    (a, b) => joined(a, b) || b.index - a.index,
    (a, b) => depth(b) - depth(a) || joined(a, b) || a.index - b.index,
    (a, b) => depth(a) - depth(b) || joined(a, b) || a.index - b.index,
  ];
}

const FEW_AXES = 2; // of strips and boxes

/**
 * Plans a setter sees at once, at every step the first bend in such an order that goes, or where that comes to no end, the
 * last one from the end. The cheapest of them; each looks at few states, however many bends there are.
 */
export function* sweeps(problem: BendProblem): Generator<number, FoundMoves> {
  const { operations, steps } = problem.work;
  const orders = sweepOrders(problem);
  let best: Node | null = null;
  for (const order of orders) {
    const sorted = operations.toSorted(order);
    const cost: number = best?.cost ?? Infinity;
    const end = yield* telling(swept(problem, sorted), cost);
    const whole = sameMask(end.done, problem.work.all);
    const found: Node | null = whole ? end : yield* telling(backwards(problem, sorted), cost);
    if (found !== null && found.cost < cost) best = found;
  }
  const expanded = orders.length * steps.length;
  if (best === null) return { moves: null, bound: 0, cost: Infinity, expanded };
  return { moves: pathTo(best), bound: 0, cost: best.cost, expanded };
}

/** A part of the sweeps, with the seconds of the best plan so far on the way. */
function* telling<T>(part: Generator<unknown, T>, cost: number): Generator<number, T> {
  for (;;) {
    const { done, value } = part.next();
    if (done === true) return value;
    yield cost;
  }
}

/** The state in which a setter is stuck who goes on as far as he can: of all such orders the one with the most steps done. */
export function furthest(problem: BendProblem): Node {
  const ends = sweepOrders(problem).map((order) =>
    atOnce(swept(problem, problem.work.operations.toSorted(order))),
  );
  const count = ({ done }: Node) => stepsOf(done).length;
  return ends.reduce((a, b) => (count(b) > count(a) ? b : a));
}

/** As far as an order goes. */
function* swept(problem: BendProblem, order: readonly LineStroke[]): Generator<number, Node> {
  const { all } = problem.work;
  let node: Node = START;
  while (!sameMask(node.done, all)) {
    yield node.cost;
    const next = nextOf(problem, node, order);
    if (next === null) return node;
    node = next;
  }
  return node;
}

/** The first operation of an order that goes, on the machine and side that cost least. */
function nextOf(problem: BendProblem, node: Node, order: readonly LineStroke[]): Node | null {
  const open = order.filter((o) => isOpen(o, node.done));
  // a hem that is folded is closed before anything else
  const closing = open.filter((o) => o.action === 'close');
  for (const operation of closing.length > 0 ? closing : open) {
    const best = cheapestStep(problem, node, operation);
    if (best !== null) return best;
  }
  return null;
}
