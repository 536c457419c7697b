import { planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';

const plan = (part: object, job: object = {}) => {
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: 1 },
    ...job,
    parts: [{ name: 'shelf', family: 'shelf', length: 500, depth: 180, ...part }],
  };
  const [planned] = planJob(readJob(data as unknown)).parts;
  if (planned === undefined) throw new Error('no part');
  return planned;
};

// NAVEDTRA 14251 (Steelworker vol. 2): a single hem takes its own width of metal, so an edge of 30 folded back 20 takes 50
test('laid out nominally a doubled edge takes its height and its fold', () => {
  const { flat } = plan({ edge: { height: 30, fold: 20 } }, { bending: { rule: 'nominal' } });
  expect(flat.blank.max).toEqual([expect.closeTo(500, 9), expect.closeTo(180 + 2 * 50, 9)]);
});

test('left to itself the fold ends a thickness under the bend of its edge', () => {
  const { formed, sheet } = plan({ edge: { height: 30 } });
  const fold = formed.panels.find((p) => p.id === 'fold-front');
  const low = Math.min(
    ...(fold?.shape ?? []).map(([, y]) => (fold?.pose.origin[2] ?? 0) + y * (fold?.pose.y[2] ?? 0)),
  );
  expect(low).toBeCloseTo(2 * sheet.thickness + sheet.insideRadius, 9);
});

test('holes of the end tabs are as far from front and back as said', () => {
  const { formed } = plan({
    edge: { height: 30 },
    ends: { length: 28, holes: { diameter: 5, count: 3, edge: 40 } },
  });
  for (const id of ['end-west', 'end-east'])
    expect(formed.panels.find((p) => p.id === id)?.holes.map((h) => h.at[0])).toEqual([40, 90, 140]);
});
