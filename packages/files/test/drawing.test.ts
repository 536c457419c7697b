import type { Point } from '@tinwright/core';
import type { Drawing, Shape } from '@tinwright/files';
import { toDxf, toDxfR12, toSvg } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { checkDrawing } from '../src/drawing.js';
import { readDxf } from './dxf-reader.js';

const drawing = (...shapes: readonly Shape[]): Drawing => ({
  title: 'seed tray',
  layers: [{ name: 'CUT', shapes }],
  box: { min: [0, 0], max: [10, 10] },
});

/** A triangle; its second corner at `x`, its first side bulged. */
function triangle(x: number, bulge: number): Shape {
  const corners: readonly Point[] = [
    [0, 0],
    [x, 0],
    [10, 10],
  ];
  return { kind: 'loop', loop: corners.map((at, i) => ({ at, bulge: i === 0 ? bulge : 0 })) };
}

const TAKERS = [
  ['checkDrawing', checkDrawing],
  ['R2000', toDxf],
  ['R12', toDxfR12],
  ['SVG', toSvg],
] as const;

describe.each(TAKERS)('%s', (_, take) => {
  test('a sound drawing is taken', () => {
    expect(() =>
      take(drawing(triangle(10, 0.2), { kind: 'circle', centre: [5, 4], radius: 1 })),
    ).not.toThrow();
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    'a bulge of %s is refused, the layer named',
    (bulge) => {
      expect(() => take(drawing(triangle(10, bulge)))).toThrow(RangeError);
      expect(() => take(drawing(triangle(10, bulge)))).toThrow(`layer CUT: coordinate ${bulge} given`);
    },
  );

  test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e9])(
    'a corner at %s is refused, the layer named',
    (x) => {
      expect(() => take(drawing(triangle(x, 0)))).toThrow(RangeError);
      expect(() => take(drawing(triangle(x, 0)))).toThrow(
        `layer CUT: coordinate ${x} given, a finite number up to 1000000 mm allowed`,
      );
    },
  );

  test('a box that is not finite is refused', () => {
    const box = { min: [0, 0], max: [10, Number.NaN] } as const;
    expect(() => take({ ...drawing(triangle(10, 0)), box })).toThrow('layer box: coordinate NaN given');
  });

  test.each([0, 1])('an outline of %d corners is refused', (corners) => {
    const loop = [{ at: [0, 0] as const, bulge: 0 }].slice(0, corners);
    expect(() => take(drawing({ kind: 'loop', loop }))).toThrow(
      'layer CUT: a loop of fewer than two corners',
    );
  });

  test.each([0, -4])('a circle of radius %d and a text of that height are refused', (size) => {
    expect(() => take(drawing({ kind: 'circle', centre: [1, 1], radius: size }))).toThrow(
      'layer CUT: a circle without size given',
    );
    expect(() => take(drawing({ kind: 'text', at: [1, 1], height: size, text: 'tray' }))).toThrow(
      'layer CUT: a text without size given',
    );
  });
});

describe('layers and how they look', () => {
  const { layers, ...rest } = drawing(triangle(10, 0));

  test.each(['', 'CUT LINE', 'A'.repeat(32), 'SCHNITTMA\u00dfE'])('a layer called %j is refused', (name) => {
    const named = { ...rest, layers: layers.map((l) => ({ ...l, name: name as 'CUT' })) };
    expect(() => checkDrawing(named)).toThrow(`layer ${JSON.stringify(name)} given, 1 to 31 of`);
  });

  test.each([
    [{ colour: 'red' }, 'colour "red" given, such as #0072B2 allowed'],
    [{ number: 0 }, 'number 0 given, 1 to 255 allowed'],
    [{ number: 1.5 }, 'number 1.5 given, 1 to 255 allowed'],
    [{ number: 256 }, 'number 256 given, 1 to 255 allowed'],
    [{ width: 0 }, 'width 0 given, more than 0 to 5 mm allowed'],
    [{ width: 5.1 }, 'width 5.1 given, more than 0 to 5 mm allowed'],
  ])('a layer that looks like %j is refused', (paint, says) => {
    expect(() => checkDrawing({ ...rest, layers, paints: { CUT: paint } })).toThrow(`layer CUT: ${says}`);
  });
});

test('a text that is turned stands turned in an SVG, whose y points down', () => {
  const text = { kind: 'text', at: [3, 4], height: 5, text: 'tray', centred: true, rotation: 30 } as const;
  const svg = toSvg(drawing(text));
  // box of 10 and 5 mm of white all round: x 3 is at 8, y 4 is at 11
  expect(svg).toContain('<text transform="translate(8 11) rotate(-30)"');
  expect(svg).toContain('text-anchor="middle">tray</text>');
});

test('a layer given twice: an SVG, which names its groups, is refused; a DXF holds both in their order', () => {
  const { layers, ...rest } = drawing(triangle(10, 0));
  const twice = {
    ...rest,
    layers: [...layers, { name: 'LEAD' as const, shapes: [triangle(9, 0)] }, ...layers],
  };
  expect(() => toSvg(twice)).toThrow('layer CUT given twice, once allowed in an SVG');
  for (const write of [toDxf, toDxfR12])
    expect(
      [...write(twice).matchAll(/\r\n8\r\n(CUT|LEAD)\r\n/g)]
        .map(([, layer]) => layer)
        .filter((layer, i, all) => layer !== all[i - 1]),
    ).toEqual(['CUT', 'LEAD', 'CUT']);
});

test('points and arcs stand in every form at their places', () => {
  const dots = drawing(
    { kind: 'point', at: [3, 4] },
    { kind: 'arc', centre: [5, 5], radius: 2, start: 270, end: 90 },
  );
  for (const text of [toDxf(dots), toDxfR12(dots)]) {
    const numbers = readDxf(text).entities.map(({ type, tags }) => [
      type,
      ...[10, 20, 40, 50, 51].flatMap((code) => tags.filter(([c]) => c === code).map(([, v]) => Number(v))),
    ]);
    expect(numbers).toEqual([
      ['POINT', 3, 4],
      ['ARC', 5, 5, 2, 270, 90],
    ]);
  }
  // from below the centre to above it by the east: half a turn, counter-clockwise as the picture shows it
  expect(toSvg(dots)).toMatch(/d="M [\d.]+ [\d.]+ A 2 2 0 0 0 [\d.]+ [\d.]+"/);
});

test.each([
  [{ colour: 'red' }, 'colour "red" given'],
  [{ number: 256 }, 'number 256 given'],
  [{ width: 0 }, 'width 0 given'],
])('a layer painted %j is refused', (paint, said) => {
  const painted = { ...drawing({ kind: 'point', at: [1, 1] }), paints: { CUT: paint } };
  expect(() => checkDrawing(painted as Drawing)).toThrow(`layer CUT: ${said}`);
});
