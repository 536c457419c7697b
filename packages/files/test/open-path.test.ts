// A path that does not come back, as two readers by other people and a library of paths find it.
import { createRequire } from 'node:module';
import { type Drawing, TABLE_STYLE, tableDxf, toDxf, toDxfR12, toMakerModel, toSvg } from '@tinwright/files';
import makerjs from 'makerjs';
import { expect, test } from 'vitest';

const load = createRequire(import.meta.url);
interface Read {
  readonly type: string;
  readonly shape: boolean;
  readonly vertices: readonly { readonly x: number; readonly y: number; readonly bulge?: number }[];
}
const Parser = load('dxf-parser') as new () => {
  parseSync(text: string): { readonly entities: readonly Read[] };
};

/** 10 to the right, half round to the left, 10 back. */
const drawing: Drawing = {
  title: 'hook',
  box: { min: [0, 0], max: [14, 8] },
  layers: [
    {
      name: 'CUT',
      shapes: [
        {
          kind: 'path',
          path: [
            { at: [0, 0], bulge: 0 },
            { at: [10, 0], bulge: 1 },
            { at: [10, 8], bulge: 0 },
            { at: [0, 8], bulge: 1 }, // counts nothing
          ],
        },
      ],
    },
  ],
};
const LENGTH = 20 + Math.PI * 4;

test.each([
  ['R2000', toDxf(drawing), 'LWPOLYLINE'],
  ['R12', toDxfR12(drawing), 'POLYLINE'],
])('a path in %s is one open polyline', (_, text, type) => {
  const [read, ...more] = new Parser().parseSync(text).entities;
  expect(more).toEqual([]);
  expect(read).toMatchObject({ type, shape: false });
  expect(read?.vertices.map(({ x, y }) => [x, y])).toEqual([
    [0, 0],
    [10, 0],
    [10, 8],
    [0, 8],
  ]);
  expect(read?.vertices[1]?.bulge).toBe(1);
});

test('where only lines and arcs are wanted it is three of them', () => {
  const text = tableDxf(drawing, { ...TABLE_STYLE, curves: 'arcs' });
  expect(new Parser().parseSync(text).entities.map((e) => e.type)).toEqual(['LINE', 'ARC', 'LINE']);
});

test('a library of paths measures it as long as it is', () => {
  expect(makerjs.measure.modelPathLength(toMakerModel(drawing))).toBeCloseTo(LENGTH, 9);
});

test('an SVG leaves it open', () => {
  const [, d] = /<path d="([^"]*)"/.exec(toSvg(drawing)) ?? [];
  expect(d).toMatch(/^M /);
  expect(d).not.toContain('Z');
});

test('a path of one corner is refused by its layer', () => {
  const layers = [{ name: 'CUT', shapes: [{ kind: 'path', path: [{ at: [0, 0], bulge: 0 }] }] }] as const;
  expect(() => toDxf({ ...drawing, layers })).toThrow('layer CUT: a path of fewer than two corners given');
});

test('a path in inches has its corners in inches and its bulges as they are', () => {
  const read = new Parser().parseSync(tableDxf(drawing, { ...TABLE_STYLE, unit: 'in' })).entities;
  expect(
    read.flatMap((e) => e.vertices.map(({ x, y }) => [x * 25.4, y * 25.4].map((v) => Number(v.toFixed(4))))),
  ).toEqual([
    [0, 0],
    [10, 0],
    [10, 8],
    [0, 8],
  ]);
  expect(read[0]?.vertices[1]?.bulge).toBe(1);
});
