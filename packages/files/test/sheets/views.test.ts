import type { Formed, Point } from '@tinwright/core';
import type { Drawing } from '@tinwright/files';
import { viewsDrawing } from '@tinwright/files';
import { dxfOf } from '@tinwright/files/internal';
import { describe, expect, test } from 'vitest';
import { layerOf, numbers, readDxf } from '../dxf-reader.js';
import { planned } from '../samples.js';

const APART = 20; // mm between two views

const plans = planned([
  {
    name: 'channel',
    family: 'hemmed-channel',
    length: 200,
    width: 110,
    height: 45,
    hem: { type: 'closed', length: 10 },
    endTabs: { length: 15 },
  },
  { name: 'tray', family: 'open-box', length: 120, width: 80, height: 40 },
  { name: 'hook', family: 'bent-strip', width: 30, legs: [40, 30], angles: [90] },
]).parts;

function ends({ layers }: Drawing): readonly Point[] {
  return layers.flatMap((l) => l.shapes.flatMap((s) => (s.kind === 'line' ? [s.from, s.to] : [])));
}

/** Points of a drawing split where 20 mm are left free between two views. */
function views(drawing: Drawing, { size }: Formed) {
  const points = ends(drawing);
  const min = [0, 1].map((k) => Math.min(...points.map((p) => p[k] as number))) as [number, number];
  // front view above the top view, the side view right of the front view
  const right = min[0] + size[0] + APART / 2;
  const over = min[1] + size[1] + APART / 2;
  return {
    front: points.filter((p) => p[0] < right && p[1] > over),
    top: points.filter((p) => p[0] < right && p[1] < over),
    side: points.filter((p) => p[0] > right),
  };
}

const extent = (points: readonly Point[], k: 0 | 1) =>
  [Math.min(...points.map((p) => p[k])), Math.max(...points.map((p) => p[k]))] as const;
const size = (points: readonly Point[], k: 0 | 1) => extent(points, k)[1] - extent(points, k)[0];

describe.each(plans.map((p) => [p.name, p] as const))('%s', (_, plan) => {
  const drawing = viewsDrawing('views', plan);
  const { front, top, side } = views(drawing, plan.formed);
  const [x, y, z] = plan.formed.size;

  test('front view: length by height, true to scale', () => {
    expect(size(front, 0)).toBeCloseTo(x, 6);
    expect(size(front, 1)).toBeCloseTo(z, 6);
  });

  test('top view below it: length by width', () => {
    expect(size(top, 0)).toBeCloseTo(x, 6);
    expect(size(top, 1)).toBeCloseTo(y, 6);
  });

  test('side view to its right: width by height', () => {
    expect(size(side, 0)).toBeCloseTo(y, 6);
    expect(size(side, 1)).toBeCloseTo(z, 6);
  });

  test('views stand in line with each other, 20 mm apart', () => {
    // first-angle arrangement, ISO 5456-2: seen from above below, seen from the left to the right
    expect(extent(top, 0)[0]).toBeCloseTo(extent(front, 0)[0], 6);
    expect(extent(side, 1)[0]).toBeCloseTo(extent(front, 1)[0], 6);
    expect(extent(front, 1)[0] - extent(top, 1)[1]).toBeCloseTo(APART, 6);
    expect(extent(side, 0)[0] - extent(front, 0)[1]).toBeCloseTo(APART, 6);
  });

  test('nothing but lines, in the box of the drawing', () => {
    for (const { shapes } of drawing.layers) for (const s of shapes) expect(s.kind).toBe('line');
    expect(drawing.box.min[0]).toBeCloseTo(extent([...front, ...top], 0)[0], 6);
    expect(drawing.box.max[0]).toBeCloseTo(extent(side, 0)[1], 6);
  });

  test('as DXF every line is there, on the layers of pictures', () => {
    const { entities, layers } = readDxf(dxfOf(drawing, 'r2000'));
    const lines = entities.filter((e) => e.type === 'LINE');
    expect(lines).toHaveLength(drawing.layers.reduce((s, l) => s + l.shapes.length, 0));
    for (const e of lines) expect(layers).toContain(layerOf(e));
    const widest = Math.max(...lines.flatMap((e) => numbers(e, 10, 11)));
    expect(widest).toBeCloseTo(drawing.box.max[0], 4);
  });
});

test('seen from the west, a flange at the east end stands behind the base', () => {
  // a strip along x with its upright leg in the east: from the front an L, from the west a plain rectangle
  const [hook] = plans.filter((p) => p.name === 'hook');
  if (hook === undefined) throw new Error('no hook');
  const { side } = views(viewsDrawing('views', hook), hook.formed);
  const [low, high] = extent(side, 1);
  // the end of the base, a thickness high, is drawn over the leg
  const heights = new Set(side.map((p) => Math.round((p[1] - low) * 1e4) / 1e4));
  expect(heights).toContain(1);
  expect(high - low).toBeCloseTo(30, 6);
});
