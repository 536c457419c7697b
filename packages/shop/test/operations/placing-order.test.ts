import { readFileSync } from 'node:fs';
import { planJob, readJob } from '@tinwright/core';
import { jobOperations } from '@tinwright/shop';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

const SEED_BOX = new URL('../../../../examples/seed-box.yaml', import.meta.url);

test('a lid goes on after all that goes under it, whatever the order of the joints', () => {
  const data = parse(readFileSync(SEED_BOX, 'utf8')) as { joints: { name: string }[] };
  const joints = data.joints.toSorted((a, b) => Number(b.name === 'cover') - Number(a.name === 'cover'));
  expect(joints[0]?.name).toBe('cover');
  const { list } = jobOperations(planJob(readJob({ ...data, joints })), new Map());
  const placed = list.flatMap((o) => (o.kind === 'place' ? o.joints.map((j) => j.name) : []));
  expect(placed).toContain('cross-1');
  expect(placed.at(-1)).toBe('cover');
});
