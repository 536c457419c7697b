import { deepEqual, equal, match, ok } from 'node:assert/strict';
import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { test } from 'node:test';
import { type JobInput, planJob, readJob } from '@tinwright/core';
import { jobFiles } from '@tinwright/files';
import { strFromU8, unzipSync } from 'fflate';
import { service } from './service.js';

const BOX = { name: 'box', family: 'open-box', length: 120, width: 80, height: 30 } as const;
const JOB: JobInput = { units: 'mm', stock: { material: 'mild-steel', thickness: 1 }, parts: [BOX] };

/** Post to a service of its own. */
async function post(body: string, limits?: Parameters<typeof service>[0]) {
  const server = service(limits).listen(0);
  await once(server, 'listening');
  try {
    const { port } = server.address() as AddressInfo;
    const reply = await fetch(`http://localhost:${port}`, { method: 'POST', body });
    return { status: reply.status, bytes: new Uint8Array(await reply.arrayBuffer()) };
  } finally {
    server.close();
  }
}

const LIMITS = { bytes: 65_536, parts: 20, milliseconds: 60_000 };

test('a job comes back as a ZIP of the files the library makes of it', async () => {
  const { status, bytes } = await post(JSON.stringify(JOB), LIMITS);
  equal(status, 200);
  const found = unzipSync(bytes);
  const made = jobFiles(planJob(readJob(JOB)), { dxf: 'r2000' });
  deepEqual(
    Object.keys(found),
    made.map((f) => f.path),
  );
  for (const { path, content } of made) equal(strFromU8(found[path] ?? new Uint8Array()), content);
});

test('the same job gives the same bytes', async () => {
  const [a, b] = [await post(JSON.stringify(JOB), LIMITS), await post(JSON.stringify(JOB), LIMITS)];
  deepEqual(a.bytes, b.bytes);
});

test('a job that cannot be is refused with its problems, each with its place', async () => {
  const { status, bytes } = await post(JSON.stringify({ ...JOB, parts: [{ ...BOX, lenght: 3 }] }), LIMITS);
  equal(status, 422);
  const { problems } = JSON.parse(strFromU8(bytes));
  equal(problems[0].code, 'key-unknown');
  deepEqual(problems[0].path, ['parts', 0, 'lenght']);
});

test('what is no JSON, too large, of too many parts or too slow is refused', async () => {
  equal((await post('{', LIMITS)).status, 400);
  equal((await post(' '.repeat(2000), { ...LIMITS, bytes: 1000 })).status, 413);
  const parts = ['a', 'b', 'c'].map((name) => ({ ...BOX, name }));
  equal((await post(JSON.stringify({ ...JOB, parts }), { ...LIMITS, parts: 2 })).status, 413);
  const slow = await post(JSON.stringify({ ...JOB, parts }), { ...LIMITS, milliseconds: 0 });
  equal(slow.status, 503);
  match(strFromU8(slow.bytes), /abort/);
  ok(slow.bytes.length < 200);
});
