// The state of a part in a machine against the fold routine that replays plans, and against the finished part.
import type { FlatBend, PartPlan, Vec3 } from '@tinwright/core';
import { place3, radians, type Standing, sub3 } from '@tinwright/core/internal';
import { type BendStep, DEFAULT_SHOP, planSequence, type Shop, stateAt } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { folded } from '../../src/replay/folding.js';
import { apply, type Rigid } from '../../src/replay/rigid.js';
import { pressShop, straight, vDie } from '../press-shop.js';
import { planned } from '../shops.js';

const press = pressShop([straight(10)], [vDie(8, 10)]);
const body = planned({
  family: 'hemmed-channel',
  length: 320,
  width: 160,
  height: 50,
  hem: { type: 'closed', length: 12 },
  endTabs: { length: 20 },
});
const box = planned({ family: 'open-box', length: 180, width: 120, height: 40 });
const strip = planned({ family: 'bent-strip', width: 40, legs: [60, 80, 30], angles: [45, -120] });
const cases: readonly (readonly [string, PartPlan, Shop])[] = [
  ['channel on the brake', body, DEFAULT_SHOP],
  ['box on the brake', box, DEFAULT_SHOP],
  ['box on a press', box, press],
  ['strip on the brake', strip, DEFAULT_SHOP],
];

/** Corners of every panel's unmarked face. */
const corners = ({ panels }: Pick<Standing, 'panels'>): readonly Vec3[] =>
  panels.flatMap((p) => p.shape.map(([x, y]) => place3(p.pose, [x, y, 0])));

/** Distances between all corners. */
const spread = (points: readonly Vec3[]): readonly number[] =>
  points.flatMap((p, i) => points.slice(i + 1).map((q) => Math.hypot(...sub3(p, q))));

const farthest = (a: readonly number[], b: readonly number[]) =>
  Math.max(...a.map((v, i) => Math.abs(v - (b[i] as number))));

describe.each(cases)('%s', (_, part, shop) => {
  const { steps } = planSequence(part, shop);

  test('the order has operations', () => {
    expect(steps.length).toBeGreaterThan(1);
  });

  test('after the last operation it is the finished part', () => {
    const { after } = stateAt(part, steps, steps.length - 1);
    expect(farthest(spread(corners(after)), spread(corners(part.formed)))).toBeLessThan(1e-6);
  });

  test('before the first it is the flat pattern', () => {
    const flat = part.flat.panels.flatMap((p) => p.shape.map(([x, y]): Vec3 => [x, y, 0]));
    const { before } = stateAt(part, steps, 0);
    expect(farthest(spread(corners(before)), spread(flat))).toBeLessThan(2e-3);
  });

  test('in between it stands as the fold routine of the replay has it', () => {
    steps.forEach((step, i) => {
      const { before } = stateAt(part, steps, i);
      if (steps.slice(0, i).some((s) => s.action === 'fold' && !closed(steps, i, s))) return;
      const done = new Set(steps.slice(0, i).flatMap((s) => s.bends));
      const poses = folded(part.flat, step.held, (b: FlatBend) => (done.has(b.id) ? radians(b.angle) : 0));
      const other = part.flat.panels.flatMap((p) =>
        p.shape.map(([x, y]) => apply(poses.get(p.id) as Rigid, [x, y, 0])),
      );
      expect(farthest(spread(corners(before)), spread(other))).toBeLessThan(2e-3);
    });
  });

  test('what is held rests while the rest turns, and before the stroke it lies on z = 0 with the right face up', () => {
    steps.forEach((step, i) => {
      const { before, after, moving } = stateAt(part, steps, i);
      const held = (s: Standing) => corners({ panels: s.panels.filter((p) => p.id === step.held) });
      expect(moving.has(step.held)).toBe(false);
      if (step.machine !== 'brake') return;
      held(before).forEach((p, k) => {
        expect(Math.hypot(...sub3(p, held(after)[k] as Vec3))).toBeLessThan(1e-6);
        expect(p[2]).toBeCloseTo(step.faceUp === 'marked' ? 0 : part.flat.thickness, 6);
        expect(p[0]).toBeLessThan(1e-6);
      });
    });
  });
});

const closed = (steps: readonly BendStep[], i: number, { bends }: BendStep) =>
  steps.slice(0, i).some((s) => s.action === 'close' && s.bends.join() === bends.join());

test('on a press the inner faces meet at the origin and both sides rise by half the angle', () => {
  const part = planned({ family: 'bent-strip', width: 40, legs: [60, 60], angles: [90] });
  const { steps } = planSequence(part, press);
  const { before, after } = stateAt(part, steps, 0);
  // before: the middle of the bent material under the punch, upper face at z = 0
  const top = before.panels.flatMap((p) =>
    p.shape.map(([x, y]) => place3(p.pose, [x, y, part.flat.thickness])),
  );
  const gap = top.map((p) => p[0]).toSorted((a, b) => Math.abs(a) - Math.abs(b));
  expect(gap[0]).toBeCloseTo(-(gap[2] as number), 4);
  for (const p of top) expect(p[2]).toBeCloseTo(0, 3);
  for (const p of after.panels.flatMap((q) =>
    q.shape.map(([x, y]) => place3(q.pose, [x, y, part.flat.thickness])),
  ))
    expect(p[2]).toBeCloseTo(Math.abs(p[0]), 4);
});

test('an operation the order lacks is refused', () => {
  const { steps } = planSequence(strip, DEFAULT_SHOP);
  expect(() => stateAt(strip, steps, steps.length)).toThrow(/operation 2 given, 0 to 1 allowed/);
});
