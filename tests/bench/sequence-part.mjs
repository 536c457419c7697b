// One part of `bench sequence` in a process of its own, so that its time and memory are its own:
// node sequence-part.mjs NAME SEED SECONDS PEER-STEPS PEER-STATES PEER-SECONDS
import { verifySequence } from '@tinwright/shop';
import { partToBend, plannedSequence } from '../../packages/shop/dist/sequence/answer/planned-sequence.js';
import { planSearch } from '../../packages/shop/dist/sequence/search/find-plan.js';
import { problemOf } from '../../packages/shop/dist/sequence/search/problem.js';
import { openWays, START, stepTo } from '../../packages/shop/dist/sequence/search/states.js';
import { processorTime } from './measure.mjs';
import { caseFor } from './sequence-cases.mjs';

const GOAL = 10; // s after which the gap is read
const ASK = 100; // ms between two looks at the time

const [name, seed, limit, peerSteps, peerStates, peerLimit] = process.argv
  .slice(2)
  .map((a, i) => (i === 0 ? a : Number(a)));
const { part, shop } = caseFor(name, seed);
const start = processorTime();
const since = () => (processorTime() - start) / 1000;
const problem = problemOf(partToBend(part), shop);
const steps = problem.work.steps.length;
const found = searched(limit);
const cpu = since();
const megabytes = process.resourceUsage().maxRSS / 1024;
const plan = found.end?.moves ? plannedSequence(problem, part, shop, found.end) : null;
const flaws = plan === null ? 0 : verifySequence(part.flat, plan.steps, shop).length;
const peer = steps > peerSteps ? null : subsetSearch(problemOf(partToBend(part), shop));
process.stdout.write(
  JSON.stringify({ name, steps, ...told(), kept: found.end?.toolsKept ?? null, cpu, megabytes, flaws, peer }),
);

/** How it went: `proved`, `none` (there is no order), `gap` at its own end, or `stopped` by the limit. */
function told() {
  const { end, first, early, last } = found;
  const gap = ({ cost, bound }) => (cost === Infinity ? null : Math.max(0, (cost - bound) / cost));
  const is = end === null ? 'stopped' : ended(end);
  return {
    is,
    seconds: plan?.seconds ?? null,
    first,
    gap: is === 'proved' ? 0 : gap(end ?? last),
    gapEarly: early === null ? null : gap(early),
    states: end?.expanded ?? null,
  };
}

function ended({ moves, bound, cost }) {
  if (moves === null) return bound === Infinity ? 'none' : 'not found';
  return cost - bound < 1e-6 ? 'proved' : 'gap';
}

/** The search to its end or up to so many seconds, with when it had a plan and how far it was by the goal. */
function searched(most) {
  const search = planSearch(problem);
  let [first, early, last] = [null, null, { cost: Infinity, bound: 0 }];
  let asked = 0;
  for (;;) {
    const { done, value } = search.next();
    if (done) return { end: value, first: first ?? (value.moves === null ? null : since()), early, last };
    last = value;
    // asking for processor time takes some itself
    if (!(first === null && value.cost < Infinity) && performance.now() - asked < ASK) continue;
    asked = performance.now();
    if (first === null && value.cost < Infinity) first = since();
    if (early === null && since() >= GOAL) early = value;
    if (since() >= most) return { end: null, first, early, last };
  }
}

/** Cheapest plan by one layer of states after another: every set of steps with every position it can end in. */
function subsetSearch(free) {
  const from = processorTime();
  const { all } = free.work;
  const spent = () => processorTime() - from;
  let layer = [START];
  let [cost, states] = [Infinity, 0];
  const told = (done) => ({ done, cost: cost === Infinity ? null : cost, states, cpu: spent() });
  while (layer.length > 0) {
    const next = new Map();
    for (const node of layer) {
      states += 1;
      if (states > peerStates || spent() > 1000 * peerLimit) return told(false);
      addFollowers(free, node, next);
    }
    layer = [...next.values()];
    const ends = layer.filter((s) => s.done.low === all.low && s.done.high === all.high);
    cost = Math.min(cost, ...ends.map((s) => s.cost));
  }
  return told(true);
}

function addFollowers(free, node, states) {
  for (const way of openWays(free, node)) {
    const s = stepTo(free, node, way);
    if (s === null || free.contact(s.move.mounting.operation, node.done) !== null) continue;
    const key = `${s.done.low} ${s.done.high} ${s.at.id}`;
    if ((states.get(key)?.cost ?? Infinity) > s.cost) states.set(key, s);
  }
}
