import type { Fastener, Finding, PartPlan, Point } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { type Changes, carrier, codesOf, END, HANDLE, plan, R, T } from '../carrier.js';

const INCH = 25.4;

function fastened(changes: Changes = {}) {
  const { assembly, findings, parts } = plan(carrier(changes));
  const on = (joint: string) => assembly?.fasteners.filter((f) => f.joint === joint) ?? [];
  const told = (code: string): readonly Finding[] => findings.filter((f) => f.code === code);
  return { on, told, findings, parts };
}

describe('how many', () => {
  test('nothing given: about ten welds over the tabs of an end, a couple on each handle tab', () => {
    // common practice, no source
    const { on, findings } = fastened();
    expect(on('west').length).toBeGreaterThanOrEqual(6);
    expect(on('west').length).toBeLessThanOrEqual(12);
    expect(on('west')).toHaveLength(on('east').length);
    expect(on('grip-west')).toHaveLength(2);
    expect(on('grip-east')).toHaveLength(2);
    expect(findings).toEqual([]);
  });

  test('both ends alike: they share one pattern', () => {
    const { parts, on } = fastened();
    const end = parts.find((p) => p.name === 'end');
    expect(end?.flat.marks).toHaveLength(on('west').length + on('grip-west').length);
  });

  test.each([1, 2, 3, 7])('a count of %d is shared over the tabs', (count) => {
    const { on } = fastened({ joints: { west: { by: { 'spot-weld': { count } } } } });
    expect(on('west')).toHaveLength(count);
    const panels = new Set(on('west').map((f) => f.on[0]?.panel));
    expect(panels.size).toBe(Math.min(count, 3));
  });

  test('a pitch: welds of a tab stand no nearer than that, and no further than twice that', () => {
    const { on } = fastened({ joints: { west: { by: { 'spot-weld': { pitch: 25 } } } } });
    const tab = on('west').filter((f) => f.on[0]?.panel === 'tab-west');
    const xs = tab.map((f) => f.on[0]?.at[0] ?? 0).toSorted((a, b) => a - b);
    expect(xs.length).toBeGreaterThan(2);
    for (const [i, x] of xs.slice(1).entries()) {
      expect(x - (xs[i] as number)).toBeGreaterThanOrEqual(25 - 1e-6);
      expect(x - (xs[i] as number)).toBeLessThan(50);
    }
  });

  test('more than can stand at the least pitch: told with the count that can, and that count is right', () => {
    const ask = (count: number) =>
      fastened({
        joints: { west: { by: { 'spot-weld': { count } } }, east: { by: { 'spot-weld': { count } } } },
      });
    const [found] = ask(40).told('pitch-close');
    // 1 mm mild steel: 19.5 mm by table 8.1 of a pedestal spot-welder's manual, stricter than 3/4 in of table A
    expect(found).toMatchObject({ severity: 'warning', limit: 19.5 });
    expect(spoken(found)?.source).toMatch(/table A: .*table B: /);
    const [, most] = /ask for (\d+) at most/.exec(spoken(found)?.fix ?? '') ?? [];
    expect(ask(Number(most)).told('pitch-close')).toEqual([]);
    expect(ask(Number(most) + 1).told('pitch-close')).toHaveLength(1);
  });
});

describe('pitch through a common sheet', () => {
  /** Least distance of two fasteners that go through one panel, whatever their joints. */
  function least(fasteners: readonly Fastener[]): number {
    const gaps = fasteners.flatMap((a, i) =>
      fasteners.slice(i + 1).flatMap((b) => {
        const common = a.on.some((e) => b.on.some((f) => e.piece === f.piece && e.panel === f.panel));
        return common ? [Math.hypot(...[0, 1, 2].map((k) => (a.at[k] ?? 0) - (b.at[k] ?? 0)))] : [];
      }),
    );
    return Math.min(...gaps);
  }

  test.each([0, 20, 25])(
    'welds round the corners of an end, pitch %d given: 19.5 mm between any two',
    (pitch) => {
      // 1 mm mild steel: 19.5 mm by table 8.1 of a pedestal spot-welder's manual
      const by = pitch === 0 ? 'spot-weld' : { 'spot-weld': { pitch } };
      const { assembly } = plan(carrier({ joints: { west: { by }, east: { by } } }));
      const all = assembly?.fasteners ?? [];
      expect(all.length).toBeGreaterThan(12);
      expect(least(all)).toBeGreaterThanOrEqual(19.5 - 1e-6);
    },
  );

  test('no room left beside the welds of another tab: left out, and told', () => {
    const { on, told } = fastened({ body: { height: 42 } });
    const [found] = told('fastener-left-out');
    expect(found).toMatchObject({ severity: 'note', part: 'body' });
    expect(spoken(found)?.source).toMatch(/table A: .*table B: /);
    expect(new Set(on('west').map((f) => f.on[0]?.panel))).toEqual(new Set(['tab-west']));
  });

  test('500 asked for on one joint: told with a count that can be had, no stack runs over', () => {
    const { on, told } = fastened({ joints: { west: { by: { 'spot-weld': { count: 500 } } } } });
    expect(on('west')).toHaveLength(500);
    expect(spoken(told('pitch-close')[0])?.fix).toMatch(/^ask for \d+ at most$/);
  });
});

/** Distance of a place to the line through a side, and whether the side is bent. */
function sidesOf({ part, formed }: PartPlan, panel: string, [x, y]: Point) {
  const shape = formed.panels.find((p) => p.id === panel);
  const own = part.panels.find((p) => p.id === panel);
  return (shape?.shape ?? []).map((a, i, all) => {
    const b = all[(i + 1) % all.length] as Point;
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const edge = shape?.edges[i];
    const hangs = part.panels.some((p) => p.hang?.bend.parent === panel && p.hang.bend.edge === edge);
    const bent = hangs || (edge === 'near' && own?.hang !== null);
    return { distance: (dx * (y - a[1]) - dy * (x - a[0])) / Math.hypot(dx, dy), bent };
  });
}

function eachPlace(
  changes: Changes,
  look: (place: ReturnType<typeof sidesOf>[number], fastener: Fastener) => void,
): void {
  const { assembly, parts } = plan(carrier(changes));
  expect(assembly?.fasteners.length).toBeGreaterThan(8);
  for (const f of assembly?.fasteners ?? [])
    for (const { piece, panel, at } of f.on) {
      const part = parts.find((p) => piece === p.name || piece.startsWith(`${p.name}-`)) as PartPlan;
      for (const place of sidesOf(part, panel, at)) look(place, f);
    }
}

describe('where', () => {
  test('spot welds keep 9/32 in to every edge of both sheets, and the electrode off every bend', () => {
    // T.O. 1-1A-9 / TM 43-0106 table 2-24 at .040 in; electrode body 5/8 in of table A: half of it and 1.5 mm
    const [edge, bend] = [(9 / 32) * INCH, (5 / 8 / 2) * INCH + 1.5];
    eachPlace({}, ({ distance, bent }) => {
      expect(distance).toBeGreaterThanOrEqual((bent ? bend : edge) - 1e-6);
    });
  });

  test('rivets of 3.2 mm keep 2.5 diameters to every edge of both sheets', () => {
    // NAVEDTRA 14251, stricter than 2 D by TM 10-5410-229-13&P
    const by = 'blind-rivet';
    const joints = { west: { by }, east: { by }, 'grip-west': { by }, 'grip-east': { by } };
    eachPlace({ joints }, ({ distance, bent }) => {
      expect(distance).toBeGreaterThanOrEqual(bent ? 6.5 / 2 + 1 - 1e-6 : 8 - 1e-6);
    });
  });

  test('no mark on a pattern lies in a bend', () => {
    for (const { flat } of fastened().parts)
      for (const { at } of flat.marks)
        for (const { line, zone } of flat.bends) {
          const [p, q] = line;
          const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
          const l = Math.hypot(dx, dy);
          const along = ((at[0] - p[0]) * dx + (at[1] - p[1]) * dy) / l;
          const off = Math.abs((at[0] - p[0]) * dy - (at[1] - p[1]) * dx) / l;
          expect(off < zone / 2 && along > 0 && along < l).toBe(false);
        }
  });

  test('a tab too short for edge and electrode: what can be kept, what is wanted, both rules named', () => {
    // flat of the handle's tab 14 - 2 = 12 mm; 7.14 mm to its edge and 9.44 mm to its bend wanted
    const [found] = fastened({ handle: { tabs: { length: 14 } } }).told('overlap-narrow');
    const wanted = [(9 / 32) * INCH, (5 / 8 / 2) * INCH + 1.5] as const;
    const share = (14 - T - R) / (wanted[0] + wanted[1]);
    expect(found?.value).toBeCloseTo(share * wanted[0], 4);
    expect(found?.limit).toBeCloseTo(wanted[0], 6);
    expect(spoken(found)?.source).toMatch(/table A, table B, .*T\.O\. 1-1A-9/);
  });

  test('made longer by what the finding says, the tab is wide enough', () => {
    const [found] = fastened({ handle: { tabs: { length: 14 } } }).told('overlap-narrow');
    const [, more] = /overlap by ([\d.]+) mm more/.exec(spoken(found)?.fix ?? '') ?? [];
    expect(Number(more)).toBeGreaterThan(0);
    const longer = 14 + Number(more) + 0.01; // said to a hundredth
    expect(fastened({ handle: { tabs: { length: longer } } }).told('overlap-narrow')).toEqual([]);
  });
});

describe('rivets', () => {
  const by = { 'blind-rivet': { diameter: 4 } };
  const joints = { west: { by }, east: { by }, 'grip-west': { by }, 'grip-east': { by } };

  test('every part they go through has the hole, cut as a circle', () => {
    const { parts, on } = fastened({ joints });
    const all = ['west', 'east', 'grip-west', 'grip-east'].flatMap(on);
    const holes = (name: string) => parts.find((p) => p.name === name)?.flat.holes.length;
    expect(holes('body')).toBe(on('west').length + on('east').length);
    expect(holes('handle')).toBe(on('grip-west').length + on('grip-east').length);
    expect(holes('end')).toBe(on('west').length + on('grip-west').length); // one pattern for two
    for (const f of all)
      expect(f.on.map((e) => e.hole)).toEqual([expect.closeTo(4.15, 9), expect.closeTo(4.15, 9)]); // least of the band, from memory
  });
});

/** Holes of a pattern that meet another or come near the outline: least metal between, mm. */
function leastWeb({ formed, part }: PartPlan): number {
  const webs = formed.panels.flatMap((p) => {
    const holes = p.holes.map((h) => ({ ...h, r: h.diameter / 2 }));
    const between = holes.flatMap((a, i) =>
      holes.slice(i + 1).map((b) => Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]) - a.r - b.r),
    );
    const toEdge = holes.flatMap((h) =>
      sidesOf({ formed, part } as PartPlan, p.id, h.at).map((s) => s.distance - h.r),
    );
    return [...between, ...toEdge];
  });
  return Math.min(...webs);
}

describe('holes without room', () => {
  test('ten rivets at one end, eleven at the other: the one pattern keeps metal between its holes', () => {
    const by = (count: number) => ({ by: { 'blind-rivet': { count } } });
    const { parts, told, on } = fastened({ joints: { west: by(10), east: by(11) } });
    const [end] = parts.filter((p) => p.name === 'end');
    expect(leastWeb(end as PartPlan)).toBeGreaterThan(0.49);
    const [found, ...more] = told('hole-crowded');
    expect(more).toEqual([]);
    expect(found?.severity).toBe('warning');
    expect(spoken(found)?.message).toMatch(/^joint east: holes without room on end, too near/);
    expect(spoken(found)?.fix).toContain('drill through the other part');
    // those are marked whole: every rivet of both ends has its mark
    const uncut = on('east').filter((f) => f.on[1]?.hole === null);
    expect(uncut).toHaveLength(found?.value ?? 0);
    expect(end?.flat.marks.filter((m) => m.joint === 'east' && m.hole === null)).toHaveLength(uncut.length);
    expect(uncut.length).toBeGreaterThan(0);
  });

  test('rivets thicker than a tab is wide: marked, not cut over its edge, and told', () => {
    const by = { by: { 'blind-rivet': { diameter: 6, count: 1 } } };
    const { parts, told } = fastened({
      handle: { tabs: { length: 7.5 } },
      joints: { 'grip-west': by, 'grip-east': by },
    });
    const [found, ...more] = told('hole-crowded');
    expect(more).toEqual([]); // the same at both grips, told once
    expect(spoken(found)?.message).toMatch(
      /^joints grip-west, grip-east: holes without room on handle, .*: 1;/,
    );
    expect(parts.find((p) => p.name === 'handle')?.flat.holes).toEqual([]);
    expect(parts.find((p) => p.name === 'end')?.flat.holes).toHaveLength(1);
  });

  test('a hole of the family counts: a rivet over the hole of a bar is not cut', () => {
    const tote = (below: number) => ({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      parts: [
        {
          name: 'end',
          family: 'tote-end',
          width: 100,
          shoulderHeight: 60,
          height: 120,
          crownWidth: 60,
          tabs: { length: 12 },
          bar: { diameter: 26, below },
        },
        { name: 'grip', family: 'bent-strip', width: 40, legs: [30, 30], angles: [90] },
      ],
      joints: [
        {
          name: 'hold',
          from: 'end.crown',
          to: 'grip.leg-2-back',
          by: { 'blind-rivet': { count: 1 } },
          shift: { up: -20 },
        },
      ],
    });
    expect(codesOf(plan(tote(20)))).toContain('hole-crowded');
    expect(codesOf(plan(tote(70)))).not.toContain('hole-crowded');
  });
});

describe('more than two sheets in the stack', () => {
  const bin = (change: object, shift: number) => ({
    units: 'mm',
    stock: { material: 'mild-steel', thickness: T },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: R },
    parts: [
      { name: 'bin', family: 'open-box', length: 200, width: 100, height: 60, ...change },
      { name: 'hanger', family: 'bent-strip', width: 60, legs: [40, 30], angles: [90] },
    ],
    joints: [
      { name: 'rim', from: 'bin.north-out', to: 'hanger.leg-2-back', by: 'spot-weld', shift: { up: shift } },
    ],
  });

  test('a hanger on the closed hem of a wall: three sheets, told', () => {
    const found = plan(bin({ hem: { type: 'closed', length: 20 } }, -15)).findings;
    expect(found.find((f) => f.code === 'weld-layers')).toMatchObject({ value: 3, part: 'bin' });
  });

  test('three sheets want 1.3 times the pitch of two: welds 20 mm apart stand too close for them', () => {
    // 1.30 for three sheets: dbmimports.com spot-welding notes, read; 19.5 mm by table 8.1 of a welder's manual
    const hemmed = bin({ hem: { type: 'closed', length: 20 } }, -15);
    const ask = (job: ReturnType<typeof bin>, pitch: number) => {
      const joints = job.joints.map((j) => ({ ...j, by: { 'spot-weld': { pitch } } }));
      return plan({ ...job, joints }).findings.find((f) => f.code === 'pitch-close');
    };
    const found = ask(hemmed, 20);
    expect(found?.limit).toBeCloseTo(1.3 * 19.5, 9);
    expect(spoken(found)?.source).toContain('× 1.3 (n = 3)');
    expect(ask(bin({}, -15), 20)).toBeUndefined();
  });

  test('the same hanger below the hem, or on a wall without one: nothing of the kind', () => {
    const below = plan(bin({ hem: { type: 'closed', length: 10 } }, -30)).findings;
    const plain = plan(bin({}, -15)).findings;
    for (const found of [below, plain]) expect(found.map((f) => f.code)).not.toContain('weld-layers');
  });

  test('a hem folded open is no stack: the sheets stand apart', () => {
    const found = plan(bin({ hem: { type: 'open', length: 20, gap: 3 } }, -15)).findings;
    expect(found.map((f) => f.code)).not.toContain('weld-layers');
  });
});

describe('a tab that stands past an edge', () => {
  // the slopes of the end: half its width less half the crown, over its height less the shoulder
  const past = (crownWidth: number, narrower = 0) => {
    const { told, parts } = fastened({ end: { crownWidth }, handle: { width: HANDLE.width - narrower } });
    const tab = parts.find((p) => p.name === 'handle')?.formed.panels.find((p) => p.id === 'tab-west');
    const half = Math.max(...(tab?.shape.map(([x]) => Math.abs(x - (HANDLE.width - narrower) / 2)) ?? []));
    const [run, rise] = [(END.width - crownWidth) / 2, END.height - 48];
    // its upper corners lie a setback under the crown
    const aside = half - crownWidth / 2 - ((T + R) * run) / rise;
    return { found: told('joint-overhang'), wanted: (aside * rise) / Math.hypot(run, rise) };
  };

  test('a crown narrower than the handle: by how much, square to the slope', () => {
    const { found, wanted } = past(25);
    expect(wanted).toBeGreaterThan(2);
    expect(found.map((f) => f.value)).toEqual([expect.closeTo(wanted, 6), expect.closeTo(wanted, 6)]);
    expect(spoken(found[0])?.message).toMatch(
      /^joint grip-west: tab-west of handle stands .* past the edge of end-1$/,
    );
  });

  test('narrower on each side by what it says, the tab lies on the crown', () => {
    expect(past(25, 2 * (past(25).found[0]?.value ?? 0) + 2).found).toEqual([]);
    expect(past(HANDLE.width).found).toEqual([]);
  });
});

describe('the reach of the arms', () => {
  // two angles back to back, legs of 40 by 200: a weld in the middle is 20 mm less half a radius from the free edge
  const angles = (throat: number) =>
    plan({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: T },
      bending: { rule: 'k-factor', k: 0.42, insideRadius: R },
      parts: ['rail', 'batten'].map((name) => ({
        name,
        family: 'bent-strip',
        width: 200,
        legs: [40, 40],
        angles: [90],
      })),
      joints: [
        {
          name: 'back',
          from: 'rail.leg-1-back',
          to: 'batten.leg-1-back',
          by: { 'spot-weld': { throat, count: 1 } },
        },
      ],
    });

  test('the shortest way over the sheets counts: from the weld to the free edge of the leg', () => {
    const { assembly, findings } = angles(5);
    const [weld] = assembly?.fasteners ?? [];
    const found = findings.find((f) => f.code === 'weld-throat');
    expect(found?.value).toBeCloseTo(weld?.on[0]?.at[0] ?? 0, 6);
    expect(found?.limit).toBe(5);
    expect(found?.value).toBeLessThan(40 / 2);
  });

  test('arms that reach are not spoken of', () => {
    expect(angles(150).findings.map((f) => f.code)).not.toContain('weld-throat');
  });
});

describe('what is told', () => {
  test('a metal that gives off zinc is told once for all joints, with their names', () => {
    const { told } = fastened({ head: { stock: { material: 'galvanised-steel', thickness: 1 } } });
    const found = told('weld-zinc');
    expect(found).toHaveLength(1);
    expect(spoken(found[0])?.message).toMatch(/^joints west, east, grip-west, grip-east: /);
  });

  test('faces that do not meet: nothing can be fastened', () => {
    const { told, on } = fastened({ joints: { west: { shift: { up: 500 } } } });
    expect(told('joint-empty')).toMatchObject([{ severity: 'error', part: 'body' }]);
    expect(spoken(told('joint-empty')[0])?.message).toContain('do not lie over each other');
    expect(on('west')).toEqual([]);
  });

  test('faces kept apart by a bend: nothing can be fastened, and the gap is told', () => {
    // an end so wide that it stands on the bends of the sides, of 3 mm inside
    const { told } = fastened({
      head: { bending: { rule: 'k-factor', insideRadius: 3 } },
      end: { width: { of: 'body.insideWidth', less: 0.4 }, cornerNip: 'auto' },
    });
    const [found] = told('joint-empty');
    // R − √(R² − (R − c)²), R 3 mm, c 0.2 mm
    expect(found?.value).toBeCloseTo(3 - Math.sqrt(9 - 2.8 ** 2), 6);
    expect(spoken(found)?.message).toContain(
      '1.92 mm stay open between body.west and end-1.rim, 0.5 mm at most',
    );
  });

  test('a count for one end only: the one pattern of both ends carries the marks of both', () => {
    const { told, parts, on } = fastened({ joints: { east: { by: { 'spot-weld': { count: 6 } } } } });
    const [found, ...more] = told('pieces-differ');
    expect(more).toEqual([]);
    expect(found).toMatchObject({ part: 'end', severity: 'warning' });
    const marks = parts.find((p) => p.name === 'end')?.flat.marks.length ?? 0;
    expect(marks).toBe(found?.value);
    expect(marks).toBeGreaterThan(Math.max(on('west').length, on('east').length) + 2);
  });

  test('a handle tab no wider than one weld gets one', () => {
    const { on } = fastened({ handle: { width: 22 } });
    expect(22).toBeLessThan(HANDLE.width);
    expect(on('grip-west')).toHaveLength(1);
  });
});

describe('one fastener only', () => {
  const one = { by: { 'spot-weld': { count: 1 } } };

  test('the parts can turn about it: a warning with what takes a second one', () => {
    const { told } = fastened({ joints: { 'grip-west': one, 'grip-east': one } });
    const [found, other] = told('joint-turns');
    expect(other?.where.joints).toEqual(['grip-east']);
    expect(found).toMatchObject({ severity: 'warning', value: 1, limit: 2 });
    expect(spoken(found)?.message).toMatch(
      /^joint grip-west: .* by one fastener only, and can turn about it$/,
    );
    expect(spoken(found)?.fix).toBe('ask for 2');
  });

  test('a narrow handle: by how much its tab is short of a second weld, and with that it takes two', () => {
    const narrow = fastened({ handle: { width: 30 } });
    const [found] = narrow.told('joint-turns');
    const [, more] = /over each other by ([\d.]+) mm more/.exec(spoken(found)?.fix ?? '') ?? [];
    expect(Number(more)).toBeGreaterThan(0);
    expect(fastened({ handle: { width: 30 + Number(more) } }).told('joint-turns')).toEqual([]);
  });

  test('two or more: nothing', () => {
    expect(fastened({}).told('joint-turns')).toEqual([]);
  });
});
