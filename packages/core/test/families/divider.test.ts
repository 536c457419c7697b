import { type JobPlan, planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';

const crossing = (long: object = {}, cross: object = {}): JobPlan =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      parts: [
        {
          name: 'long',
          family: 'divider',
          length: 200,
          height: 50,
          slots: { at: [80], from: 'top' },
          ...long,
        },
        {
          name: 'cross',
          family: 'divider',
          length: 120,
          height: 50,
          slots: { at: [60], from: 'bottom' },
          ...cross,
        },
      ],
      joints: [{ name: 'cross', from: 'long.slot-1', to: 'cross.slot-1', by: 'none', clearance: 0.1 }],
    }),
  );

test('slots are half as deep as the divider is high, and half the play more', () => {
  const [long] = crossing().parts;
  const bottom = (long?.flat.outline ?? []).map((v) => v.at).filter(([x]) => x > 78 && x < 82);
  const widths = bottom.map(([x]) => x);
  expect(Math.max(...widths) - Math.min(...widths)).toBeCloseTo(1.2, 9);
  expect(Math.min(...bottom.map(([, y]) => y))).toBeCloseTo(50 - 25.1, 9);
});

test('dividers that cross stand square on one floor and do not touch', () => {
  const { assembly, findings } = crossing();
  const [a, b] = assembly?.placed ?? [];
  const dot = (p: readonly number[] = [], q: readonly number[] = []) =>
    p.reduce((s, v, i) => s + v * (q[i] ?? 0), 0);
  expect(dot(a?.pose.z, b?.pose.z)).toBeCloseTo(0, 12);
  // both have y up and stand on the same height
  expect(dot(a?.pose.y, b?.pose.y)).toBeCloseTo(1, 12);
  expect(b?.pose.origin[1]).toBeCloseTo(0, 9);
  expect(assembly?.fits[0]?.found).toBeCloseTo(0.1, 9);
  expect(findings.map((f) => f.code)).toEqual([]);
});

test('a thicker divider that crosses a slot of one sheet is found to clash', () => {
  const { findings } = crossing({}, { stock: { material: 'mild-steel', thickness: 2 } });
  expect(findings.map((f) => f.code)).toContain('clash');
});

test('a slot for what crosses is as wide as said', () => {
  const { findings, assembly } = crossing(
    { slots: { at: [80], from: 'top', crossing: 2 } },
    { stock: { material: 'mild-steel', thickness: 2 }, slots: { at: [60], from: 'bottom', crossing: 1 } },
  );
  expect(findings.map((f) => f.code)).toEqual([]);
  expect(assembly?.fits[0]?.found).toBeCloseTo(0.1, 9);
});

test('slots that leave no metal between them, or run into each other, are refused by their place in the list', () => {
  const cut = (...at: readonly number[]) => crossing({ slots: { at, from: 'top' } });
  expect(() => cut(60, 61.5)).toThrow(/slots.at\[1\]: 61.5 mm given, too little metal would be left/);
  // every size that is named works alone
  expect(() => cut(60, 61.5)).toThrow(/slots.at\[0\]: .+ Use 59.8 mm or less\.$/m);
  expect(() => cut(59.8, 61.5)).not.toThrow();
  expect(() => cut(60, 61.5)).toThrow(/slots.clearance: 0.2 mm given, .+ Use 0 mm\.$/m);
  expect(() => crossing({ slots: { at: [60, 61.5], from: 'top', clearance: 0 } })).not.toThrow();
  expect(() => cut(60, 60.5)).toThrow(/slots.at\[1\]: 60.5 mm given, panel "plate" has no room for the slot/);
});

test('a slot deeper than the divider is high is refused by what makes it so deep', () => {
  const slots = { at: [60], from: 'top', clearance: 10 };
  expect(() => crossing({ height: 9, slots })).toThrow(/slots.clearance: 10 mm given/);
});
