// npm run --silent bench -- <name> [--json]: one measurement of ours against a peer, both in the same run.
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const names = readdirSync(here)
  .filter((f) => f.endsWith('.bench.mjs'))
  .map((f) => f.replace('.bench.mjs', ''));
const [name] = process.argv.slice(2).filter((a) => !a.startsWith('--'));
if (name === undefined || !names.includes(name)) {
  process.stderr.write(
    `bench: ${name === undefined ? 'no name' : `"${name}"`} given. Known: ${names.join(', ')}\n`,
  );
  process.exit(2);
}
const { default: run } = await import(pathToFileURL(join(here, `${name}.bench.mjs`)).href);
const { ours, peer, peerName, unit, n, detail } = await run();
const result = { name, ours, peer, peerName, ratio: peer / ours, unit, n, detail };
if (process.argv.includes('--json')) process.stdout.write(`${JSON.stringify(result)}\n`);
else
  process.stdout.write(
    `${name}: ours ${ours.toPrecision(3)} ${unit}, ${peerName} ${peer.toPrecision(3)} ${unit}, ratio ${result.ratio.toPrecision(3)} (n = ${n})\n${detail}\n`,
  );
