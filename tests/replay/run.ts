// Random parts over seven shops, from written files: `plans COUNT SEED` replays every plan; `impossible COUNT SEED` looks for
// an order of those of few bends that the planner says cannot be bent, and of some that can, so that it is seen to find;
// `known [NAME]` those whose answer is known; `agree COUNT SEED` holds checks against orders.
import fc from 'fast-check';
import { manifold } from '../kit/fold-files.js';
import { disagreement } from './agree.js';
import { bodyOf } from './body.js';
import { anyOrder } from './brute/any-order.js';
import { KNOWN } from './known.js';
import { impossible, parts, planned, possible, written } from './parts.js';
import { replay } from './replay.js';
import { SHOPS } from './shops.js';

const MOST_STEPS = 9; // how long a search takes is no matter here
const FEW = 6;

const [kind = 'plans', count = '500', seed = '1'] = process.argv.slice(2);
const wanted = Number(count);
const library = await manifold();
const shops = Object.entries(SHOPS);
const told = { plans: 0, wrong: 0, impossible: 0, confirmed: 0, found: 0, unproved: 0, seconds: 0 };

/** Random parts that can be made, each with its shop, without end. */
function* samples() {
  for (let round = 0; ; round++)
    for (const [i, part] of fc.sample(parts, { seed: Number(seed) * 1000 + round, numRuns: 200 }).entries()) {
      const plan = planned(part);
      const bends = plan?.parts[0]?.flat.bends ?? [];
      const steps = bends.length + bends.filter((b) => b.hem !== null && b.hem !== 'wired').length;
      if (plan === null || steps === 0 || steps > (kind === 'plans' ? MOST_STEPS : FEW)) continue;
      const [name, shop] = shops[i % shops.length] as (typeof shops)[number];
      yield { part, plan, name, shop };
    }
}

const tell = (name: string, part: object, lines: readonly string[]) =>
  process.stdout.write(`${name} ${JSON.stringify(part)}\n${lines.map((l) => `    ${l}\n`).join('')}`);

const start = process.cpuUsage();
const known = KNOWN.filter((k) => process.argv[3] === undefined || k.name.includes(count));
for (const { name, part, shop, goes } of kind === 'known' ? known : []) {
  const plan = planned(part);
  if (plan === null) throw new Error(`no ${name}`);
  const none = impossible(plan, shop);
  const { part: read, dxf } = written(plan, none === false ? shop : null);
  const given = { body: bodyOf(library, read, dxf), shop, material: read.material, library };
  const lines = none === false ? replay(given, read.sequence.operations) : (anyOrder(given) ?? []);
  const right = goes === (none === false) && lines.length === 0;
  told[none === false ? 'plans' : 'impossible'] += 1;
  if (right) continue;
  told.wrong += 1;
  tell(name, part, [goes ? 'goes' : 'cannot go', ...lines]);
}
for (const { part, plan, name, shop } of kind === 'known' ? [] : samples()) {
  if (kind === 'agree') {
    if (told.plans >= wanted) break;
    told.plans += 1;
    const lines = disagreement(plan, shop);
    if (lines.length === 0) continue;
    told.wrong += 1;
    tell(name, part, lines);
    continue;
  }
  if ((kind === 'plans' ? told.plans : told.impossible) >= wanted) break;
  const none = kind === 'plans' ? !possible(plan, shop) : impossible(plan, shop);
  if (none === 'unproved') told.unproved += 1;
  else if (none) told.impossible += 1;
  else told.plans += 1;
  if (kind === 'plans') {
    if (none !== false) continue;
    const { part: read, dxf } = written(plan, shop);
    const body = bodyOf(library, read, dxf);
    const flaws = replay({ body, shop, material: read.material, library }, read.sequence.operations);
    if (flaws.length === 0) continue;
    told.wrong += 1;
    tell(name, part, flaws);
    continue;
  }
  if (none === 'unproved' || (none === false && told.plans > wanted / 4)) continue;
  const { part: read, dxf } = written(plan, null);
  const order = anyOrder({ body: bodyOf(library, read, dxf), shop, material: read.material, library });
  if (none === false) told.found += order === null ? 0 : 1;
  else if (order === null) told.confirmed += 1;
  else {
    told.wrong += 1;
    tell(name, part, order);
  }
}
told.seconds = process.cpuUsage(start).user / 1e6;
process.stdout.write(`${JSON.stringify(told)}\n`);
process.exitCode = told.wrong === 0 ? 0 : 1;
