import { type FormedPanel, JobError, jobReader, type PartPlan, planJob } from '@tinwright/core';
import { loopBox, place3 } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';

const read = jobReader(); // keeps the schemas that it builds

const BOX = { name: 'bin', family: 'open-box', length: 320, width: 220, height: 80 };
const STOCK = { material: 'mild-steel', thickness: 1 };

/** Plan a part with these openings. */
function withCuts(cutouts: readonly object[], part: object = BOX): PartPlan {
  const job = { units: 'mm', stock: STOCK, parts: [{ ...part, ...(cutouts.length > 0 ? { cutouts } : {}) }] };
  return planJob(read(job)).parts[0] as PartPlan;
}

function refusal(...cutouts: readonly object[]): string {
  try {
    withCuts(cutouts);
    return '';
  } catch (error) {
    if (error instanceof JobError) return error.message;
    throw error;
  }
}

/** Middle of the first opening of a panel in space, on its unmarked face. */
function middleIn({ formed }: PartPlan, id: string) {
  const panel = formed.panels.find((p) => p.id === id) as FormedPanel;
  const { min, max } = loopBox(panel.cutouts[0] ?? []);
  return place3(panel.pose, [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, 0]);
}

describe('an opening', () => {
  test('is missing from the flat and from the formed part by its own area', () => {
    const [plain, cut] = [
      withCuts([]),
      withCuts([{ type: 'slot', panel: 'north', length: 60, width: 20, from: { far: 30 } }]),
    ];
    const area = 40 * 20 + Math.PI * 10 ** 2;
    expect(plain.flat.area - cut.flat.area).toBeCloseTo(area, 6);
    expect(plain.formed.volume - cut.formed.volume).toBeCloseTo(area, 6);
    expect(cut.flat.cutLength - plain.flat.cutLength).toBeCloseTo(2 * 40 + Math.PI * 20, 6);
  });

  test('from edges of a wall it stands so far from the outside of the formed box, under any bend rule', () => {
    const cut = [{ type: 'rectangle', panel: 'north', length: 40, width: 20, from: { far: 30, west: 70 } }];
    for (const rule of [
      { rule: 'k-factor', k: 0.33 },
      { rule: 'din-6935' },
      { rule: 'linear', perRadius: 1.6, perThickness: 0.7 },
    ]) {
      const [x, y, z] = middleIn(withCuts(cut, { ...BOX, bending: { ...rule, insideRadius: 2 } }), 'north');
      expect(x).toBeCloseTo(70, 6);
      expect(y).toBeCloseTo(220, 6);
      expect(z).toBeCloseTo(80 - 30, 6);
    }
  });

  test('from no edge it stands in the middle of its panel, turned where asked', () => {
    const [wide, turned] = [0, 90].map((turn) =>
      withCuts([{ type: 'slot', panel: 'base', length: 100, width: 10, turn }]),
    ) as [PartPlan, PartPlan];
    const size = ({ flat }: PartPlan) => {
      const { min, max } = loopBox(flat.holes[0] ?? []);
      return [max[0] - min[0], max[1] - min[1]];
    };
    expect(size(wide)).toEqual([expect.closeTo(100, 9), expect.closeTo(10, 9)]);
    expect(size(turned)).toEqual([expect.closeTo(10, 9), expect.closeTo(100, 9)]);
    expect(middleIn(wide, 'base')).toEqual([expect.closeTo(160, 9), expect.closeTo(110, 9), 0]);
  });

  test('on a slope of a gusset end it stands square to the slope', () => {
    const end = {
      name: 'end',
      family: 'gusset-end',
      width: 180,
      shoulderHeight: 60,
      height: 200,
      crownWidth: 60,
    };
    const { part, flat } = withCuts(
      [{ type: 'round', panel: 'plate', diameter: 8, from: { 'slope-west': 20 } }],
      {
        ...end,
        family: 'gusset-end',
      },
    );
    expect(part.panels.length).toBeGreaterThan(0);
    expect(flat.holes).toHaveLength(1);
  });

  test('rows and columns stand about its place', () => {
    const grid = { columns: { count: 4, pitch: 20 }, rows: { count: 3, pitch: 15 } };
    const { flat } = withCuts([{ type: 'round', panel: 'base', diameter: 5, ...grid }]);
    expect(flat.holes).toHaveLength(12);
    const boxes = flat.holes.map(loopBox);
    expect(Math.max(...boxes.map((b) => b.max[0])) - Math.min(...boxes.map((b) => b.min[0]))).toBeCloseTo(
      65,
      9,
    );
    expect(Math.max(...boxes.map((b) => b.max[1])) - Math.min(...boxes.map((b) => b.min[1]))).toBeCloseTo(
      35,
      9,
    );
  });

  test('a vent field has as many slots as its webs allow, from edge to edge of the field', () => {
    const { flat } = withCuts([{ type: 'vent', panel: 'base', length: 80, width: 64, slot: 4, web: 8 }]);
    expect(flat.holes).toHaveLength(6); // 6 × 4 + 5 × 8 = 64
    expect(
      Math.max(...flat.holes.map((h) => loopBox(h).max[1])) -
        Math.min(...flat.holes.map((h) => loopBox(h).min[1])),
    ).toBeCloseTo(64, 9);
  });

  test('a keyhole takes its head and its neck: area of both, less what they share', () => {
    const keyhole = { type: 'keyhole', panel: 'base', diameter: 14, width: 6, length: 15 };
    const missing = withCuts([]).flat.area - withCuts([keyhole]).flat.area;
    const half = Math.asin(3 / 7);
    const segment = (49 * (2 * half - Math.sin(2 * half))) / 2; // of the round, past the mouth of the neck
    const neck = 6 * (15 - Math.sqrt(49 - 9)) + (Math.PI * 9) / 2;
    expect(missing).toBeCloseTo(Math.PI * 49 - segment + neck, 6);
  });
});

describe('an opening that cannot be is named with its place and what would work:', () => {
  test.each<[string, object, RegExp]>([
    [
      'over a bend',
      { type: 'round', panel: 'north', diameter: 20, from: { near: 5 } },
      /part "bin": cutouts\[0\]: leaves less than 0\.5 mm of metal to the bend "north"\. Use cutouts\[0\]\.from\.near of 12\.5 mm or more/,
    ],
    [
      'over an edge',
      { type: 'round', panel: 'north', diameter: 20, from: { far: 4 } },
      /to the edge "far" of panel "north"\. Use cutouts\[0\]\.from\.far of 10\.5 mm or more/,
    ],
    [
      'larger than its panel',
      { type: 'round', panel: 'north', diameter: 100 },
      /larger than panel "north" between its bends and edges, .*Use cutouts\[0\]\.diameter of [\d.]+ mm or less/,
    ],
    [
      'outside its panel',
      { type: 'round', panel: 'north', diameter: 20, from: { far: 120 } },
      /lies outside panel "north"\. Use cutouts\[0\]\.from\.far of [\d.]+ mm or less/,
    ],
    [
      'on a panel that is not there',
      { type: 'round', panel: 'nort', diameter: 20 },
      /cutouts\[0\]\.panel: there is no panel "nort"\. Did you mean "north"/,
    ],
    [
      'from an edge that is not there',
      { type: 'round', panel: 'north', diameter: 20, from: { farr: 20 } },
      /cutouts\[0\]\.from\.farr: panel "north" has no edge "farr"\. Did you mean "far"/,
    ],
    [
      'from edges side by side',
      { type: 'round', panel: 'north', diameter: 20, from: { far: 20, near: 20 } },
      /run side by side/,
    ],
    [
      'from three edges',
      { type: 'round', panel: 'base', diameter: 20, from: { north: 50, west: 20, east: 30 } },
      /3 edges given, two say where it is/,
    ],
    ['of a shape unknown', { type: 'sllot', panel: 'north', diameter: 20 }, /Did you mean "slot"/],
    [
      'a slot wider than long',
      { type: 'slot', panel: 'base', length: 10, width: 20 },
      /cutouts\[0\]\.length: 10 mm given, a slot is no shorter than it is wide\. Use 20 mm or more/,
    ],
    [
      'a corner rounder than it fits',
      { type: 'rectangle', panel: 'base', length: 30, width: 20, radius: 12 },
      /Use 10 mm or less/,
    ],
    [
      'a keyhole without a neck',
      { type: 'keyhole', panel: 'base', diameter: 10, width: 12, length: 20 },
      /narrower than its round\. Use 9\.99 mm or less/,
    ],
    [
      'a row that runs into itself',
      { type: 'round', panel: 'base', diameter: 20, columns: { count: 3, pitch: 15 } },
      /metal to its own next one\. Use cutouts\[0\]\.columns\.pitch of 20\.5 mm or more|Use cutouts\[0\]\.diameter of 14\.5 mm or less/,
    ],
    [
      'far too many',
      {
        type: 'round',
        panel: 'base',
        diameter: 1,
        columns: { count: 200, pitch: 1.5 },
        rows: { count: 100, pitch: 1.5 },
      },
      /20000 openings of the part asked for, 2000 allowed/,
    ],
  ])('%s', (_, cutout, said) => {
    expect(refusal(cutout)).toMatch(said);
  });

  test('more of them than a part may have: the most that are cut', () => {
    const grid = (columns: number, rows: number) => ({
      type: 'round',
      panel: 'base',
      diameter: 2,
      columns: { count: columns, pitch: 4 },
      rows: { count: rows, pitch: 4 },
    });
    expect(refusal(grid(60, 40))).toMatch(/2400 openings .* 2000 allowed. Use columns.count of 50 or less/);
    expect(refusal(grid(50, 40))).toBe('');
    const first = grid(50, 39); // leaves 50
    expect(refusal(first, grid(60, 40))).toContain('Use columns.count of 1 or less');
    expect(refusal(first, grid(20, 60))).toContain('Use rows.count of 2 or less');
    expect(refusal(first, grid(60, 60))).toContain('Leave openings of the part out');
  });

  test('over another', () => {
    const said = refusal(
      { type: 'round', panel: 'base', diameter: 30 },
      { type: 'slot', panel: 'base', length: 60, width: 12, from: { west: 140, south: 110 } },
    );
    expect(said).toMatch(
      /cutouts\[1\]: leaves less than 0\.5 mm of metal to cut-out 1\. Use cutouts\[1\]\.from/,
    );
  });

  test('over another, its own place not told: a distance from an edge works', () => {
    const [round, slot] = [
      { type: 'round', panel: 'base', diameter: 30 },
      { type: 'slot', panel: 'base', length: 60, width: 12 },
    ];
    const said = refusal(round, slot);
    const [, edge, mm] = /Use cutouts\[1\]\.from\.(\w+) of ([\d.]+) mm or more/.exec(said) ?? [];
    expect(edge).toBeDefined();
    expect(refusal(round, { ...slot, from: { [edge as string]: Number(mm) } })).toBe('');
  });

  test('within another', () => {
    const said = refusal(
      { type: 'rectangle', panel: 'base', length: 60, width: 60 },
      { type: 'round', panel: 'base', diameter: 10, from: { south: 110 } },
    );
    expect(said).toMatch(/cutouts\[1\]: leaves less than/);
  });
});

test('a louvre is a cut round three sides of its flap, with the line it is bent by marked between the ends', () => {
  const louvre = { type: 'louvre', panel: 'north', length: 60, width: 12, height: 8, slot: 1.5 };
  const [plain, cut] = [withCuts([]), withCuts([louvre])];
  expect(plain.flat.area - cut.flat.area).toBeCloseTo(1.5 * (60 + 2 * 1.5) + 2 * 1.5 * 12, 6);
  const [line] = cut.flat.scribes;
  expect(Math.hypot(...[0, 1].map((k) => (line?.[1][k] as number) - (line?.[0][k] as number)))).toBeCloseTo(
    60,
    6,
  );
  expect(refusal({ ...louvre, height: 11.5 })).toMatch(
    /cutouts\[0\]\.height: 11\.5 mm given, a flap 12 mm wide reaches 10\.8 mm\. Use 10\.8 mm or less/,
  );
});
