// Distances between formed neighbours at corners, measured in space.

import { type Formed, type FormedPanel, jobReader, planJob, type Vec3 } from '@tinwright/core';
import { place3 } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const read = jobReader(); // keeps the schemas that it builds

const formed = (part: object, bending: object = { rule: 'k-factor', k: 0.42, insideRadius: 1 }): Formed => {
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    bending,
    parts: [{ name: 'part', ...part }],
  };
  return planJob(read(data)).parts[0]?.formed as Formed;
};

/** Corners of a panel in space, both faces. */
const corners = (f: Formed, id: string): readonly Vec3[] => {
  const p = f.panels.find((x) => x.id === id) as FormedPanel;
  return p.shape.flatMap(([x, y]) => [0, f.thickness].map((z) => place3(p.pose, [x, y, z])));
};
const reach = (f: Formed, id: string, axis: 0 | 1 | 2) => {
  const values = corners(f, id).map((c) => c[axis]);
  return [Math.min(...values), Math.max(...values)] as const;
};

const channel = {
  family: 'hemmed-channel',
  length: 400,
  width: 200,
  height: 55,
  hem: { type: 'closed', length: 15 },
  endTabs: { length: 18, gap: 0.6 },
};

test('the tabs of base and sides stand in one plane, the gap between them along the mitre', () => {
  const f = formed(channel);
  for (const id of ['tab-west', 'tab-north-west', 'tab-south-west'])
    expect(reach(f, id, 0)).toEqual([expect.closeTo(0, 9), expect.closeTo(1, 9)]);
  // distance from the 45° line through the outside corner at y = 200, z = 0, along its normal
  const off = (id: string) => corners(f, id).map(([, y, z]) => (z - (200 - y)) / Math.SQRT2);
  expect(Math.min(...off('tab-north-west'))).toBeCloseTo(0.3, 9);
  expect(Math.max(...off('tab-west'))).toBeCloseTo(-0.3, 9);
});

test('a hem ends clear of the tab beside it and of the sheet that will stand there', () => {
  // tab 1 thick, an end of 1 against it, half a millimetre it may stand off, 0.2 clearance
  expect(reach(formed(channel), 'hem-north', 0)[0]).toBeCloseTo(2.7, 9);
  const thick = formed({ ...channel, endTabs: { ...channel.endTabs, room: 3 } });
  expect(reach(thick, 'hem-north', 0)[0]).toBeCloseTo(4.7, 9);
});

test('walls of an open box stop at the tangent lines of their neighbours', () => {
  const f = formed({ family: 'open-box', length: 100, width: 80, height: 40 });
  expect(reach(f, 'north', 0)).toEqual([expect.closeTo(2, 9), expect.closeTo(98, 9)]);
});

test('with a small inside radius the gap asked moves them further back', () => {
  const f = formed(
    { family: 'open-box', length: 100, width: 80, height: 40, gap: 1 },
    { rule: 'k-factor', insideRadius: 0.2 },
  );
  // square edges one thickness and gap/√2 from the outside corner: the inner corners lie the gap apart
  expect(reach(f, 'north', 0)[0]).toBeCloseTo(1 + 1 / Math.SQRT2, 9);
  expect(100 - reach(f, 'east', 0)[1]).toBeCloseTo(0, 9);
  expect(reach(f, 'east', 1)[0]).toBeCloseTo(1 + 1 / Math.SQRT2, 9);
});

test('a lapped corner: the north wall runs to the outside, the west wall stops short of it by the gap', () => {
  const f = formed({ family: 'open-box', length: 100, width: 80, height: 40, corner: 'lap', gap: 0.4 });
  expect(reach(f, 'north', 0)).toEqual([expect.closeTo(0, 9), expect.closeTo(100, 9)]);
  expect(80 - reach(f, 'west', 1)[1]).toBeCloseTo(1.4, 9);
});

test('a corner tab lies inside the neighbouring wall, the gap from it, below its hem', () => {
  const f = formed({
    family: 'open-box',
    length: 100,
    width: 80,
    height: 40,
    corner: 'tabbed',
    tabs: { length: 15 },
    hem: { type: 'closed', length: 9 },
    gap: 0.3,
  });
  expect(reach(f, 'tab-north-west', 0)).toEqual([expect.closeTo(1.3, 9), expect.closeTo(2.3, 9)]);
  expect(reach(f, 'tab-north-west', 1)[0]).toBeCloseTo(80 - 15, 9);
  expect(reach(f, 'tab-north-west', 2)[1]).toBeCloseTo(40 - 9 - 0.3, 9);
});

test.each([
  [0, 0.1],
  [0.1, 0.5],
  [0.5, 2],
])('a corner tab with an inside radius of %d mm: %d mm over the base too', (insideRadius, gap) => {
  const rule = { rule: 'k-factor', k: 0.42, insideRadius };
  const f = formed({ family: 'open-box', length: 100, width: 80, height: 40, corner: 'tabbed', gap }, rule);
  const tabs = f.panels.filter((p) => p.id.startsWith('tab-')).map((p) => reach(f, p.id, 2)[0]);
  expect(tabs).toHaveLength(4);
  for (const low of tabs) expect(low - f.thickness).toBeGreaterThanOrEqual(gap - 1e-9);
});

test('returns round a box are mitred, the gap between them', () => {
  const f = formed({ family: 'open-box', length: 100, width: 80, height: 40, flangeReturn: 12, gap: 0.5 });
  const off = (id: string) => corners(f, id).map(([x, y]) => (x - (80 - y)) / Math.SQRT2); // from the 45° line at the north-west
  expect(Math.min(...off('return-north'))).toBeGreaterThanOrEqual(0.25 - 1e-9);
  expect(Math.max(...off('return-west'))).toBeLessThanOrEqual(-0.25 + 1e-9);
});

test('inside sizes are clear sizes: two thicknesses more across, one more in height', () => {
  const f = formed({ family: 'open-box', length: 100, width: 80, height: 40, dimensions: 'inside' });
  expect(f.size).toEqual([expect.closeTo(102, 9), expect.closeTo(82, 9), expect.closeTo(41, 9)]);
});

// R: the ends of a 45° cut lie where the round of radius R starts. The 0.3 mm on top: common practice, no source.
test('the nip of an end clears the bend it stands in by the clearance', () => {
  const f = formed(
    { family: 'gusset-end', width: 100, shoulderHeight: 40, height: 60, crownWidth: 30 },
    { rule: 'k-factor', insideRadius: 3 },
  );
  const nip = Math.min(
    ...corners(f, 'plate')
      .filter(([, y]) => y < 1e-9)
      .map(([x]) => x),
  );
  expect(nip).toBeCloseTo(3 + 0.3, 9);
  // the cut passes the arc's centre (3, 3) nearer than the arc does
  expect(Math.abs(3 + 3 - nip) / Math.SQRT2).toBeLessThan(3);
});
