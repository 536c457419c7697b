import type { Fastener, PartPlan } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { type Changes, carrier, plan, R, T } from '../carrier.js';
import { fastened, sidesOf } from './fastened.js';

const INCH = 25.4;

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
