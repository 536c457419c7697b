// npm run coverage -- --of core/fold,core/joining,cutting,files: lines of sources that no test of their packages runs,
// as V8 counts them.
import { mkdirSync, readFileSync } from 'node:fs';
import { Session } from 'node:inspector/promises';
import { SourceMap } from 'node:module';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { ready, root } from '../../.ci/ready.mjs';
import { buildTests, sourcesIn, testsOf } from './build.mjs';

const { values } = parseArgs({
  options: {
    of: { type: 'string', default: 'core/fold,core/bending,core/joining,core/plane,cutting,files' },
    tests: { type: 'string', default: 'core,cutting,files' },
    lines: { type: 'boolean', default: false },
  },
});

ready();
mkdirSync(join(root, 'out'), { recursive: true });
const file = join(root, 'out/coverage.mjs');
const tests = [...testsOf(root, values.tests.split(',')), join(root, 'tests/families.test.ts')];
await buildTests({ root, tests, sourcemap: true }, file);

const session = new Session();
session.connect();
await session.post('Profiler.enable');
await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
globalThis.$mutant = () => false;
const program = await import(pathToFileURL(file).href);
for (const load of program.loaders) await load();
for (const work of program.before) await work();
let failed = 0;
for (const { name, work } of program.collected)
  try {
    await work();
  } catch (error) {
    failed += 1;
    process.stdout.write(`fails: ${name}: ${String(error).slice(0, 160)}\n`);
  }
const { result } = await session.post('Profiler.takePreciseCoverage');
session.disconnect();

const text = readFileSync(file, 'utf8');
/** For every character of the program whether it ran: inner ranges stand after the outer ones that hold them. */
const ran = new Uint8Array(text.length).fill(1);
const { functions } = result.find((r) => r.url === pathToFileURL(file).href);
for (const { ranges } of functions)
  for (const { startOffset, endOffset, count } of ranges) ran.fill(count > 0 ? 1 : 0, startOffset, endOffset);

const map = new SourceMap(JSON.parse(readFileSync(`${file}.map`, 'utf8')));
/** Lines by source: true where something of it ran, false where nothing did. */
const lines = new Map();
let offset = 0;
text.split('\n').forEach((line, row) => {
  for (let column = 0; column < line.length; column++) {
    if (!/[A-Za-z0-9_$]/.test(line[column])) continue;
    const { originalSource, originalLine } = map.findEntry(row, column);
    if (originalSource === undefined) continue;
    const path = join(root, 'out', originalSource);
    const of = lines.get(path) ?? new Map();
    lines.set(
      path,
      of.set(originalLine + 1, (of.get(originalLine + 1) ?? false) || ran[offset + column] === 1),
    );
    while (/[A-Za-z0-9_$]/.test(line[column + 1] ?? '')) column++;
  }
  offset += line.length + 1;
});

for (const place of values.of.split(',')) {
  const [name, ...room] = place.split('/');
  const sources = sourcesIn(join(root, 'packages', name, 'src', ...room));
  let [all, hit] = [0, 0];
  for (const path of sources) {
    const of = [...(lines.get(path) ?? [])];
    all += of.length;
    hit += of.filter(([, there]) => there).length;
    const missing = of.filter(([, there]) => !there).map(([n]) => n);
    if (!values.lines || missing.length === 0) continue;
    const source = readFileSync(path, 'utf8').split('\n');
    for (const n of missing.toSorted((a, b) => a - b))
      process.stdout.write(`${relative(root, path)}:${n} ${source[n - 1]?.trim()}\n`);
  }
  process.stdout.write(`${place}: ${hit} of ${all} lines, ${((100 * hit) / all).toFixed(2)} %\n`);
}
process.stdout.write(`${program.collected.length} tests, ${failed} of them fail here\n`);
