import type { JobPlan } from '@tinwright/core';
import { manifestOf } from '@tinwright/files';
import { manifestText } from '@tinwright/files/internal';
import { describe, expect, test } from 'vitest';
import { plannedCarrier } from './carrier.js';
import { planned } from './samples.js';

interface WrittenAssembly {
  readonly placements: readonly { readonly name: string; readonly part: string; readonly matrix: number[] }[];
  readonly fasteners: readonly {
    readonly id: string;
    readonly kind: string;
    readonly joint: string;
    readonly on: readonly { readonly placement: string; readonly mark: number }[];
  }[];
  readonly fits: readonly { readonly joint: string; readonly asked: number; readonly found: number }[];
}

interface WrittenMark {
  readonly kind: string;
  readonly at: readonly [number, number];
  readonly joint: string;
  readonly centre?: readonly [number, number];
  readonly diameter?: number;
}

const writtenJob = (plan: JobPlan) =>
  JSON.parse(
    manifestText(manifestOf(plan, ({ name }) => ({ dxf: `${name}.dxf`, svg: `${name}.svg` }), [])),
  ) as { readonly parts: { name: string; marks: WrittenMark[] }[]; readonly assembly?: WrittenAssembly };

describe('an object in the manifest', () => {
  const { parts, assembly } = writtenJob(plannedCarrier());

  test('every piece is placed by name, with the part it is one of', () => {
    expect(assembly?.placements.map(({ name, part }) => [name, part])).toEqual([
      ['body', 'body'],
      ['end-1', 'end'],
      ['end-2', 'end'],
      ['handle', 'handle'],
    ]);
  });

  test('matrices are column-major, turn without mirroring, and end with 0 0 0 1', () => {
    for (const { matrix: m } of assembly?.placements ?? []) {
      expect(m).toHaveLength(16);
      expect([m[3], m[7], m[11], m[15]]).toEqual([0, 0, 0, 1]);
      const at = (row: number, column: number) => m[4 * column + row] as number;
      const det = [0, 1, 2].reduce((sum, k) => {
        const [i, j] = [(k + 1) % 3, (k + 2) % 3];
        return sum + at(0, k) * (at(1, i) * at(2, j) - at(1, j) * at(2, i));
      }, 0);
      expect(det).toBeCloseTo(1, 9);
    }
  });

  test('a fastener is a mark of its kind and joint on each of two pieces', () => {
    expect(assembly?.fasteners.length).toBeGreaterThan(10);
    for (const { kind, joint, on, id } of assembly?.fasteners ?? []) {
      expect(on, id).toHaveLength(2);
      for (const { placement, mark } of on) {
        const part = assembly?.placements.find((p) => p.name === placement)?.part;
        const found = parts.find((p) => p.name === part)?.marks[mark];
        expect(found?.kind, id).toBe(kind);
        if (!placement.startsWith('end')) expect(found?.joint, id).toBe(joint); // two ends share marks
      }
    }
  });

  test('every fastener has a name of its own', () => {
    const ids = assembly?.fasteners.map((f) => f.id) ?? [];
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('every joint has its clearance asked and found', () => {
    expect(assembly?.fits.map((f) => f.joint)).toEqual(['west', 'east', 'grip-west', 'grip-east']);
    for (const { asked, found } of assembly?.fits ?? []) expect(found).toBeGreaterThanOrEqual(asked);
  });

  test('a mark with a hole has its centre and diameter, and stands on metal beside it', () => {
    const riveted = writtenJob(plannedCarrier('blind-rivet')).parts.flatMap((p) => p.marks);
    expect(riveted.length).toBeGreaterThan(10);
    for (const { at, centre, diameter = 0 } of riveted) {
      expect(diameter).toBe(3.35); // middle of the band for 3.2 mm, from memory
      expect(Math.hypot(at[0] - (centre?.[0] ?? 0), at[1] - (centre?.[1] ?? 0))).toBeGreaterThan(
        diameter / 2,
      );
    }
  });

  test.each([
    ['plug welds', 'plug-weld'],
    ['plug welds side by side', { 'plug-weld': { count: 40, diameter: 6 } }],
    ['rivets whose holes have no room', { 'blind-rivet': { count: 90 } }],
  ])('%s: every mark lies on metal, in no hole of its own or another', (_, by) => {
    const plan = plannedCarrier(by);
    for (const { name, marks } of writtenJob(plan).parts) {
      const holes = marks.filter((m) => m.diameter !== undefined);
      const part = plan.parts.find((p) => p.name === name);
      expect(new Set(holes.map((h) => JSON.stringify(h.centre))).size).toBe(part?.flat.holes.length);
      for (const { at } of marks)
        for (const { centre = [0, 0], diameter = 0 } of holes)
          expect(Math.hypot(at[0] - centre[0], at[1] - centre[1])).toBeGreaterThan(diameter / 2);
    }
  });

  test('a job without joints has none', () => {
    const tray = planned([{ name: 'tray', family: 'open-box', length: 120, width: 80, height: 40 }]);
    expect(writtenJob(tray)).not.toHaveProperty('assembly');
  });
});
