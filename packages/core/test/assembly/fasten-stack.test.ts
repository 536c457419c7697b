import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { END, HANDLE, plan, R, T } from '../carrier.js';
import { fastened } from './fastened.js';

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
