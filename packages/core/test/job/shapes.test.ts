// What a program may hand over that no parser of YAML makes: lists with holes, values nested without end.
import { JobError, jobReader } from '@tinwright/core';
import { expect, test } from 'vitest';

const read = jobReader();
const box = { name: 'a', family: 'open-box', length: 100, width: 80, height: 30 };
const job = (more: object) => ({
  units: 'mm',
  stock: { material: 'mild-steel', thickness: 1 },
  parts: [box],
  ...more,
});

/** A group in a group, so many times. */
const nested = (times: number) => JSON.parse(`${'{"d":'.repeat(times)}1${'}'.repeat(times)}`) as object;

/** A list whose first place is empty, and then these. */
const holed = (...rows: readonly object[]) =>
  Object.assign(new Array(1 + rows.length), Object.fromEntries(rows.map((r, i) => [i + 1, r])));

const ring: Record<string, unknown> = { type: 'closed' };
ring.length = ring;

test.each<[string, object]>([
  ['a list of parts with a hole', { parts: holed({ ...box, name: 'b' }) }],
  ['a list of parts with nothing in it but a place for one', { parts: [box, undefined] }],
  ['a list of joints with a hole', { joints: holed() }],
  ['a hem in a hem, 20,000 times', { parts: [{ ...box, hem: nested(20_000) }] }],
  [
    'a list in a list, 20,000 times',
    { parts: [{ ...box, cutouts: JSON.parse(`${'['.repeat(20_000)}${']'.repeat(20_000)}`) }] },
  ],
  ['a hem that holds itself', { parts: [{ ...box, hem: ring }] }],
  ['a head nested 20,000 times', { stock: nested(20_000) }],
])('%s is refused like any other job', (_, more) => {
  expect(() => read(job(more))).toThrow(JobError);
});
