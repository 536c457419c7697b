import { type FormedPanel, JobError, type JobPlan, jobReader, planJob, readJob } from '@tinwright/core';
import { compose3, length3, place3, sub3 } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';

const read = jobReader(); // keeps the schemas that it builds

const BIN = {
  name: 'bin',
  family: 'open-box',
  length: 360,
  width: 220,
  height: 70,
  corner: 'tabbed',
  tabs: { length: 20 },
};
const DIVIDER = { name: 'divider', family: 'divider', length: 217.6, height: 45, tabs: { length: 15 } };
const CORNERS = { name: 'corners', from: 'bin.corner-tabs', to: 'bin.end-walls' };

function planned(
  parts: readonly object[],
  joints: readonly object[],
  bending: object = { rule: 'k-factor', k: 0.42 },
): JobPlan {
  const job = { units: 'mm', stock: { material: 'mild-steel', thickness: 1 }, bending, parts, joints };
  return planJob(read(job));
}

function refusal(parts: readonly object[], joints: readonly object[]): string {
  try {
    planned(parts, joints);
    return '';
  } catch (error) {
    if (error instanceof JobError) return error.message;
    throw error;
  }
}

const codes = (plan: JobPlan) => plan.findings.map((f) => f.code);

describe('a part joined to itself', () => {
  const rivets = { ...CORNERS, by: { 'blind-rivet': { diameter: 3.2, count: 8 } } };

  test('has its rivets through tab and wall, the two places over each other in space', () => {
    const plan = planned([BIN], [rivets]);
    const fasteners = plan.assembly?.fasteners ?? [];
    expect(fasteners).toHaveLength(8);
    const [bin] = plan.parts;
    for (const { on } of fasteners) {
      const [a, b] = on.map(({ panel, at }) => {
        const { pose } = (bin?.formed.panels ?? []).find((p) => p.id === panel) as FormedPanel;
        return { at: place3(pose, [at[0], at[1], 0]), z: pose.z };
      }) as [
        { at: [number, number, number]; z: [number, number, number] },
        { at: [number, number, number]; z: [number, number, number] },
      ];
      // straight over each other: what parts them runs along the sheets' normal
      const apart = sub3(b.at, a.at);
      const along = Math.abs(apart[0] * a.z[0] + apart[1] * a.z[1] + apart[2] * a.z[2]);
      expect(length3(apart)).toBeCloseTo(along, 6);
      expect(along).toBeLessThan(2.6);
    }
    expect(new Set(fasteners.flatMap((f) => f.on.map((e) => e.panel))).size).toBe(6);
  });

  test('by a rule that may be some tenths off, only one sheet of each rivet is drilled flat, and it is said', () => {
    const plan = planned([BIN], [rivets]);
    expect(codes(plan)).toContain('drill-after-bending');
    expect(plan.parts[0]?.flat.holes).toHaveLength(8);
    expect(plan.parts[0]?.flat.marks).toHaveLength(16);
  });

  test('by a rule from test strips that is sure to a twentieth, both sheets are drilled flat', () => {
    const row = {
      name: 'bent here',
      material: 'mild-steel',
      thickness: 1,
      insideRadius: 1,
      k: 0.42,
      kError: 0.01,
      strips: 3,
    };
    const job = {
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      bending: { rule: 'test-strip', insideRadius: 1 },
      parts: [BIN],
      joints: [rivets],
    };
    const plan = planJob(readJob(job as unknown, undefined, { strips: [row] }));
    expect(codes(plan)).not.toContain('drill-after-bending');
    expect(plan.parts[0]?.flat.holes).toHaveLength(16);
  });

  test('spot welds need no holes, and every piece of a part gets its own', () => {
    const plan = planned([{ ...BIN, quantity: 2 }], [{ ...CORNERS, by: 'spot-weld' }]);
    expect(plan.assembly?.seated.map((s) => s.joint.name)).toEqual(['corners-1', 'corners-2']);
    expect(codes(plan)).not.toContain('piece-loose');
    // two marks a fastener, but the same on both pieces
    expect(codes(plan)).not.toContain('pieces-differ');
    expect(plan.assembly?.fits).toEqual([]);
  });

  test('where nothing of it meets, the joint is empty', () => {
    expect(
      codes(planned([BIN], [{ name: 'none', from: 'bin.north', to: 'bin.south', by: 'spot-weld' }])),
    ).toContain('joint-empty');
  });

  test('a site with itself is refused', () => {
    expect(refusal([BIN], [{ name: 'self', from: 'bin.north', to: 'bin.north', by: 'none' }])).toMatch(
      /bin\.north is joined to itself/,
    );
  });
});

describe('several pieces on one site', () => {
  const two = { ...DIVIDER, quantity: 2 };
  const at = (places: object) => [
    { name: 'south', from: 'bin.south', to: 'divider.west', by: 'spot-weld', ...places },
    { name: 'north', from: 'bin.north', to: 'divider.east', by: 'spot-weld', ...places },
  ];
  const xs = (plan: JobPlan) =>
    (plan.assembly?.placed ?? [])
      .filter((p) => p.piece.startsWith('divider'))
      .map((p) => {
        const { pose } = p.part.formed.panels.find((q) => q.id === 'plate') as FormedPanel;
        return compose3(p.pose, pose).origin[0];
      });

  test('two dividers stand where both walls say, counted from one end', () => {
    const plan = planned([BIN, two], at({ at: [120, 240], edge: 'west' }));
    const [a, b] = xs(plan) as [number, number];
    expect(b - a).toBeCloseTo(120, 6);
    expect(codes(plan)).not.toContain('loop-open');
    // the panel's own edge lies a thickness and the gap inside the box; the plate is a thickness wide
    expect((a + b) / 2).toBeCloseTo(1.5 + 180 - 0.5, 6);
  });

  test('so far apart about the middle, or evenly from end to end', () => {
    const [a, b] = xs(planned([BIN, two], at({ every: 100 }))) as [number, number];
    expect(Math.abs(b - a)).toBeCloseTo(100, 6);
    const [c, d] = xs(planned([BIN, two], at({ count: 2 }))) as [number, number];
    expect(Math.abs(d - c)).toBeCloseTo((360 - 3) / 3, 6);
  });

  test('nearer to each other than their clearance they are told tight, in one place they clash', () => {
    expect(codes(planned([BIN, two], at({ at: [120, 134.9], edge: 'west' })))).toContain('fit-tight');
    expect(codes(planned([BIN, two], at({ at: [120, 120], edge: 'west' })))).toContain('clash');
  });

  test('feet stand under a base by the name of a panel alone', () => {
    const foot = { name: 'foot', family: 'bracket', width: 40, base: 30, leg: 25, quantity: 3 };
    const plan = planned(
      [BIN, foot],
      [{ name: 'feet', from: 'bin.base-back', to: 'foot.base', by: 'spot-weld', every: 120 }],
    );
    expect(plan.assembly?.seated).toHaveLength(3);
    expect(codes(plan)).not.toContain('piece-unknown');
  });

  test.each<[string, object, RegExp]>([
    [
      'more places than pieces',
      { at: [60, 120, 240] },
      /3 places given for 2 pieces of "divider"\. Give divider quantity: 3/,
    ],
    [
      'a place past the end',
      { at: [60, 900] },
      /900 mm along "south" given, which is 357 mm long\. Use 357 mm or less/,
    ],
    [
      'an edge that is not there',
      { at: [60, 120], edge: 'wst' },
      /there is no edge "wst"\. Did you mean "west"/,
    ],
    ['an edge that runs along', { at: [60, 120], edge: 'far' }, /the edge "far" runs along the places/],
  ])('%s is refused', (_, places, said) => {
    expect(refusal([BIN, two], at(places).slice(0, 1))).toMatch(said);
  });
});
