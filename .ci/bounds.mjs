// The dearest commands, each in a process of its own, stay within the memory that is promised for any command:
// bounds.mjs FOLDER [MB] [NAME ...]. Every run is told with its memory and its processor time; one above the bound, or
// with another exit than it should have, fails.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { ready, root } from './ready.mjs';

const [folder, most = '300', ...wanted] = process.argv.slice(2);
const at = (...names) => join(resolve(folder), ...names);
const times = (count, text) => Array.from({ length: count }, (_, i) => text(i)).join('');
const job = (parts, more = '') =>
  `units: mm\nstock: { material: mild-steel, thickness: 1 }\nparts:\n${parts}${more}`;

const sieve = job(`  - name: sieve
    family: divider
    length: 540
    height: 440
    cutouts:
      - { panel: plate, type: round, diameter: 4, columns: { count: 50, pitch: 10 }, rows: { count: 40, pitch: 10 } }
`);
/** A hundred kinds of box, so that no page serves two of them. */
const boxes = job(
  times(
    100,
    (i) =>
      `  - { name: box-${i}, family: open-box, length: ${200 + i}, width: 150, height: ${40 + (i % 7)} }\n`,
  ),
);
/** Carriers that are put together, each of a body and two ends. */
const carriers = (count) =>
  job(
    times(
      count,
      (
        i,
      ) => `  - { name: body-${i}, family: hemmed-channel, length: 400, width: 200, height: 55, hem: { type: closed, length: 15 }, endTabs: { length: 18 } }
  - { name: end-${i}, family: gusset-end, quantity: 2, width: { of: body-${i}.seatWidth, less: 0.4 }, shoulderHeight: 90, height: 200, crownWidth: 60 }
`,
    ),
    `joints:\n${times(count, (i) =>
      ['west', 'east']
        .map(
          (end) =>
            `  - { name: ${end}-${i}, from: body-${i}.${end}, to: end-${i}-${end === 'west' ? 1 : 2}.rim, by: spot-weld }\n`,
        )
        .join(''),
    )}`,
  );
const strip = (legs, angles) =>
  job(`  - { name: strip, family: bent-strip, width: 300, legs: [${legs}], angles: [${angles}] }\n`);
const table = `length,width,height\n${times(1000, (i) => `${100 + (i % 300)},${80 + (i >> 4)},${30 + (i % 20)}\n`)}`;
/** Lines across each other, nearly as long a text as is read. */
const scribble = `<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0${times(400_000, (i) => `L${i % 97} ${i % 89} `)}z"/></svg>`;

/** What each command reads, by file name; what it is given; how it ends. */
const RUNS = {
  'make: sieve of 2,000 holes': [
    { sieve },
    ['make', 'sieve.yaml', '--pictures', '--views', '--out', 'sieve'],
  ],
  'packet: 100 boxes': [{ boxes }, ['packet', 'boxes.yaml', '--out', 'boxes.pdf']],
  'make: pictures of 500 joints': [
    { carriers: carriers(250) },
    ['make', 'carriers.yaml', '--pictures', '--out', 'carriers'],
  ],
  'check: 110,000 wrong legs': [
    {
      wrong: strip(
        times(110_000, () => '-1,'),
        90,
      ),
    },
    ['check', 'wrong.yaml'],
    2,
  ],
  'order: zigzag of 60': [
    {
      zigzag: strip(
        times(61, () => '130,'),
        times(60, (i) => `${i % 2 ? -45 : 45},`),
      ),
    },
    ['order', 'zigzag.yaml'],
  ],
  'check: drawing of 5 MB': [
    {
      drawn: job(`  - name: plate
    family: divider
    length: 200
    height: 200
    cutouts:
      - { panel: plate, type: outline, cut: scribble.svg }
`),
      'scribble.svg': scribble,
    },
    ['check', 'drawn.yaml'],
    2,
  ],
  'sizes: 1,000 boxes': [
    {
      box: job('  - { name: box, family: open-box, length: 200, width: 150, height: 40 }\n'),
      'table.csv': table,
    },
    ['sizes', 'box.yaml', '--table', 'table.csv', '--out', 'sizes'],
  ],
};

/** Runs the command in a folder; what it took is written as it ends, since a parent is not told of one child. */
function run(files, argv) {
  for (const [name, text] of Object.entries(files))
    writeFileSync(at(name.includes('.') ? name : `${name}.yaml`), text);
  const took = at('took.json');
  rmSync(took, { force: true });
  const measure = `import { writeFileSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';
if (isMainThread)
  process.on('exit', () => writeFileSync(${JSON.stringify(took)}, JSON.stringify(process.resourceUsage())));`;
  const child = spawnSync(
    process.execPath,
    [
      '--import',
      `data:text/javascript,${encodeURIComponent(measure)}`,
      join(root, 'packages/cli/bin/tinwright.js'),
      ...argv,
    ],
    { cwd: at(), encoding: 'utf8', maxBuffer: 64e6 },
  );
  const { maxRSS = Infinity, userCPUTime = 0, systemCPUTime = 0 } = readTook(took);
  return {
    ...child,
    megabytes: maxRSS / 1024,
    seconds: (userCPUTime + systemCPUTime) / 1e6,
  };
}
/** Nothing where the process was ended before it could write. */
function readTook(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return {};
  }
}

ready();
mkdirSync(at(), { recursive: true });
let failed = false;
for (const [name, [files, argv, exit = 0]] of Object.entries(RUNS)) {
  if (wanted.length > 0 && !wanted.some((w) => name.includes(w))) continue;
  const { megabytes, seconds, status, signal, stderr } = run(files, argv);
  const ended = status === exit;
  const bad = !ended || megabytes > Number(most);
  failed ||= bad;
  console.log(
    `${bad ? 'FAILED  ' : ''}${name}: ${megabytes.toFixed(0)} MB of ${most}, ${seconds.toFixed(1)} s of processor time`,
  );
  if (!ended) console.log(`ended with ${signal ?? status}, not ${exit}:\n${stderr.slice(-2000)}`);
}
process.exitCode = failed ? 1 : 0;
