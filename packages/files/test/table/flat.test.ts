import type { FlatPattern } from '@tinwright/core';
import type { Drawing, LayerName, Shape } from '@tinwright/files';
import { flatDrawing } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { drilledPlate, samples } from '../samples.js';

const on = (drawing: Drawing, name: LayerName): readonly Shape[] =>
  drawing.layers.find((l) => l.name === name)?.shapes ?? [];

describe('a plate with two holes, a mark, a lip up and a foot down', () => {
  const flat = drilledPlate();
  const drawing = flatDrawing(flat, 'rack plate', ['rack plate']);

  test('has the layers that hold something, and no others', () => {
    expect(drawing.layers.map((l) => l.name)).toEqual(['BEND-UP', 'BEND-DOWN', 'WELD-MARK', 'CUT', 'NOTE']);
  });

  test('cuts its holes before its outline, as circles of the size drilled', () => {
    const cut = on(drawing, 'CUT');
    expect(cut.map((s) => s.kind)).toEqual(['circle', 'circle', 'loop']);
    const radii = cut.flatMap((s) => (s.kind === 'circle' ? [s.radius] : []));
    expect(radii).toHaveLength(2);
    expect(radii[0]).toBeCloseTo(5, 9);
    expect(radii[1]).toBeCloseTo(2.1, 9);
  });

  test('has a hole where it was asked for: 30 mm from the other, 10 mm lower', () => {
    const [a, b] = on(drawing, 'CUT').flatMap((s) => (s.kind === 'circle' ? [s.centre] : []));
    expect((b?.[0] ?? 0) - (a?.[0] ?? 0)).toBeCloseTo(30, 9);
    expect((b?.[1] ?? 0) - (a?.[1] ?? 0)).toBeCloseTo(-10, 9);
  });

  test.each([
    [0, 1],
    [1, 0],
    [0.5, 1],
    [0.5, 0.5],
    [1, 0.999],
  ])('cuts a loop of two corners with bulges %d and %d as what it is, no circle', (a, b) => {
    const hole = [
      { at: [10, 10], bulge: a },
      { at: [20, 10], bulge: b },
    ] as const;
    const [shape] = on(flatDrawing({ ...flat, holes: [hole] }, 'lens', []), 'CUT');
    expect(shape).toEqual({ kind: 'loop', loop: hole });
  });

  test('marks a weld by two lines that cross on it', () => {
    const lines = on(drawing, 'WELD-MARK').flatMap((s) => (s.kind === 'line' ? [s] : []));
    expect(lines).toHaveLength(2);
    for (const { from, to } of lines)
      expect([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]).toEqual(flat.marks[0]?.at);
  });

  test.each(['cross', 'dash'] as const)('a %s near an edge ends on it', (style) => {
    const near: FlatPattern = {
      ...flat,
      outline: (
        [
          [0, 0],
          [50, 0],
          [50, 40],
          [0, 40],
        ] as const
      ).map((at) => ({ at, bulge: 0 })),
      marks: flat.marks.slice(0, 1).map((m) => ({ ...m, hole: null, at: [48, 2] as const })),
    };
    const lines = on(flatDrawing(near, 'near', [], style), 'WELD-MARK');
    const ends = lines.flatMap((s) => (s.kind === 'line' ? [s.from, s.to] : []));
    for (const [x, y] of ends)
      expect([x <= 50 + 1e-9, y >= -1e-9, x > 44, y < 6]).toEqual([true, true, true, true]);
    expect(Math.max(...ends.map((p) => p[0]))).toBeCloseTo(50, 9);
  });

  test('tells the way of a bend by its layer', () => {
    const line = (name: LayerName) =>
      on(drawing, name).flatMap((s) => (s.kind === 'line' ? [s.from[0]] : []));
    const [up, down] = [line('BEND-UP'), line('BEND-DOWN')];
    expect(up).toHaveLength(1);
    expect(down).toHaveLength(1);
    expect(up[0]).toBeGreaterThan(down[0] ?? Infinity); // the lip is east, the foot west
  });
});

describe.each(samples())('$name', ({ name, flat }) => {
  const drawing = flatDrawing(flat, name, [name, 'mm']);

  test('its box is the blank, and holds every line', () => {
    expect(drawing.box).toEqual(flat.blank);
    const points = drawing.layers.flatMap((l) =>
      l.shapes.flatMap((s) => (s.kind === 'line' ? [s.from, s.to] : [])),
    );
    for (const [x, y] of points) {
      expect(x).toBeGreaterThanOrEqual(-1e-9);
      expect(y).toBeGreaterThanOrEqual(-1e-9);
      expect(x).toBeLessThanOrEqual(flat.blank.max[0] + 1e-9);
      expect(y).toBeLessThanOrEqual(flat.blank.max[1] + 1e-9);
    }
  });

  test('its text stands on the blank, line under line', () => {
    const texts = on(drawing, 'NOTE').flatMap((s) => (s.kind === 'text' ? [s] : []));
    expect(texts.map((t) => t.text)).toEqual([name, 'mm']);
    const [first, second] = texts;
    expect((first?.at[1] ?? 0) - (second?.at[1] ?? 0)).toBeGreaterThan(first?.height ?? Infinity);
    for (const { at, height, text } of texts) {
      expect(Math.min(...at)).toBeGreaterThan(0);
      expect(at[0] + 0.7 * height * text.length).toBeLessThan(flat.blank.max[0]);
      expect(at[1] + height).toBeLessThan(flat.blank.max[1]);
    }
  });

  test('its pattern is not changed by drawing it', () => {
    const before = JSON.stringify(flat);
    flatDrawing(flat, name, [name]);
    expect(JSON.stringify(flat)).toBe(before);
  });
});
