import { JobError, jobReader, type PartPlan, planJob } from '@tinwright/core';
import { contains, loopBox } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';

const read = jobReader(); // keeps the schemas that it builds

const BOX = { name: 'bin', family: 'open-box', length: 320, width: 220, height: 80 };
const END = {
  name: 'end',
  family: 'gusset-end',
  width: 200,
  shoulderHeight: 60,
  height: 200,
  crownWidth: 60,
};
const STRIP = { name: 'strip', family: 'bent-strip', width: 120, legs: [80, 60], angles: [90] };

function withEdges(part: object, edges: readonly object[], bending: object = {}): PartPlan {
  const job = { units: 'mm', stock: { material: 'mild-steel', thickness: 1 }, parts: [{ ...part, edges }] };
  return planJob(read({ ...job, bending: { rule: 'k-factor', k: 0.42, ...bending } })).parts[0] as PartPlan;
}

function refusal(part: object, ...edges: readonly object[]): string {
  try {
    withEdges(part, edges);
    return '';
  } catch (error) {
    if (error instanceof JobError) return error.message;
    throw error;
  }
}

describe('a finished edge', () => {
  test.each([
    { type: 'closed', length: 10 },
    { type: 'open', length: 12, gap: 2 },
    { type: 'teardrop', length: 14 },
    { type: 'safe' },
    { type: 'return', height: 12 },
    { type: 'curl', diameter: 5 },
    { type: 'wired', diameter: 5 },
  ])('$type on a wall leaves the height that was asked, under any rule', (edge) => {
    for (const bending of [{ k: 0.33 }, { insideRadius: 2 }]) {
      const plan = withEdges(BOX, [{ panel: 'north', edge: 'far', ...edge }], bending);
      expect(plan.part.asked.some((a) => a.name === 'height')).toBe(true); // and verified when planned
      expect(plan.flat.bends.map((b) => b.id)).toContain(`${edge.type}-north-far`);
    }
  });

  test('a curl of 6 mm inside takes three quarters of the round through the middle of its sheet, and half a sheet straight', () => {
    const plan = withEdges(BOX, [{ panel: 'north', edge: 'far', type: 'curl', diameter: 6 }]);
    const curl = plan.flat.bends.find((b) => b.id === 'curl-north-far');
    expect(curl?.angle).toBeCloseTo(270, 6);
    expect(curl?.insideRadius).toBe(3);
    expect(curl?.terms.allowance).toBeCloseTo(0.75 * Math.PI * 7, 6);
  });

  test('a closed hem adds its length to the flat, less its deduction', () => {
    const [plain, hemmed] = [[], [{ panel: 'leg-2', edge: 'far', type: 'closed', length: 10 }]].map((e) =>
      withEdges(STRIP, e),
    ) as [PartPlan, PartPlan];
    const [hem] = hemmed.flat.bends.slice(-1);
    expect(hemmed.flat.blank.max[0] - plain.flat.blank.max[0]).toBeCloseTo(
      10 - (hem?.terms.deduction ?? 0),
      9,
    );
  });

  test('hems all round a plate meet butted at its corners, none over another', () => {
    const sides = ['south', 'west', 'north'];
    const plan = withEdges(
      STRIP,
      sides.map((edge) => ({ panel: 'leg-1', edge, type: 'closed', length: 10 })),
    );
    const low = sides.map((edge) => plan.formed.panels.find((p) => p.id === `closed-leg-1-${edge}`));
    expect(low.every((p) => p !== undefined)).toBe(true);
    expect(plan.formed.size[0]).toBeGreaterThan(70);
  });

  test('slopes and crown of a gusset end take hems', () => {
    const edges = withEdges(END, []).part.panels[0]?.outline.map((e) => e.name) ?? [];
    const slopes = edges.filter((name) => name.startsWith('slope'));
    expect(slopes).toHaveLength(2);
    const plan = withEdges(
      END,
      [...slopes, 'crown']
        .filter((e) => edges.includes(e) && withEdges(END, []).flat.bends.every((b) => b.id !== e))
        .map((edge) => ({ panel: 'plate', edge, type: 'closed', length: 8 })),
    );
    expect(plan.flat.bends.filter((b) => b.hem === 'closed').length).toBeGreaterThanOrEqual(2);
  });

  test('a tab on the end of a wall has one far edge, and a return there is the same at all four', () => {
    const CHANNEL = { name: 'body', family: 'hemmed-channel', length: 300, width: 200, height: 65 };
    const areas = ['north-west', 'north-east', 'south-west', 'south-east'].map((end) => {
      const fold = { panel: `tab-${end}`, edge: 'far', type: 'return', height: 8 };
      return withEdges({ ...CHANNEL, endTabs: { length: 20, gap: 6 } }, [fold]).flat.area;
    });
    for (const area of areas) expect(area).toBeCloseTo(areas[0] ?? Number.NaN, 6);
    expect(
      refusal(
        { ...CHANNEL, endTabs: { length: 20 } },
        { panel: 'tab-north-east', edge: 'rim', type: 'safe' },
      ),
    ).toMatch(/Known: near, inner, far, outer/);
  });

  test('lines to cross-break by end on the metal where a curl beside them takes a corner', () => {
    const duct = {
      name: 'duct',
      family: 'duct',
      length: 290,
      width: 190,
      height: 130,
      piece: 'half',
      crossBreak: 'scribed',
      seam: 14,
    };
    const curl = { panel: 'bottom', edge: 'east', type: 'curl', diameter: 7 };
    const { outline, scribes } = withEdges(duct, [curl]).flat;
    expect(scribes.length).toBeGreaterThan(0);
    for (const [a, b] of scribes)
      for (const t of [0.001, 0.5, 0.999])
        expect(contains(outline, [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t])).toBe(true);
  });

  test('an opening on a finished wall is told from the fold, a hem can carry one too', () => {
    const job = { ...BOX, cutouts: [{ type: 'round', panel: 'return-north-far', diameter: 5 }] };
    const plan = withEdges(job, [{ panel: 'north', edge: 'far', type: 'return', height: 20 }]);
    expect(loopBox(plan.flat.holes[0] ?? []).max[1]).toBeLessThan(plan.flat.blank.max[1]);
  });
});

describe('an edge that cannot be finished so is named with what would work:', () => {
  const far = { panel: 'north', edge: 'far' };
  test.each<[string, readonly object[], RegExp]>([
    [
      'asked twice',
      [
        { ...far, type: 'closed', length: 10 },
        { ...far, type: 'return', height: 12 },
      ],
      /edges\[1\]: edge "far" of panel "north" is folded already, by "closed-north-far"\. Take one of the two away/,
    ],
    [
      'the edge a wall stands on',
      [{ panel: 'base', edge: 'north', type: 'safe' }],
      /folded already, by "north"/,
    ],
    ['its own bend', [{ panel: 'north', edge: 'near', type: 'safe' }], /folded already, by "north"/],
    [
      'a panel that is not there',
      [{ panel: 'nort', edge: 'far', type: 'safe' }],
      /edges\[0\]\.panel: there is no panel "nort"\. Did you mean "north"/,
    ],
    [
      'an edge that is not there',
      [{ panel: 'north', edge: 'fra', type: 'safe' }],
      /edges\[0\]\.edge: panel "north" has no edge "fra"\. Did you mean "far"/,
    ],
    [
      'a hem too short to hold',
      [{ ...far, type: 'closed', length: 1 }],
      /edges\[0\]\.length: 1 mm given, .*Use 2 mm or more/,
    ],
    [
      'a hem longer than its wall',
      [{ ...far, type: 'closed', length: 90 }],
      /edges\[0\]\.length: 90 mm given, longer than panel "north" of 80 mm has room for\. Use [\d.]+ mm or less/,
    ],
    [
      'a return too short to bend',
      [{ ...far, type: 'return', height: 1 }],
      /edges\[0\]\.height: 1 mm given.*Use [\d.]+ mm or more/,
    ],
    ['a type that is none', [{ ...far, type: 'clsed', length: 8 }], /Did you mean "closed"/],
  ])('%s', (_, edges, said) => {
    expect(refusal(BOX, ...edges)).toMatch(said);
  });
});

test('an edge too short for a hand to fold is refused', () => {
  const nip = { panel: 'plate', edge: 'nip-west', type: 'wired', diameter: 3 };
  expect(refusal({ ...END, cornerNip: 2 }, nip)).toMatch(/of edge "nip-west" is left to fold, 5 mm at least/);
});
