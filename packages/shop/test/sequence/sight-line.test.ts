import { FAMILIES, type FlatBend, outsideSetback, type Point } from '@tinwright/core';
import { DEFAULT_SHOP, planSequence } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { planned } from '../shops.js';

type Line = readonly [Point, Point];

/** How far a point lies to the left of a line, mm. */
function left([a, b]: Line, p: Point): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  return (dx * (p[1] - a[1]) - dy * (p[0] - a[0])) / Math.hypot(dx, dy);
}

test('tangent lines run with the parent on their right, in every family', () => {
  for (const family of FAMILIES) {
    const { flat } = planned({ ...family.describe.example, family: family.name });
    for (const { tangents, zone } of flat.bends) {
      const [parent, child] = tangents;
      expect(left(parent, child[0]), `${family.name}`).toBeCloseTo(zone, 6);
      expect(left(child, parent[0]), `${family.name}`).toBeCloseTo(-zone, 6);
    }
  }
});

describe('rule nominal: lines that stand in the middle of the metal that bends', () => {
  const inch = 25.4;
  const plan = planned(
    {
      family: 'hemmed-channel',
      length: 15.5 * inch,
      width: 7 * inch,
      height: 2 * inch,
      hem: { type: 'closed', length: 0.5 * inch },
    },
    {
      stock: { material: 'galvanised-steel', thickness: 0.76 },
      bending: { rule: 'nominal', insideRadius: 0.76 },
    },
  );
  const { steps } = planSequence(plan, DEFAULT_SHOP);

  test('the sight line lies a set-back behind where the outside faces meet: half of what the metal grows past the line', () => {
    const set = steps.filter((s) => s.sight !== null && s.action === 'bend');
    expect(set).not.toHaveLength(0);
    for (const { bends, sight, held, setBack } of set)
      for (const [i, id] of bends.entries()) {
        const bend = plan.flat.bends.find((b) => b.id === id) as FlatBend;
        const inHeld = left(bend.line, middleOf(held)) > 0 ? 1 : -1;
        const [a] = (sight as readonly Line[])[i] as Line;
        const { thickness } = plan.flat;
        const formed = { thickness, insideRadius: bend.insideRadius, angle: bend.angle };
        const grows = outsideSetback(formed) - bend.zone / 2;
        expect(left(bend.line, a) * inHeld, id).toBeCloseTo((setBack as number) - grows, 6);
      }
  });

  function middleOf(panel: string): Point {
    const { shape } = plan.flat.panels.find((p) => p.id === panel) as (typeof plan.flat.panels)[number];
    const sum = shape.reduce<Point>((s, p) => [s[0] + p[0], s[1] + p[1]], [0, 0]);
    return [sum[0] / shape.length, sum[1] / shape.length];
  }
});
