import type { FlatBend, Point } from '@tinwright/core';
import { type BendStep, type Brake, DEFAULT_SHOP, planSequence, type Shop, stateAt } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { outerMeet } from '../../src/sequence/part/hinge-reach.js';
import { sightOffset } from '../../src/sequence/part/line.js';
import { planned, shopWith } from '../shops.js';

/** Distance of a point from a line. */
const off = ([p, q]: readonly [Point, Point], [x, y]: Point) =>
  Math.abs((q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0])) / Math.hypot(q[0] - p[0], q[1] - p[1]);

describe('where the nose stands', () => {
  test('with a set-back of T it is one inside radius from the tangent line (FAA-H-8083-31)', () => {
    // R + T to the hinge at 90 degrees
    const reach = { held: outerMeet({ angle: 90, outside: 3 + 1 }), free: 0 };
    expect(sightOffset({ reach }, 1)).toBe(3);
  });

  test('with a set-back of R + T it is the tangent line', () => {
    const reach = { held: outerMeet({ angle: 90, outside: 3 + 1 }), free: 0 };
    expect(sightOffset({ reach }, 3 + 1)).toBe(0);
  });

  test('past 90 degrees the legs still meet at the hinge: a set-back that gives the radius is the tangent line', () => {
    // the corner of a hexagon round a circle of radius 2 lies 2 tan 60° from its tangent points
    const reach = { held: outerMeet({ angle: -120, outside: 2 }), free: 0 };
    expect(sightOffset({ reach }, 2 * Math.sqrt(3))).toBeCloseTo(0, 9);
  });

  // 70 x 100, walls 30 up on two opposite sides: blank 30 - 2 + arc each
  const channel = planned({ family: 'bent-strip', width: 100, legs: [30, 70, 30], angles: [90, 90] });
  const steps = (setBack: readonly [number, number]) =>
    planSequence(channel, shopWith({ setBack, rearStop: 600 })).steps;
  const bendOf = ({ bends: [id] }: BendStep) => channel.flat.bends.find((b) => b.id === id) as FlatBend;

  test('a brake that is set back by T only: the line lies R past the tangent line of what is held', () => {
    for (const step of steps([1, 1])) {
      const { tangents } = bendOf(step);
      const [sight] = step.sight as NonNullable<BendStep['sight']>;
      expect(step.sightOffset).toBeCloseTo(1, 9);
      const [own, other] = step.heldSide === 'parent' ? tangents : [tangents[1], tangents[0]];
      expect(off(own, sight?.[0] as Point)).toBeCloseTo(1, 9);
      // towards the bend: nearer to the other tangent line than the whole zone
      expect(off(other, sight?.[0] as Point)).toBeLessThan(bendOf(step).zone);
    }
  });

  test('stop distances: to the free edge, then to the outside of the wall that is up', () => {
    const [first, second] = steps([1, 4]) as readonly [BendStep, BendStep];
    // set-back R + T = 2: the nose stands on the tangent line
    expect(first.sightOffset).toBeCloseTo(0, 9);
    const zone = bendOf(first).zone;
    // the whole strip behind the line: leg of 30 to its tangent line, zone, base between its tangent lines
    expect(first.stopDistance).toBeCloseTo(28 + zone + 66, 6);
    // 70 over the walls, less the set-back in front
    expect(second.stopDistance).toBeCloseTo(68, 6);
  });
});

test('tools are told from the left as the operator sees them: he looks along the part from the free side', () => {
  // a strip with a wall up at one end of the line only
  const tray = planned({
    family: 'open-box',
    length: 200,
    width: 120,
    height: 40,
    hems: { north: { type: 'closed', length: 10 } },
  });
  const { steps } = planSequence(tray, shopWith());
  const done = new Set<string>();
  for (const step of steps) {
    const [id] = step.bends as [string];
    const sides = {
      north: ['west', 'east'],
      south: ['east', 'west'],
      east: ['north', 'south'],
      west: ['south', 'north'],
    };
    const ends = sides[id as keyof typeof sides];
    if (ends !== undefined && step.action === 'bend' && step.held === 'base' && step.tools?.length === 1) {
      const [group] = step.tools as [NonNullable<BendStep['tools']>[number]];
      // seen from the free side the marked face is up: left of north is east
      const [left] = step.faceUp === 'marked' ? [ends[1] as string] : [ends[0] as string];
      if (done.has(left)) expect(group.from).toBeGreaterThan(0);
    }
    if (step.action === 'bend') for (const b of step.bends) done.add(b);
  }
  expect(done.size).toBeGreaterThan(3);
});

describe('what lies against the rear stop is what it names, at the distance it tells', () => {
  const T = 1;
  const WITH_STOP: Shop = { ...DEFAULT_SHOP, brake: { ...(DEFAULT_SHOP.brake as Brake), rearStop: 600 } };
  test.each([
    [
      'box with hems',
      { family: 'open-box', length: 260, width: 180, height: 60, hem: { type: 'closed', length: 10 } },
    ],
    [
      'tabbed box',
      { family: 'open-box', length: 260, width: 180, height: 60, corner: 'tabbed', tabs: { length: 20 } },
    ],
    ['channel', { family: 'hemmed-channel', length: 320, width: 160, height: 50, endTabs: { length: 20 } }],
    ['strip both ways', { family: 'bent-strip', width: 80, legs: [40, 60, 80, 30], angles: [90, 45, -90] }],
  ] as const)('%s', (_, part) => {
    const plan = planned(part);
    const { steps } = planSequence(plan, WITH_STOP);
    const stopped = steps.flatMap((s, i) => (s.touches === null ? [] : [[s, i] as const]));
    expect(stopped.length).toBeGreaterThan(0);
    for (const [step, i] of stopped) {
      const { panels } = stateAt(plan, steps, i).before;
      const rear = panels
        .filter((p) => p.id === step.touches?.panel)
        .flatMap(({ shape, pose: { origin, x, y, z } }) =>
          shape.flatMap(([u, v]) => [0, T].map((w) => origin[0] + x[0] * u + y[0] * v + z[0] * w)),
        );
      // the hinge is at 0, the nose a set-back behind it; a closed hem reaches a thickness past its flat leaf
      const { panel, by } = step.touches as NonNullable<BendStep['touches']>;
      const folded = by === 'outside' && plan.flat.bends.some((b) => b.id === panel && b.hem !== null);
      const at = -(step.setBack ?? 0) - (step.stopDistance ?? 0);
      expect(Math.min(...rear), step.bends.join()).toBeCloseTo(at + (folded ? T : 0), 1);
    }
  });
});
