// Bend orders of forty generated parts on a leaf brake and a press brake, against an exact search over all sets of steps
// that keeps every state it meets and knows no bound; and of parts a setter knows on a leaf brake, by themselves.
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { DEFAULT_SHOP, planSequence, verifySequence } from '@tinwright/shop';
import { partToBend } from '../../packages/shop/dist/sequence/answer/planned-sequence.js';
import { problemOf } from '../../packages/shop/dist/sequence/search/problem.js';
import { START, successors } from '../../packages/shop/dist/sequence/search/states.js';
import { bendParts } from '../kit/bend-parts.mjs';
import { processorTime } from './measure.mjs';
import { CASES } from './sequence-cases.mjs';

const EXACT = 20; // steps up to which a plan has to be proved
const MOST_STATES = 5000; // of the peer, by part: some minutes of processor time in all

const rise = (half) => half / Math.tan((85 * Math.PI) / 360);
const PRESS = {
  name: 'press brake',
  length: 1500,
  force: 400,
  punches: [
    {
      name: 'straight',
      angle: 85,
      radius: 0.8,
      lengths: [10, 15, 20, 25, 30, 40, 50, 100, 100, 200, 200, 300],
      section: [
        [0, 0],
        [10, rise(10)],
        [10, 150],
        [-10, 150],
        [-10, rise(10)],
      ],
    },
  ],
  dies: [
    {
      name: 'V8',
      sectioned: true,
      opening: 8,
      angle: 85,
      section: [
        [-8, 0],
        [-4, 0],
        [0, -rise(4)],
        [4, 0],
        [8, 0],
        [8, -80],
        [-8, -80],
      ],
    },
  ],
  ram: { half: 25, height: 150 },
  backGauge: { least: 8, most: 600 },
  gaps: { end: 5, inner: 2 },
  overbend: 3,
};
const SHOP = { ...DEFAULT_SHOP, brake: { ...DEFAULT_SHOP.brake, length: 2000 }, press: PRESS, vise: null };

export default async function run() {
  const parts = bendParts();
  planSequence(parts[0], SHOP); // warm
  const all = parts.map((part) => {
    const [plan, ms] = timed(() => planSequence(part, SHOP));
    if (plan.status === 'infeasible') return { part, plan, ms, steps: 0 };
    const flaws = verifySequence(part.flat, plan.steps, SHOP);
    if (flaws.length > 0) throw new Error(`${part.name}: ${flaws[0].message}`);
    return { part, plan, ms, steps: plan.steps.length };
  });
  const rows = all.filter((r) => r.steps > 0);
  const none = all
    .filter((r) => r.steps === 0)
    .map((r) => `${r.part.name} (${r.plan.proved ? 'proved' : 'not proved'})`);
  const small = rows.filter((r) => problemOf(partToBend(r.part), SHOP).work.steps.length <= EXACT);
  const unproved = small.filter((r) => !r.plan.proved);
  const worst = small.reduce((a, b) => (b.ms > a.ms ? b : a));
  const peers = small.map((r) => {
    const [found, ms] = timed(() => subsetSearch(problemOf(partToBend(r.part), SHOP)));
    if (found.done && Math.abs(found.cost - r.plan.seconds) > 1e-6)
      throw new Error(`${r.part.name}: the searches do not agree`);
    return { ...found, ms };
  });
  const slowest = Math.max(...peers.map((p) => p.ms));
  const unfinished = peers.filter((p) => !p.done).length;
  const large = rows.filter((r) => !small.includes(r));
  const told = large
    .map((r) => `${r.steps} strokes ${(r.ms / 1000).toFixed(1)} s gap ${(100 * r.plan.gap).toFixed(0)} %`)
    .join(', ');
  const cases = Object.keys(CASES).map(planned);
  const flawed = cases.find((c) => c.flaws > 0);
  if (flawed !== undefined) throw new Error(`${flawed.name}: its plan does not replay`);
  const known = cases.map(
    (c) =>
      `${c.name} ${c.status === 'optimal' ? 'proved' : `${c.status}, gap ${(100 * c.gap).toFixed(0)} %`}, ${(c.cpu / 1000).toFixed(1)} s, ${c.megabytes.toFixed(0)} MB`,
  );
  return {
    ours: worst.ms,
    peer: slowest,
    peerName: `exact search over sets of steps, up to ${MOST_STATES} states a part: ${unfinished} of ${small.length} parts not finished`,
    unit: 'ms',
    n: rows.length,
    detail: `${small.length} parts of up to ${EXACT} steps, ${unproved.length} of them not proved, ${worst.part.name} the slowest; every plan replayed; no order for ${none.join(', ') || 'none'}; beyond: ${told}. Known parts, processor time and memory of a process of their own: ${known.join('; ')}`,
  };
}

const caseFile = fileURLToPath(new URL('sequence-cases.mjs', import.meta.url));

/** A known part in a process of its own. */
const planned = (name) => JSON.parse(execFileSync(process.execPath, [caseFile, name], { encoding: 'utf8' }));

/** Cheapest plan by one layer of states after another: every set of steps with every position it can end in. */
function subsetSearch(problem) {
  const { all } = problem.work;
  let layer = [START];
  let best = Infinity;
  let states = 0;
  while (layer.length > 0) {
    layer = layerAfter(problem, layer);
    for (const s of layer)
      if (s.done.low === all.low && s.done.high === all.high) best = Math.min(best, s.cost);
    states += layer.length;
    if (states > MOST_STATES) return { done: false, cost: Infinity };
  }
  return { done: true, cost: best };
}

function layerAfter(problem, layer) {
  const next = new Map();
  for (const node of layer)
    for (const s of successors(problem, node)) {
      if (problem.contact(s.move.mounting.operation, node.done) !== null) continue;
      const key = `${s.done.low} ${s.done.high} ${s.at.id}`;
      if ((next.get(key)?.cost ?? Infinity) > s.cost) next.set(key, s);
    }
  return [...next.values()];
}

function timed(work) {
  const start = processorTime();
  const result = work();
  return [result, processorTime() - start];
}
