// Makes every example under every bending rule that compensates, in both DXF forms: examples.mjs FOLDER.
// Every job is also made with its sizes written in the other unit, and checked in the default shop. The bin that is too
// deep on purpose is left out.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parse } from 'yaml';
import { ready, root } from './ready.mjs';

ready();
const [folder] = process.argv.slice(2);
const { main } = await import(pathToFileURL(join(root, 'packages/cli/dist/index.js')).href);
const RULES = [
  { rule: 'k-factor' },
  { rule: 'din-6935' },
  { rule: 'handbook', group: 'soft' },
  { rule: 'handbook', group: 'medium' },
  { rule: 'handbook', group: 'hard' },
  { rule: 'linear', perRadius: 0.5, perThickness: 1.5 },
];

/** The same job in the other unit: numbers converted, texts given the unit they were in. */
function converted(value, from, key = '') {
  if (typeof value === 'number') {
    if (/^(angle|quantity|count|columns|rows|gauge|k$|per)/.test(key)) return value;
    return from === 'mm' ? value / 25.4 : value * 25.4;
  }
  if (typeof value === 'string' && /^[\d ./-]+$/.test(value)) return `${value} ${from}`;
  if (Array.isArray(value)) return value.map((v) => converted(v, from, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, converted(v, from, k)]));
}

const jobs = readdirSync(join(root, 'examples')).filter(
  (f) => /(?<!-shop)\.yaml$/.test(f) && f !== 'deep-bin.yaml',
);
const quiet = { out: () => undefined, err: (text) => process.stderr.write(text), colour: false };
for (const file of jobs) {
  const check = ['check', join(root, 'examples', file), '--shop', 'default'];
  if ((await main([...check, '--with', join(root, 'examples/row-marker.mjs')], quiet)) !== 0)
    throw new Error(`${file} cannot be made in the default shop`);
  const job = parse(readFileSync(join(root, 'examples', file), 'utf8'));
  const other = { ...converted(job, job.units), units: job.units === 'mm' ? 'in' : 'mm' };
  for (const [i, rule] of RULES.entries())
    for (const [data, dxf] of [
      [job, 'r2000'],
      [other, 'r12'],
    ]) {
      const bent = { ...data, bending: { ...rule, insideRadius: data.bending?.insideRadius ?? '1 mm' } };
      const out = join(folder, `${file.replace('.yaml', '')}-${i}-${data.units}-${dxf}`);
      const host = { ...quiet, stdin: async () => Buffer.from(JSON.stringify(bent)) };
      const args = ['make', '-', '--out', out, '--dxf', dxf, '--with', join(root, 'examples/row-marker.mjs')];
      if ((await main(args, host)) !== 0) throw new Error(`${file} under ${rule.rule} failed`);
    }
}
