// Bend orders of forty generated parts on a leaf brake and a press brake, and of parts a setter knows on a leaf brake: a
// line a part with its plan, proof or gap, states, processor time and memory. The small ones also by an exact search over
// all sets of steps that keeps every state it meets and knows no bound. A few minutes in all; all of it processor time.
// --seed=20240 (of the generated parts), --seconds=20 (a part), --parts=part-1,comb 12
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { namesFor } from './sequence-cases.mjs';

const EXACT = 20; // steps up to which a plan has to be proved
const PEER = { steps: 9, states: 8000, seconds: 6 }; // what the exact search is tried with, by part

const flag = (name, otherwise) =>
  process.argv.find((a) => a.startsWith(`--${name}=`))?.split('=')[1] ?? otherwise;
const [seed, seconds] = [Number(flag('seed', '20240')), Number(flag('seconds', '20'))];
const file = fileURLToPath(new URL('sequence-part.mjs', import.meta.url));

export default async function run() {
  const names = flag('parts', namesFor(seed).join(',')).split(',');
  process.stderr.write(
    '| part | bends | plan | first, s | states | CPU, s | MB |\n|---|---|---|---|---|---|---|\n',
  );
  const rows = names.map(planned);
  const small = rows.filter((r) => r.steps <= EXACT && r.is !== 'none');
  const large = rows.filter((r) => r.steps > EXACT);
  const peers = rows.filter((r) => r.peer !== null);
  const finished = peers.filter((r) => r.peer.done);
  const total = rows.reduce((sum, r) => sum + r.cpu + (r.peer?.cpu ?? 0) / 1000, 0);
  const open = small.filter((r) => r.is !== 'proved').map((r) => r.name);
  const late = small
    .filter((r) => r.is === 'proved' && r.cpu > 1)
    .map((r) => `${r.name} ${r.cpu.toFixed(1)} s`);
  const slow = large.filter((r) => r.first > 2).map((r) => `${r.name} ${r.first.toFixed(1)} s`);
  const wide = large
    .filter((r) => (r.gapEarly ?? r.gap) > 0.1)
    .map((r) => `${r.name} ${percent(r.gapEarly ?? r.gap)}`);
  const list = (items) => (items.length === 0 ? 'none' : items.join(', '));
  return {
    ours: Math.max(...finished.map((r) => 1000 * r.cpu)),
    peer: Math.max(...finished.map((r) => r.peer.cpu)),
    peerName: `exact search over sets of steps, the ${finished.length} of ${peers.length} parts of up to ${PEER.steps} steps that it came to an end with`,
    unit: 'ms',
    n: rows.length,
    detail: [
      `${small.length} parts of up to ${EXACT} steps: not proved ${list(open)}; proved, but in more than 1 s: ${list(late)}`,
      `${large.length} beyond: first plan after more than 2 s: ${list(slow)}; gap over 10 % after 10 s: ${list(wide)}`,
      `every plan that was found to the end verified, and as cheap as the exact search's; left out: the exact search of more than ${PEER.steps} steps, ${PEER.states} states or ${PEER.seconds} s, and what comes after ${seconds} s a part; seed ${seed}; ${total.toFixed(0)} s in all without starting processes`,
    ].join('\n'),
  };
}

/** A part in a process of its own; its line is told at once. */
function planned(name) {
  const given = [name, seed, seconds, PEER.steps, PEER.states, PEER.seconds].map(String);
  const row = JSON.parse(execFileSync(process.execPath, [file, ...given], { encoding: 'utf8' }));
  if (row.flaws > 0) throw new Error(`${name}: its plan does not replay`);
  const { peer } = row;
  if (peer?.done && row.is === 'proved' && Math.abs(peer.cost - row.seconds) > 1e-6)
    throw new Error(`${name}: ${row.seconds} s found, ${peer.cost} s by the exact search`);
  const plan = row.is === 'gap' || row.is === 'stopped' ? `${row.is}, ${gapTold(row)}` : row.is;
  const cells = [
    name,
    row.steps,
    plan,
    row.first?.toFixed(1) ?? '',
    row.states ?? '',
    row.cpu.toFixed(1),
    row.megabytes.toFixed(0),
  ];
  process.stderr.write(`| ${cells.join(' | ')} |\n`);
  return row;
}

const percent = (share) => `${(100 * share).toFixed(0)} %`;

const gapTold = ({ gap, gapEarly }) =>
  gap === null
    ? 'no plan'
    : gapEarly === null
      ? percent(gap)
      : `${percent(gapEarly)} at 10 s, ${percent(gap)} in the end`;
