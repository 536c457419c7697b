// Density of the 13 classic strip sets against the best known (sources beside the data), mean of the set's density over
// its record, the better of two seeds on two threads. Every strip is held against manifold-3d: no shared area.
// And what it is worth to a shop: parts of the example in seven sizes (nest-shop.mjs).
// --seconds=60 (CPU, a thread), --seed=1, --sets=swim,fu, --moves=60000 (for the shop)
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Module from 'manifold-3d';
import { nestForShop } from './nest-shop.mjs';

const flag = (name, otherwise) =>
  process.argv.find((a) => a.startsWith(`--${name}=`))?.split('=')[1] ?? otherwise;
const DATA = join(process.env.TINWRIGHT_DATA ?? '../shared/data', 'irregular');
const HERE = dirname(fileURLToPath(import.meta.url));

// best density as of 2025, %, noted from a survey; the papers were not read again
const RECORDS = {
  albano: 89.82,
  blaz: 86.23,
  dagli: 90.17,
  fu: 92.41,
  jakobs1: 89.26,
  jakobs2: 87.73,
  mao: 86.87,
  marques: 92.02,
  shapes0: 69.98,
  shapes1: 76.73,
  shirts: 90.92,
  swim: 79.83,
  trousers: 92.62,
};

function lane(file, seconds, seed) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [
      join(HERE, 'nest-strip.mjs'),
      file,
      String(seconds),
      String(seed),
    ]);
    let out = '';
    child.stdout.on('data', (chunk) => {
      out += chunk;
    });
    child.stderr.pipe(process.stderr);
    child.on('close', (code) => (code === 0 ? resolve(JSON.parse(out)) : reject(new Error(`exit ${code}`))));
  });
}

const areaOf = (ring) =>
  ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length];
    return sum + (x * v - u * y) / 2;
  }, 0);

/** Area shared by pieces or beyond the strip, as a share of their area. */
function sharedArea(library, { polygons, length }, height) {
  const sections = polygons.map((p) => new library.CrossSection([p]));
  let shared = 0;
  sections.forEach((a, i) => {
    for (const b of sections.slice(i + 1)) shared += a.intersect(b).area();
  });
  const beyond = polygons.flat().filter(([x, y]) => Math.min(x, y, length - x, height - y) < -1e-5 * height);
  if (beyond.length > 0) throw new Error('a piece reaches beyond the strip');
  for (const s of sections) s.delete();
  return shared / polygons.reduce((sum, p) => sum + areaOf(p), 0);
}

export default async function () {
  const library = await Module();
  library.setup();
  const [seconds, seed] = [Number(flag('seconds', '60')), Number(flag('seed', '1'))];
  const sets = flag('sets', Object.keys(RECORDS).join(',')).split(',');
  const rows = [];
  for (const set of sets) {
    const file = join(DATA, `${set}.json`);
    const { items, stripHeight } = JSON.parse(readFileSync(file, 'utf8'));
    const area = items.reduce((sum, { polygon, quantity }) => sum + quantity * areaOf(polygon), 0);
    const lanes = await Promise.all([lane(file, seconds, 2 * seed - 1), lane(file, seconds, 2 * seed)]);
    const best = lanes.reduce((a, b) => (b.length < a.length ? b : a));
    const shared = sharedArea(library, best, stripHeight);
    if (shared > 1e-4) throw new Error(`${set}: ${shared} of the area lies double`);
    const density = (100 * area) / (stripHeight * best.length);
    const moves = Math.round(lanes.reduce((sum, l) => sum + l.moves / l.seconds, 0) / lanes.length);
    rows.push({ set, density, record: RECORDS[set], share: density / RECORDS[set], moves });
    process.stderr.write(
      `${set} ${density.toFixed(2)} of ${RECORDS[set]}: ${((100 * density) / RECORDS[set]).toFixed(2)} %\n`,
    );
  }
  const mean = (of) => rows.reduce((sum, r) => sum + of(r), 0) / rows.length;
  const worst = rows.reduce((a, b) => (b.share < a.share ? b : a));
  const share = (v) => `${(100 * v).toFixed(2)} %`;
  const lines = rows.map(
    (r) => `${r.set} ${r.density.toFixed(2)} % of ${r.record}: ${share(r.share)}, ${r.moves} moves/s`,
  );
  return {
    ours: mean((r) => r.density),
    peer: mean((r) => r.record),
    peerName: 'the best known',
    unit: '% density',
    n: rows.length,
    detail: [
      `mean ${share(mean((r) => r.share))} of the records, worst ${worst.set} ${share(worst.share)}; ${seconds} CPU s on each of two threads, seeds ${2 * seed - 1} and ${2 * seed}`,
      ...lines,
      nestForShop(Number(flag('moves', '60000'))),
    ].join('\n'),
  };
}
