// A thousand sizes made three ways: sizes.mjs FOLDER. By threads, by shards that are merged, and by workers at a queue,
// of which one is killed half-way and whose Redis is started anew: the same bytes each time. Needs redis-server.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { ready, root } from './ready.mjs';

const COUNT = 1000;
const LONG = 300_000; // rows
const folder = resolve(process.argv[2] ?? '');
const at = (name) => join(folder, name);
const bin = join(root, 'packages', 'cli', 'bin', 'tinwright.js');

ready();
mkdirSync(folder, { recursive: true });
writeFileSync(
  at('tray.yaml'),
  `units: mm
stock: { material: galvanised-steel, thickness: 1 }
parts:
  - { name: tray, family: open-box, length: 300, width: 200, height: 50 }
`,
);
const row = (i) => `t${i},${150 + i / 4},${i % 97 === 5 ? 0 : 120 + (i % 50)}\n`;
writeFileSync(
  at('t.csv'),
  `name,tray.length,tray.width\n${Array.from({ length: COUNT }, (_, i) => row(i)).join('')}`,
);

const started = [];
/** A run of the command: its exit status once it ended, what it said so far. */
function tinwright(...argv) {
  const child = spawn(process.execPath, [bin, ...argv], { cwd: folder });
  started.push(child);
  const run = { child, said: '', memory: 0 };
  const looking = setInterval(() => {
    run.memory = Math.max(run.memory, peakOf(child.pid));
  }, 100);
  run.ended = new Promise((done) => child.on('close', done)).finally(() => clearInterval(looking));
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (chunk) => {
      run.said += chunk;
    });
  return run;
}
/** MB at most that a process has held so far; 0 where the system does not say, or it ended. */
function peakOf(pid) {
  try {
    return Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'latin1'))?.[1] ?? 0) / 1024;
  } catch {
    return 0;
  }
}
const sizes = (out, ...more) => tinwright('sizes', 'tray.yaml', '--table', 't.csv', '--out', out, ...more);
const worker = (...more) => tinwright('worker', '--queue', url, '--jobs', '1', ...more);

/** Every file below a folder with its hash. */
function contents(dir) {
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile())
    .map((e) => join(e.parentPath, e.name))
    .map((p) => `${p.slice(dir.length)} ${createHash('sha256').update(readFileSync(p)).digest('hex')}`)
    .toSorted();
}

async function until(what, test) {
  for (let i = 0; i < 1200; i++) {
    if (test()) return;
    await pause(50);
  }
  throw new Error(`waited for ${what} in vain`);
}
const standing = (dir) => (existsSync(dir) ? readdirSync(dir).filter((n) => /^t\d+$/.test(n)).length : 0);
const timed = async (what, work) => {
  const start = Date.now();
  const answer = await work();
  process.stdout.write(`${what}: ${((Date.now() - start) / 1000).toFixed(1)} s\n`);
  return answer;
};

const port = await new Promise((done) => {
  const server = createServer().listen(0, '127.0.0.1', () => {
    const { port } = server.address();
    server.close(() => done(port));
  });
});
const url = `redis://127.0.0.1:${port}`;
const redis = () => {
  const options = [
    '--port',
    port,
    '--bind',
    '127.0.0.1',
    '--dir',
    folder,
    '--appendonly',
    'yes',
    '--save',
    '',
  ];
  const child = spawn('redis-server', options, { stdio: 'ignore' });
  started.push(child);
  return child;
};

try {
  const pool = sizes('pool');
  assert.equal(await timed('threads', () => pool.ended), 1, pool.said); // some rows are refused
  const whole = contents(at('pool'));
  assert.equal(standing(at('pool')), COUNT - 11);

  await timed('shards', async () => {
    for (const run of [1, 2, 3].map((i) => sizes(`shard-${i}`, '--shard', `${i}/3`, '--jobs', '1')))
      assert.equal(await run.ended, 1, run.said);
    assert.equal(await tinwright('sizes', 'merge', 'shard-1', 'shard-2', 'shard-3').ended, 0);
  });
  // a long table is read as it comes: one row in three thousand is made, all are read
  const many = Array.from({ length: LONG }, (_, i) => `m${i},${150 + (i % 4000) / 8}\n`);
  writeFileSync(at('long.csv'), `name,length\n${many.join('')}`);
  const share = ['--shard', '1/3000', '--jobs', '1'];
  const long = tinwright('sizes', 'tray.yaml', '--table', 'long.csv', '--out', 'long', ...share);
  assert.equal(await timed(`${LONG} rows`, () => long.ended), 0, long.said);
  assert.ok(long.memory < 250, `${long.memory} MB`);

  const merged = contents(at('shard-1')).filter((f) => !/^.sizes-\d-of-3\.(csv|json) /.test(f));
  assert.deepEqual(merged, whole);

  let server = redis();
  await pause(300);
  const queued = await timed('queue, a worker killed, Redis started anew', async () => {
    const [first, second] = [worker(), worker()];
    const run = sizes('queue', '--queue', url);
    await until('sizes', () => standing(at('queue')) > COUNT / 5);
    first.child.kill('SIGKILL');
    await until('more sizes', () => standing(at('queue')) > COUNT / 2);
    server.kill('SIGTERM');
    await new Promise((done) => server.on('close', done));
    await until('the run to say so', () => run.said.includes('does not answer any more; waiting'));
    server = redis();
    const third = worker();
    assert.equal(await run.ended, 1, run.said);
    // a signal that comes before it hears signals ends it without a word
    await until('the third worker', () => third.said.includes('Working for'));
    for (const w of [second, third]) w.child.kill('SIGTERM');
    for (const w of [second, third]) assert.equal(await w.ended, 0, w.said);
    return run;
  });
  assert.match(queued.said, /answers again/);
  assert.match(queued.said, new RegExp(`${COUNT} sizes in queue: ${COUNT - 11} made, 0 kept, 11 refused`));
  assert.deepEqual(contents(at('queue')), whole);

  // what is not the same on both sides is refused and named
  const module = join(root, 'examples', 'row-marker.mjs');
  writeFileSync(at('key'), 'a secret of this shop alone\n');
  const example = execFileSync(process.execPath, [bin, 'starter', 'row-marker', '--with', module]);
  writeFileSync(at('marker.yaml'), example);
  writeFileSync(at('m.csv'), 'quantity\n1\n2\n');
  const asked = ['sizes', 'marker.yaml', '--table', 'm.csv', '--with', module, '--queue', url];
  await timed('refusals', async () => {
    const [other, bare] = [tinwright(...asked, '--out', 'marker'), worker()];
    assert.equal(await bare.ended, 2);
    assert.match(bare.said, /does not have the family "row-marker". Start it with the same --with/);
    const same = worker('--with', module);
    assert.equal(await other.ended, 0, other.said);
    assert.match(other.said, /a worker refuses: it does not have the family/);
    const keyed = tinwright(...asked, '--out', 'keyed', '--key', 'key');
    assert.equal(await keyed.ended, 3);
    assert.match(keyed.said, /is not what a run with the key of this worker gave/);
    same.child.kill('SIGTERM');
    await same.ended;
  });
} finally {
  for (const child of started) if (child.exitCode === null) child.kill('SIGKILL');
}
