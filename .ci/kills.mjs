// Runs killed at random moments: kills.mjs FOLDER [ROUNDS] [SEED] [COMMAND ...]. What stands afterwards is the old set or the new one,
// whole; a rack file has not lost sheets to cuts that nobody was told of; the next run clears up and ends as if nothing
// had been.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  watch,
  writeFileSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { ready, root } from './ready.mjs';

const folder = resolve(process.argv[2] ?? '');
const rounds = Number(process.argv[3] ?? 10);
const seed = process.argv[4] ?? '1';
const wanted = process.argv.slice(5);
const at = (...names) => join(folder, ...names);

ready();
mkdirSync(folder, { recursive: true });

/** The same numbers between 0 and 1 for the same seed. */
const random = (name) => createHash('sha256').update(`${seed} ${name}`).digest().readUInt32LE() / 2 ** 32;

/**
 * Runs the command in a folder; killed so many ms after its start, or, with folders to look at, after the first sign of
 * it in one of them.
 */
function tinwright(cwd, argv, kill = null) {
  const start = performance.now();
  const child = spawn(process.execPath, [join(root, 'packages/cli/bin/tinwright.js'), ...argv], { cwd });
  let said = '';
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (chunk) => {
      said += chunk;
    });
  let timer = null;
  const due = () => {
    timer ??= setTimeout(() => child.kill('SIGKILL'), kill.ms);
  };
  if (kill?.signs.length === 0) due();
  const looks = kill?.signs.map((folder) => watch(folder, due)) ?? [];
  return new Promise((done) =>
    child.on('close', (exit, signal) => {
      clearTimeout(timer);
      for (const look of looks) look.close();
      done({ exit, signal, said, ms: performance.now() - start });
    }),
  );
}

/** Files below a folder with their hashes, but those that runs keep for themselves. */
function contents(dir) {
  if (!existsSync(dir)) return [];
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile())
    .map((e) => join(e.parentPath, e.name).slice(dir.length + 1))
    .filter((p) => !p.split('/').some((s) => s.startsWith('.')))
    .map(
      (p) =>
        `${p} ${createHash('sha256')
          .update(readFileSync(join(dir, p)))
          .digest('hex')}`,
    )
    .toSorted();
}
const litter = (dir) => readdirSync(dir, { recursive: true }).filter((p) => /(^|\/)\.[^/]*$/.test(p));
const text = (...names) => readFileSync(at(...names), 'utf8');

const count = { old: 0, new: 0, between: 0 };
const told = (name, round) => {
  if (round % 20 === 0) process.stderr.write(`${name} ${round}: ${JSON.stringify(count)}\n`);
};
/**
 * The moment of a kill. Most of a run is starting up: every third is killed at any time in the latter part of it, the
 * others soon after they have begun to write.
 */
function moment(name, ms, folders) {
  if (random(`${name} how`) < 1 / 3) return { ms: ms * (0.35 + 0.75 * random(name)), signs: [] };
  return { ms: ms * 0.3 * random(name) ** 2, signs: folders.filter((f) => existsSync(f)) };
}

const JOB = `units: mm
stock: { material: galvanised-steel, thickness: 1 }
parts:
  - { name: tray, family: open-box, length: 300, width: 200, height: 50 }
`;
const RACK = `units: mm
sheets:
  - { name: full, material: galvanised-steel, thickness: 1, size: [2000, 1000], count: 5 }
`;

async function shear() {
  mkdirSync(at('start'), { recursive: true });
  writeFileSync(at('start', 'job.yaml'), JOB);
  writeFileSync(at('start', 'rack.yaml'), RACK);
  const argv = ['shear', 'job.yaml', '--rack', 'rack.yaml', '--out', 'out', '--keep-offcuts'];
  assert.equal((await tinwright(at('start'), argv)).exit, 0);
  writeFileSync(at('start', 'job.yaml'), JOB.replace('300', '500'));
  cpSync(at('start'), at('whole'), { recursive: true });
  const whole = await tinwright(at('whole'), argv);
  assert.equal(whole.exit, 0, whole.said);
  const [sets, racks] = [
    ['start', 'whole'].map((n) => contents(at(n, 'out'))),
    ['start', 'whole'].map((n) => text(n, 'rack.yaml')),
  ];
  assert.notDeepEqual(...sets);
  assert.notEqual(...racks);
  for (let round = 0; round < rounds; round++) {
    told('shear', round);
    rmSync(at('killed'), { recursive: true, force: true });
    cpSync(at('start'), at('killed'), { recursive: true });
    await tinwright(at('killed'), argv, moment(`shear ${round}`, whole.ms, [at('killed')]));
    const [set, rack] = [contents(at('killed', 'out')), text('killed', 'rack.yaml')];
    const is = sets.findIndex((s) => JSON.stringify(s) === JSON.stringify(set));
    const cut = racks.indexOf(rack);
    // killed between the two renames nothing stands; the set lies beside and comes back
    const aside = set.length === 0 && litter(at('killed')).some((p) => p.endsWith('tinwright-old'));
    assert.ok(is >= 0 || aside, `round ${round}: a mixed set`);
    assert.ok(cut >= 0, `round ${round}: a mixed rack`);
    assert.ok(cut === 0 || is === 1, `round ${round}: sheets gone for cuts that are not there`);
    count[is !== cut ? 'between' : cut === 0 ? 'old' : 'new'] += 1;
    const again = await tinwright(at('killed'), argv);
    assert.equal(again.exit, 0, again.said);
    assert.deepEqual(litter(at('killed')), [], `round ${round}`);
    if (cut === 0) assert.deepEqual(contents(at('killed', 'out')), sets[1]);
  }
  return whole.ms;
}

async function sizes() {
  mkdirSync(at('sizes'), { recursive: true });
  writeFileSync(at('sizes', 'job.yaml'), JOB);
  const rows = (d) => Array.from({ length: 150 }, (_, i) => `t${i},${200 + i + d}\n`).join('');
  writeFileSync(at('sizes', 'old.csv'), `name,length\n${rows(0)}`);
  writeFileSync(at('sizes', 'new.csv'), `name,length\n${rows(0.5)}`);
  const argv = (table, out) => ['sizes', 'job.yaml', '--table', `${table}.csv`, '--out', out, '--jobs', '2'];
  assert.equal((await tinwright(at('sizes'), argv('old', 'old'))).exit, 0);
  cpSync(at('sizes', 'old'), at('sizes', 'new'), { recursive: true });
  const whole = await tinwright(at('sizes'), argv('new', 'new'));
  assert.equal(whole.exit, 0, whole.said);
  const sets = ['old', 'new'].map((n) => contents(at('sizes', n)));
  const of = (list, name) => JSON.stringify(list.filter((p) => p.startsWith(`${name}/`)));
  for (let round = 0; round < rounds; round++) {
    told('sizes', round);
    rmSync(at('sizes', 'killed'), { recursive: true, force: true });
    cpSync(at('sizes', 'old'), at('sizes', 'killed'), { recursive: true });
    await tinwright(
      at('sizes'),
      argv('new', 'killed'),
      moment(`sizes ${round}`, whole.ms, [at('sizes', 'killed')]),
    );
    const found = contents(at('sizes', 'killed'));
    const beside = litter(at('sizes', 'killed')).filter((p) => p.endsWith('tinwright-old'));
    const names = Array.from({ length: 150 }, (_, i) => `t${i}`);
    for (const name of names.filter((n) => !beside.includes(`.${n}.tinwright-old`)))
      assert.ok(
        sets.some((s) => of(s, name) === of(found, name)),
        `round ${round}: half of ${name}`,
      );
    const fresh = names.filter((n) => of(found, n) === of(sets[1], n)).length;
    count[fresh === 0 ? 'old' : fresh === names.length ? 'new' : 'between'] += 1;
    const again = await tinwright(at('sizes'), argv('new', 'killed'));
    assert.equal(again.exit, 0, again.said);
    assert.deepEqual(contents(at('sizes', 'killed')), sets[1], `round ${round}`);
    assert.deepEqual(litter(at('sizes', 'killed')), [], `round ${round}`);
  }
}

const CARRIER = readFileSync(join(root, 'examples/harvest-carrier.yaml'), 'utf8');
const STRIPS = (leg) => `name: coil
units: mm
material: mild-steel
thickness: 1
insideRadius: 1
strips:
  - { flat: 100, legs: [${leg}, ${leg}], angle: 90 }
`;

/** What each command is run on before and after a change, and where its result stands. */
const COMMANDS = {
  make: { files: { 'job.yaml': [JOB, JOB.replace('300', '500')] }, argv: ['make', 'job.yaml'], out: 'out' },
  packet: {
    files: { 'job.yaml': [JOB, JOB.replace('300', '500')] },
    argv: ['packet', 'job.yaml', '--sections', 'plans'],
    out: 'out/packet.pdf',
  },
  refit: {
    files: { 'job.yaml': [CARRIER, CARRIER], 'size.txt': ['197.6', '197.1'] },
    argv: (is) => ['refit', 'job.yaml', '--measured', `body.insideWidth=${['197.6', '197.1'][is]}`],
    out: 'out',
  },
  strip: {
    files: { 'strips.yaml': [STRIPS(50.885), STRIPS(50.9)], 'out/shop.yaml': ['units: mm\n', null] },
    argv: ['strip', 'fit', '--measured', 'strips.yaml', '--replace', '--shop', 'out/shop.yaml'],
    out: null,
  },
};

/** A command whose set or file is replaced: the old one or the new one stands, and the next run ends well. */
async function replaced(name) {
  const { files, argv, out } = COMMANDS[name];
  const place = (dir, is) => {
    for (const [file, texts] of Object.entries(files)) {
      if (texts[is] === null) continue;
      mkdirSync(dirname(at(name, dir, file)), { recursive: true });
      writeFileSync(at(name, dir, file), texts[is]);
    }
  };
  const run = (dir, is, kill = null) =>
    tinwright(
      at(name, dir),
      [...(typeof argv === 'function' ? argv(is) : argv), ...(out === null ? [] : ['--out', out])],
      kill,
    );
  const stands = (dir) => JSON.stringify(contents(at(name, dir, 'out')));
  place('old', 0);
  mkdirSync(at(name, 'old/out'), { recursive: true });
  if (out === 'out') rmSync(at(name, 'old/out'), { recursive: true });
  const first = await run('old', 0);
  assert.equal(first.exit, 0, first.said);
  const renew = (dir) => {
    rmSync(at(name, dir), { recursive: true, force: true });
    cpSync(at(name, 'old'), at(name, dir), { recursive: true });
    place(dir, 1);
  };
  renew('new');
  const whole = await run('new', 1);
  assert.equal(whole.exit, 0, whole.said);
  const sets = [stands('old'), stands('new')];
  assert.notEqual(...sets);
  for (let round = 0; round < rounds; round++) {
    told(name, round);
    renew('killed');
    await run(
      'killed',
      1,
      moment(`${name} ${round}`, whole.ms, [at(name, 'killed'), at(name, 'killed', 'out')]),
    );
    const is = sets.indexOf(stands('killed'));
    // killed between the two renames nothing stands; the set lies beside and comes back
    const aside =
      stands('killed') === '[]' && litter(at(name, 'killed')).some((p) => p.endsWith('tinwright-old'));
    assert.ok(is >= 0 || aside, `${name} round ${round}: neither the old nor the new`);
    count[aside ? 'between' : is === 0 ? 'old' : 'new'] += 1;
    const again = await run('killed', 1);
    assert.equal(again.exit, 0, again.said);
    assert.equal(stands('killed'), sets[1], `${name} round ${round}`);
    assert.deepEqual(litter(at(name, 'killed')), [], `${name} round ${round}`);
  }
}

const works = {
  shear,
  sizes,
  ...Object.fromEntries(Object.keys(COMMANDS).map((name) => [name, () => replaced(name)])),
};
for (const [name, work] of Object.entries(works)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  Object.assign(count, { old: 0, new: 0, between: 0 });
  await work();
  process.stdout.write(
    `${name}: ${rounds} kills; ${count.old} left all as it was, ${count.new} all done, ${count.between} some of it; each ended well\n`,
  );
}
