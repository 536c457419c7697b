import { JobError, planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';

const plan = (part: object, job: object = {}) => {
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: 1 },
    ...job,
    parts: [{ name: 'drawer', family: 'drawer', width: 200, depth: 260, height: 70, ...part }],
  };
  const [planned] = planJob(readJob(data as unknown)).parts;
  if (planned === undefined) throw new Error('no part');
  return planned;
};

// no allowance: the blank is the sum of the outside legs, sides and runners across, front, back and lip along
test('laid out nominally the blank is as long as its outside legs', () => {
  const { flat } = plan(
    { front: 80, runners: { over: 230 }, pull: { type: 'lip', depth: 22, drop: 14 } },
    { bending: { rule: 'nominal' } },
  );
  // a flange turned the other way is told from the other face: one thickness more
  expect(flat.blank.max[0]).toBeCloseTo(200 + 2 * (70 + 15 + 1), 9);
  expect(flat.blank.max[1]).toBeCloseTo(260 + 70 + 80 + (22 + 1) + 14, 9);
});

test('without runners and a pull it has the blank of an open box', () => {
  const box = planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      bending: { rule: 'k-factor', k: 0.42, insideRadius: 1 },
      parts: [{ name: 'box', family: 'open-box', length: 200, width: 260, height: 70 }],
    }),
  ).parts[0];
  const { flat } = plan({});
  expect(flat.blank.max).toEqual(box?.flat.blank.max);
  expect(flat.area).toBeCloseTo(box?.flat.area ?? 0, 9);
});

test('a pull stands out of the front as far as it says, and hangs down', () => {
  const { formed } = plan({ front: 80, pull: { type: 'lip', depth: 22, drop: 14 } });
  expect(formed.size).toEqual([expect.closeTo(200, 9), expect.closeTo(282, 9), expect.closeTo(80, 9)]);
  const lip = formed.panels.find((p) => p.id === 'pull-lip');
  expect(lip?.pose.y[2]).toBeCloseTo(-1, 9);
});

test('holes for a handle lie level in the front, their spacing apart', () => {
  const { formed } = plan({ pull: { type: 'holes', diameter: 5, spacing: 96, below: 30 } });
  const [a, b] = formed.panels.find((p) => p.id === 'south')?.holes ?? [];
  expect(Math.abs((a?.at[0] ?? 0) - (b?.at[0] ?? 0))).toBeCloseTo(96, 9);
  expect([a?.at[1], b?.at[1]]).toEqual([40, 40]);
});

test('a front lower than its sides is refused', () => {
  expect(() => plan({ front: 60 })).toThrow(JobError);
});
