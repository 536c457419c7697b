import type { Seated } from '@tinwright/core';
import { polygonArea } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';
import { type Overlap, outward, overlapsOf } from '../../src/assembly/overlap.js';
import { BODY, type Changes, carrier, END, HANDLE, plan, R, T } from '../carrier.js';

const TAB = 20;

function overlaps(changes: Changes, joint: string): readonly Overlap[] {
  const seated = plan(carrier(changes)).assembly?.seated.find((s) => s.joint.name === joint);
  return overlapsOf(seated as Seated);
}

const extent = ({ shape }: Overlap) => {
  const size = (k: 0 | 1) => Math.max(...shape.map((p) => p[k])) - Math.min(...shape.map((p) => p[k]));
  return [size(0), size(1)];
};

describe('the ring of tabs under an end', () => {
  test('one overlap for each tab, named in the order of the site', () => {
    const found = overlaps({}, 'west');
    expect(found.map((o) => o.from.panel.id)).toEqual(['tab-west', 'tab-north-west', 'tab-south-west']);
    expect(found.map((o) => o.to.panel.id)).toEqual(['plate', 'plate', 'plate']);
    for (const o of found) expect(o.gap).toBeCloseTo(0, 9);
  });

  test('the tab on the base: as high as the tab less what the end stands off the floor', () => {
    const [tab] = overlaps({}, 'west') as [Overlap];
    const aside = (BODY.width - 2 * T - END.width) / 2;
    // outside leg of the tab less sheet and stand-off; the flat of the tab starts at its tangent line
    const [wide, high] = extent(tab) as [number, number];
    expect(high).toBeCloseTo(TAB - Math.max(T + aside, T + R), 6);
    expect(wide).toBeLessThan(END.width);
    expect(wide).toBeGreaterThan(END.width - 2 * TAB);
  });

  test('every shape is convex, counter-clockwise, and on both panels', () => {
    for (const joint of ['west', 'east', 'grip-west', 'grip-east'])
      for (const { shape, from } of overlaps({}, joint)) {
        const area = polygonArea(shape);
        expect(area).toBeGreaterThan(0);
        expect(area).toBeLessThanOrEqual(polygonArea(from.panel.shape) + 1e-6);
        const turns = shape.map((p, i) => {
          const [q, r] = [shape[(i + 1) % shape.length], shape[(i + 2) % shape.length]];
          return polygonArea([p, q as typeof p, r as typeof p]);
        });
        expect(Math.min(...turns)).toBeGreaterThanOrEqual(-1e-9);
      }
  });
});

test('a handle tab on a crown: its flat, as wide as the handle between the gaps', () => {
  const [tab, ...more] = overlaps({}, 'grip-west') as [Overlap];
  expect(more).toEqual([]);
  const [a, b] = extent(tab).toSorted((x, y) => x - y) as [number, number];
  // the flat starts at the tangent line; upwards the crown ends flush with the handle's top
  expect(a).toBeCloseTo(HANDLE.tabs - T - R, 6);
  expect(b).toBeLessThanOrEqual(HANDLE.width);
  expect(b).toBeGreaterThan(HANDLE.width - 2 * (R + T) - 2);
});

test('faces look at each other: their outward directions are opposite', () => {
  for (const { from, to } of overlaps({}, 'west')) {
    const [u, v] = [outward(from), outward(to)];
    for (const k of [0, 1, 2] as const) expect(u[k]).toBeCloseTo(-v[k], 9);
  }
});

test('parts drawn half a millimetre apart still overlap; further apart they do not', () => {
  // a plate 0.25 mm off the sides stands 0.34 mm off the tabs, hard against the sides a whole radius
  const width = (c: number) => ({ width: BODY.width - 2 * T - 2 * c, cornerNip: 6 });
  expect(overlaps({ end: width(0.25) }, 'west')).toHaveLength(3);
  expect(overlaps({ end: width(0) }, 'west')).toEqual([]);
});

test('a plate shifted past the tabs overlaps none of them', () => {
  expect(overlaps({ joints: { west: { shift: { up: 200 } } } }, 'west')).toEqual([]);
});
