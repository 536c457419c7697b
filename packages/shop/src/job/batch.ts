import type { Costs, Shop } from '../machines/shop.js';
import type { Sequence } from '../sequence/answer/plan.js';
import { Heap } from '../sequence/search/heap.js';
import { changeOf, type SetUp, type SetUpChange, setUpOf, stood } from './set-up.js';

/** An operation on all pieces of a part, in its place among those of the other parts. */
export interface BatchStep {
  readonly part: string;
  /** Place in the part's own sequence, from 0. */
  readonly step: number;
  /** What is changed before it. */
  readonly changes: readonly SetUpChange[];
  /** Seconds that takes, walking included. */
  readonly seconds: number;
}

/** The bends of all parts of a job in one order. */
export interface Batch {
  readonly steps: readonly BatchStep[];
  /** Seconds of set-ups and walking, and what they are with one part after another. */
  readonly seconds: number;
  readonly apart: number;
  /** True when no other order of the same sequences takes less. */
  readonly proved: boolean;
}

interface Chain {
  readonly part: string;
  readonly setUps: readonly SetUp[];
}

/** Operations done of every part, and how every machine stands. */
interface Node {
  readonly at: readonly number[];
  readonly stands: ReadonlyMap<string, SetUp>;
  readonly machine: string;
  readonly last: number;
  readonly seconds: number;
  readonly from: Node | null;
  readonly step: BatchStep | null;
}

const MOST_STATES = 60_000; // looked at
const MOST_EDGES = 300_000; // from one state to the next, of which some 100 bytes are kept

/**
 * One order for the bends of several parts in which set-ups that are alike come together: every operation on all pieces
 * of its part before the next; within a part its own sequence. The order takes the least seconds of changing and walking,
 * or goes on with what changes least where there are too many orders to look at.
 * @param sequences parts that cannot be bent are left out
 */
export function batchOf(sequences: readonly Sequence[], shop: Shop): Batch {
  const chains = sequences
    .filter((s) => s.steps.length > 0)
    .map((s): Chain => ({ part: s.part, setUps: s.steps.map((step) => setUpOf(step, shop)) }));
  const { costs } = shop;
  const apart = chains.reduce((node, chain, i) => {
    return chain.setUps.reduce((n) => follow(n, i, chains, costs), node);
  }, start(chains));
  const found = cheapest(chains, costs);
  const best = found ?? greedy(chains, costs);
  const end = best.seconds <= apart.seconds ? best : apart;
  return { steps: stepsTo(end), seconds: end.seconds, apart: apart.seconds, proved: found !== null };
}

const start = (chains: readonly Chain[]): Node => ({
  at: chains.map(() => 0),
  stands: new Map(),
  machine: '',
  last: -1,
  seconds: 0,
  from: null,
  step: null,
});

/** A way on from a state: the next operation of a part, and the seconds up to its end. */
interface Edge {
  readonly from: Node;
  readonly chain: number;
  readonly seconds: number;
}

const setUpAt = ({ at }: Node, chain: number, chains: readonly Chain[]): SetUp =>
  (chains[chain] as Chain).setUps[at[chain] as number] as SetUp;

/** What changing and walking take before the next operation of a part. */
function changed(node: Node, setUp: SetUp, costs: Costs) {
  const walks = node.machine !== '' && node.machine !== setUp.machine;
  const { changes, seconds } = changeOf(node.stands.get(setUp.machine) ?? null, setUp, costs);
  return { walks, changes, seconds: seconds + (walks ? costs.walk : 0) };
}

function edge(from: Node, chain: number, chains: readonly Chain[], costs: Costs): Edge {
  const { seconds } = changed(from, setUpAt(from, chain, chains), costs);
  return { from, chain, seconds: from.seconds + seconds };
}

/** The state after the next operation of a part. */
function follow(node: Node, chain: number, chains: readonly Chain[], costs: Costs): Node {
  const setUp = setUpAt(node, chain, chains);
  const { walks, changes, seconds } = changed(node, setUp, costs);
  const { part } = chains[chain] as Chain;
  return {
    at: node.at.map((n, i) => (i === chain ? n + 1 : n)),
    stands: new Map(node.stands).set(setUp.machine, stood(node.stands.get(setUp.machine) ?? null, setUp)),
    machine: setUp.machine,
    last: chain,
    seconds: node.seconds + seconds,
    from: node,
    step: {
      part,
      step: node.at[chain] as number,
      changes: walks ? ['machine', ...changes] : changes,
      seconds,
    },
  };
}

const isEnd = ({ at }: Node, chains: readonly Chain[]) =>
  at.every((n, i) => n === (chains[i] as Chain).setUps.length);

/** Parts that have something left; the one that was worked on last first, so that equals stay with it. */
function open({ at, last }: Node, chains: readonly Chain[]): readonly number[] {
  const left = chains.flatMap((c, i) => ((at[i] as number) < c.setUps.length ? [i] : []));
  return left.toSorted((a, b) => Number(b === last) - Number(a === last) || a - b);
}

/**
 * Least seconds by Dijkstra's search; null when there are too many states. What waits is ways, which are small: a state is
 * built when its turn comes.
 */
function cheapest(chains: readonly Chain[], costs: Costs): Node | null {
  const queue = new Heap<Edge>();
  const seen = new Set<string>();
  let edges = 0;
  for (let node: Node | null = start(chains); node !== null; node = nextOf(queue, chains, costs)) {
    if (isEnd(node, chains)) return node;
    const key = nameOf(node);
    if (seen.has(key)) continue;
    const ways = open(node, chains);
    edges += ways.length;
    if (seen.size >= MOST_STATES || edges > MOST_EDGES) return null;
    seen.add(key);
    const done = total(node.at) + 1;
    for (const i of ways) {
      const way = edge(node, i, chains, costs);
      queue.push(way, way.seconds, -done);
    }
  }
  return null;
}

function nextOf(queue: Heap<Edge>, chains: readonly Chain[], costs: Costs): Node | null {
  const way = queue.pop();
  return way === undefined ? null : follow(way.from, way.chain, chains, costs);
}

const total = (at: readonly number[]) => at.reduce((a, b) => a + b, 0);

const nameOf = ({ at, stands, machine }: Node): string =>
  `${at.join()} ${machine} ${[...stands.values()].map(setUpName).sort().join('; ')}`;

const setUpName = ({ machine, pieces, stop, setBack, gauge }: SetUp) =>
  `${machine} ${pieces.join('+')} ${stop} ${setBack} ${gauge}`;

/** Always what takes least to change, the same part first. */
function greedy(chains: readonly Chain[], costs: Costs): Node {
  let node = start(chains);
  while (!isEnd(node, chains)) {
    const from = node;
    const ways = open(from, chains).map((i) => edge(from, i, chains, costs));
    const best = ways.reduce((a, b) => (b.seconds < a.seconds - 1e-9 ? b : a));
    node = follow(from, best.chain, chains, costs);
  }
  return node;
}

function stepsTo(node: Node): readonly BatchStep[] {
  const steps: BatchStep[] = [];
  for (let n: Node | null = node; n?.step != null; n = n.from) steps.push(n.step);
  return steps.toReversed();
}
