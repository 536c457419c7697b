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

test.each([
  [
    'under hemmed rims a divider as long as the walls are apart is sprung in',
    { hem: { type: 'closed', length: 8 } },
    0.4,
    true,
  ],
  ['one that passes the hems is put in from above', { hem: { type: 'closed', length: 8 } }, 4, false],
  ['between plain walls it is put in from above', {}, 0.4, false],
])('%s', (_, rim, less, sprung) => {
  const { list } = jobOperations(
    planJob(
      readJob({
        units: 'mm',
        stock: { material: 'mild-steel', thickness: 0.8 },
        parts: [
          { name: 'box', family: 'open-box', length: 200, width: 120, height: 60, ...rim },
          {
            name: 'cross',
            family: 'divider',
            length: { of: 'box.insideWidth', less },
            height: 40,
            tabs: { length: 14 },
          },
        ],
        joints: [
          { name: 'north', from: 'box.north', to: 'cross.west', by: { 'blind-rivet': { diameter: 3.2 } } },
          { name: 'south', from: 'box.south', to: 'cross.east', by: { 'blind-rivet': { diameter: 3.2 } } },
        ],
      } as never),
    ),
    new Map(),
  );
  const placing = list.filter((o) => o.kind === 'place');
  expect(placing).not.toHaveLength(0);
  expect(placing.some((o) => o.reasons.includes('spring-in'))).toBe(sprung);
});
