// Fewest sheets for the 500 CLASS instances (Berkey & Wang 1987, Martello & Vigo 1998), guillotine cuts, as drawn and
// with quarter turns, against the lower bounds beside the data. CPU seconds an instance, one thread.
// --fast: 50 of them, one a class and size, drawn by a seed. --way=drawn|turned, --seconds=1, --seed=1
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { planShear, SHEAR_EFFORT } from '@tinwright/cutting';
import { lowerBound, pack } from '@tinwright/cutting/internal';
import { loadCoverSolver } from '../../packages/cli/dist/stock/cover-solver.js';

const flag = (name, otherwise) =>
  process.argv.find((a) => a.startsWith(`--${name}=`))?.split('=')[1] ?? otherwise;
const DATA = join(process.env.TINWRIGHT_DATA ?? '../shared/data', 'rect-class');
const cpu = () => process.cpuUsage().user / 1e6;

const problemOf = ({ sheet: [x, y], items }, way) => {
  const ways = Uint8Array.from(items, ([w, h]) =>
    way === 'drawn' ? 1 : (w <= x && h <= y ? 1 : 0) | (w !== h && h <= x && w <= y ? 2 : 0),
  );
  const bin = { x, y, cutX: x, cutY: y, cost: 1, count: items.length, ways };
  return { items: items.map(([w, h]) => ({ w, h })), bins: [bin] };
};

function random(seed) {
  let s = seed;
  return () => {
    s = (Math.imul(s, 1664525) + 1013904223) >>> 0;
    return s / 2 ** 32;
  };
}

/** One instance of each class and size. */
function chosen(instances, seed) {
  const next = random(seed);
  const groups = Map.groupBy?.(instances, (i) => `${i.class} ${i.n}`) ?? grouped(instances);
  return [...groups.values()].map((g) => g[Math.floor(next() * g.length)]);
}

function grouped(instances) {
  const groups = new Map();
  for (const i of instances) {
    const key = `${i.class} ${i.n}`;
    groups.set(key, [...(groups.get(key) ?? []), i]);
  }
  return groups;
}

/** Parts by sheet and item number that stand where a replay of the layout puts them. @throws Error for a wrong plan */
function checked(problem, sheets) {
  const seen = new Set();
  const sizeOf = (layout) => {
    if ('item' in layout) {
      if (layout.item >= 0 && seen.has(layout.item)) throw new Error(`item ${layout.item} twice`);
      if (layout.item >= 0) seen.add(layout.item);
      return [layout.w, layout.h];
    }
    const sizes = layout.children.map(sizeOf);
    const [sum, most] = [
      (k) => sizes.reduce((t, s) => t + s[k], 0),
      (k) => Math.max(...sizes.map((s) => s[k])),
    ];
    return layout.kind === 'row' ? [sum(0), most(1)] : [most(0), sum(1)];
  };
  const [{ x, y }] = problem.bins;
  for (const { layout } of sheets) {
    const [w, h] = sizeOf(layout);
    if (w > x + 1e-6 || h > y + 1e-6) throw new Error(`${w} x ${h} on a sheet of ${x} x ${y}`);
  }
  if (seen.size !== problem.items.length) throw new Error('items are missing');
}

const NO_POLISH = { least: { x: 0, y: 0 }, work: () => 0 };

function solved(problem, bound, seconds, seed) {
  const start = cpu();
  const found = pack(problem, {
    ...NO_POLISH,
    seed,
    bound,
    steps: { sheets: Number.POSITIVE_INFINITY, offcut: 0, neat: 0 },
    enough: () => cpu() - start >= seconds,
  });
  checked(problem, found.sheets);
  return { sheets: found.cost, steps: found.steps, time: cpu() - start };
}

/** 1,000 parts of random sizes on 2 x 1 m: time to a plan, steps a second. */
function thousand() {
  const next = random(7);
  const items = Array.from({ length: 1000 }, () => [
    40 + Math.floor(next() * 560),
    40 + Math.floor(next() * 360),
  ]);
  const problem = problemOf({ sheet: [2000, 1000], items }, 'turned');
  const first = [1, 2, 3].map(() => solved(problem, 0, 0, 1));
  const { sheets, steps, time } = solved(problem, 0, 5, 1);
  return {
    firstSeconds: Math.min(...first.map((f) => f.time)),
    firstSheets: first[0].sheets,
    sheets,
    stepsPerSecond: steps / time,
    bound: lowerBound(problem),
  };
}

const TRIM = { west: 0, east: 0, south: 0, north: 0 };
const FULL = { name: 'full', material: 'mild-steel', thickness: 1, x: 2000, y: 1000 };
const SHEET = { ...FULL, count: Number.POSITIVE_INFINITY, price: null, grain: null, trim: TRIM };

/** Orders of several kinds in tens on 2 x 1 m: sheets by ruin and recreate alone, with a linear programme, and the bound. */
async function orders() {
  const cover = await loadCoverSolver();
  const next = random(1);
  const size = (from, to) => Math.round((from + next() * (to - from)) * 10) / 10;
  const rack = {
    kerf: 0,
    leastOffcut: { x: 100, y: 100 },
    sheets: [{ ...SHEET, origin: 'sheet', outline: null }],
  };
  const made = [8, 8, 12, 12, 20, 20].map((kinds) => {
    const blanks = Array.from({ length: kinds }, (_, i) => {
      const quantity = 20 + Math.floor(next() * 30);
      return { ...FULL, part: `kind-${i}`, x: size(250, 700), y: size(180, 480), quantity, grain: null };
    });
    const steps = { ...SHEAR_EFFORT.steps, offcut: 0, neat: 0 };
    const plan = (more) => {
      const start = cpu();
      const [p] = planShear(blanks, rack, { length: 3000, stop: 3000 }, { ...SHEAR_EFFORT, steps, ...more });
      return { sheets: p.sheets.length, bound: p.bound, seconds: cpu() - start };
    };
    return {
      kinds,
      pieces: blanks.reduce((t, b) => t + b.quantity, 0),
      alone: plan({}),
      led: plan({ cover }),
    };
  });
  const total = (of) => made.reduce((t, o) => t + of(o), 0);
  return {
    made,
    alone: total((o) => o.alone.sheets),
    led: total((o) => o.led.sheets),
    bound: total((o) => o.led.bound),
  };
}

export default async function run() {
  const fast = process.argv.includes('--fast');
  const [seconds, seed] = [Number(flag('seconds', '1')), Number(flag('seed', '1'))];
  const ways = flag('way', 'drawn,turned').split(',');
  const all = readFileSync(join(DATA, 'class.jsonl'), 'utf8')
    .trim()
    .split('\n')
    .map((l) => JSON.parse(l));
  const bounds = new Map(
    readFileSync(join(DATA, 'bounds.csv'), 'utf8')
      .trim()
      .split('\n')
      .slice(1)
      .map((l) => {
        const [name, , drawn, turned] = l.split(',');
        return [name, { drawn: Number(drawn), turned: Number(turned) }];
      }),
  );
  const instances = fast ? chosen(all, 20261129) : all;
  const totals = ways.map((way) => {
    const perClass = {};
    const total = { way, sheets: 0, bound: 0, steps: 0, cpuSeconds: 0, atBound: 0 };
    for (const instance of instances) {
      const bound = bounds.get(instance.name)[way];
      const found = solved(problemOf(instance, way), bound, seconds, seed);
      if (found.sheets < bound)
        throw new Error(`${instance.name}: ${found.sheets} sheets, below the bound ${bound}`);
      perClass[instance.class] = (perClass[instance.class] ?? 0) + found.sheets;
      total.sheets += found.sheets;
      total.bound += bound;
      total.steps += found.steps;
      total.cpuSeconds += found.time;
      if (found.sheets === bound) total.atBound += 1;
    }
    return { ...total, perClass };
  });
  const sum = (key) => totals.reduce((t, r) => t + r[key], 0);
  return {
    ours: sum('sheets'),
    peer: sum('bound'),
    peerName: 'lower bounds by dual feasible functions',
    unit: 'sheets',
    n: instances.length * totals.length,
    detail: JSON.stringify({ seconds, seed, totals, thousand: thousand(), orders: await orders() }),
  };
}
