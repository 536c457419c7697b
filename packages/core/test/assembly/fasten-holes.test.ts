import type { PartPlan } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { codesOf, plan } from '../carrier.js';
import { fastened, sidesOf } from './fastened.js';

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
