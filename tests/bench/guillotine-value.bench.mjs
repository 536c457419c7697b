// Greatest value cut from one sheet: gcut1-13 with any number of each piece, as drawn and with quarter turns, cgcut1-3 and
// ngcut1-12 with limited numbers; against the published optima (../packages/cutting/test/shear/value/records.test.ts).
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { limitedValue, unlimitedValue } from '@tinwright/cutting/internal';

const DATA = process.env.TINWRIGHT_DATA ?? '../shared/data';
const rows = (folder, name) =>
  readFileSync(join(DATA, folder, `${name}.csv`), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((l) => l.trim().split(','));
const sheetsIn = (folder) =>
  new Map(rows(folder, 'sheets').map(([name, x, y]) => [name, { x: Number(x), y: Number(y) }]));
const itemsIn = (folder, name) =>
  rows(folder, name).map(([w, h, count, value]) => ({
    w: Number(w),
    h: Number(h),
    count: Number(count),
    value: Number(value),
  }));

export default function run() {
  const start = process.cpuUsage().user;
  const results = [];
  const gcut = sheetsIn('rect-gcut');
  for (const [name, fixed, turned] of rows('rect-gcut', 'best')) {
    const items = itemsIn('rect-gcut', name);
    const both = [...items, ...items.map(({ w, h, value }) => ({ w: h, h: w, value }))];
    results.push([`${name} drawn`, unlimitedValue(gcut.get(name), items).best.at(-1), Number(fixed)]);
    results.push([`${name} turned`, unlimitedValue(gcut.get(name), both).best.at(-1), Number(turned)]);
  }
  const limited = sheetsIn('rect-ngcut-cgcut');
  for (const [name, best] of rows('rect-ngcut-cgcut', 'best')) {
    const found = limitedValue(limited.get(name), itemsIn('rect-ngcut-cgcut', name));
    results.push([name, found.proved ? found.block?.value : 0, Number(best)]);
  }
  const sum = (k) => results.reduce((t, r) => t + r[k], 0);
  return {
    ours: sum(1),
    peer: sum(2),
    peerName: 'published optima',
    unit: 'value',
    n: results.length,
    detail: JSON.stringify({ cpuSeconds: (process.cpuUsage().user - start) / 1e6, results }),
  };
}
