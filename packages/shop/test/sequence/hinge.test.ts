// Poses of both sides at the hinge of a leaf, against arithmetic of the bend: an arc from tangent line to tangent line.
import type { PartPlan, Point } from '@tinwright/core';
import type { Action } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { foldTree } from '../../src/sequence/part/fold-tree.js';
import type { HeldSide } from '../../src/sequence/part/line.js';
import { type LumpStand, lineBook } from '../../src/sequence/part/line-stands.js';
import { NONE } from '../../src/sequence/part/mask.js';
import { type LineStroke, workOf } from '../../src/sequence/part/operations.js';
import { planned } from '../shops.js';

const [T, R] = [1, 1.5];
const bending = { bending: { rule: 'k-factor', insideRadius: R } };
const DEGREE = Math.PI / 180;

/** Least and greatest distance forward of the hinge of both sides before the stroke, and the free side's section. */
function sidesAt(
  { part }: PartPlan,
  fold: { angle: number; setBack: number },
  action: Action,
  held: HeldSide,
) {
  const work = workOf(foldTree(part, fold));
  const operation = work.operations.find((o) => o.action === action) as LineStroke;
  const panels = lineBook(work)(operation, held).lumps.filter((l) => l.lump.kind === 'panel');
  const [still = [], moving = []] = [false, true].map((m) =>
    panels.filter((l) => l.moves === m).flatMap((l) => l.at(NONE) ?? []),
  );
  const x = (of: readonly LumpStand[]) =>
    [Math.min(...of.map((s) => s.x[0])), Math.max(...of.map((s) => s.x[1]))] as const;
  return { still: x(still), moving: x(moving), section: moving[0]?.solids[0]?.section ?? [] };
}

const turned = (section: readonly Point[], angle: number): readonly Point[] =>
  section.map(([x, z]) => [
    x * Math.cos(angle) - z * Math.sin(angle),
    x * Math.sin(angle) + z * Math.cos(angle),
  ]);

describe.each([30, 60, 90, 100, 120, 135, 150])('a bend of %d degrees', (angle) => {
  const plan = planned({ family: 'bent-strip', width: 40, legs: [50, 30], angles: [angle] }, bending);
  // legs between the outer faces' corner and the edge, over 90° between the outer tangent and the edge
  const setback = (R + T) * (angle > 90 ? 1 : Math.tan((angle * DEGREE) / 2));
  const toHinge = (R + T) * Math.tan((angle * DEGREE) / 2);

  test.each([
    ['parent', 50, 30],
    ['child', 30, 50],
  ] as const)('%s held: turned about the hinge the free side is the end of the arc', (held, own, other) => {
    const { still, section } = sidesAt(plan, { angle: 120, setBack: 2 }, 'bend', held);
    expect(still[1]).toBeCloseTo(-toHinge, 9);
    expect(still[0]).toBeCloseTo(-toHinge - (own - setback), 9);
    // from the held tangent line, round an axis R over the inside, and straight on
    const [a, out] = [angle * DEGREE, other - setback];
    const expected = [R + T, R].flatMap((r) =>
      [0, out].map(
        (along): Point => [
          -toHinge + r * Math.sin(a) + along * Math.cos(a),
          T + R - r * Math.cos(a) + along * Math.sin(a),
        ],
      ),
    );
    const found = turned(section, a);
    for (const [x, z] of expected)
      expect(Math.min(...found.map((p) => Math.hypot(p[0] - x, p[1] - z)))).toBeLessThan(1e-9);
  });
});

test('a hem is folded with its line a set-back behind the hinge, and is as long as its metal', () => {
  const hem = { type: 'open', length: 12, gap: 2 };
  const shape = { family: 'open-box', length: 120, width: 80, height: 30, hems: { north: hem } };
  const plan = planned(shape, bending);
  const fold = { angle: 120, setBack: 2 };
  const { still, moving } = sidesAt(plan, fold, 'fold', 'parent');
  expect(still[1]).toBeCloseTo(-2, 9);
  // what room the nose leaves: R = 2 / tan 60° − 1; outer faces meet 2 in front of either tangent line
  const { zone } = plan.flat.bends.find((b) => b.hem !== null) as PartPlan['flat']['bends'][number];
  const room = 2 / Math.tan(60 * DEGREE) - T;
  const wound = 120 * DEGREE * (room + T / 2);
  expect(wound).toBeLessThan(zone);
  expect(moving[0]).toBeCloseTo(2 + zone - wound, 9);
});
