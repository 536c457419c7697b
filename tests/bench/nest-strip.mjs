// One strip set, one seed, one thread, so many CPU seconds: prints length, density and the pieces as JSON.
// node nest-strip.mjs FILE SECONDS SEED
import { readFileSync } from 'node:fs';
import { packStrip } from '@tinwright/cutting/internal';

const [file, seconds, seed] = process.argv.slice(2);
const { items, stripHeight } = JSON.parse(readFileSync(file, 'utf8'));
const parts = items.map(({ polygon, rotations, quantity }) => ({ polygon, turns: rotations, quantity }));
const cpu = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};
let moves = 0;
const spend = (more) => {
  moves += more;
  return cpu() / Number(seconds);
};
const { length, pieces } = packStrip(parts, stripHeight, { seed: Number(seed), spend, better: () => {} });
process.stdout.write(
  JSON.stringify({ length, moves, seconds: cpu(), polygons: pieces.map((p) => p.polygon) }),
);
