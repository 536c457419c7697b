// Two readers by other people read whole sheets; the strict loader of a third one does in .ci/run.
import { createRequire } from 'node:module';
import { planJob, readJob } from '@tinwright/core';
import { findNest, NO_TRIM, QUARTER_TURNS, verifyNest } from '@tinwright/cutting';
import { cutNest, nestFiles, nestShapes, TABLE_STYLE, type TableStyle } from '@tinwright/files';
import { expect, test } from 'vitest';
import { layerOf, readDxf } from '../dxf-reader.js';

const load = createRequire(import.meta.url);
interface Read {
  readonly entities: readonly { readonly type: string; readonly layer: string }[];
}
const { Helper } = load('dxf') as { Helper: new (text: string) => { readonly parsed: Read } };
const Parser = load('dxf-parser') as new () => { parseSync(text: string): Read };

const { parts: planned } = planJob(
  readJob({
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    bending: { rule: 'k-factor', insideRadius: 1 },
    parts: [
      {
        name: 'hook',
        family: 'bracket',
        quantity: 3,
        width: 60,
        base: 40,
        leg: 50,
        holes: { diameter: 4, count: 2, inset: 15 },
      },
    ],
  }),
);

const sheet = {
  name: 'full',
  origin: 'sheet' as const,
  material: 'mild-steel',
  thickness: 1,
  x: 400,
  y: 300,
  outline: null,
  count: 1,
  price: null,
  grain: null,
  trim: NO_TRIM,
};

/** The sheet's DXF; holes of less than `leastHole` are punched. */
function dxf(style: Partial<TableStyle> = {}, ties = 0): string {
  const asked = { ...TABLE_STYLE, ...style };
  const { parts, flats } = nestShapes(planned, asked);
  const rack = { sheets: [sheet], kerf: 1.3, leastOffcut: { x: 100, y: 100 } };
  const nest = findNest(
    { parts, rack, spacing: 10, edge: 10, turns: QUARTER_TURNS },
    { seeds: [1], moves: 50 },
  );
  expect(verifyNest(nest, parts)).toEqual([]);
  const cut = cutNest(nest, parts, { kerf: 1.3, lead: 'line', leadLength: 3, ties, tieWidth: 0.5 });
  return nestFiles(cut, flats, asked).find((f) => f.path.endsWith('.dxf'))?.content as string;
}

test('marks first; then each cut as way in, contour, way out; holes of a piece before its outline', () => {
  const layers = readDxf(dxf()).entities.map(layerOf);
  const first = layers.indexOf('LEAD');
  expect(layers.slice(0, first).every((l) => l === 'BEND-UP' || l === 'SCRIBE')).toBe(true);
  const cuts = layers.slice(first, layers.indexOf('NOTE'));
  const each = planned[0]?.flat.holes.length as number;
  expect(each).toBeGreaterThan(0);
  expect(cuts).toEqual(Array.from({ length: 3 * (each + 1) }, () => ['LEAD', 'CUT', 'LEAD']).flat());
});

test('small holes marked: no contour for them, a point on SCRIBE before all cuts for each', () => {
  const all = readDxf(dxf({ leastHole: 5 })).entities;
  const each = planned[0]?.flat.holes.length as number;
  const points = all.filter((e) => e.type === 'POINT');
  expect(points.map(layerOf)).toEqual(Array.from({ length: 3 * each }, () => 'SCRIBE'));
  expect(all.filter((e) => layerOf(e) === 'CUT')).toHaveLength(3);
});

test.each<Partial<TableStyle>>([{}, { curves: 'arcs', unit: 'in', note: 'full' }, { form: 'r12' }])(
  'a sheet with %j: two readers find every entity, in the order it is cut',
  (style) => {
    const text = dxf(style);
    const ours = readDxf(text).entities.filter((e) => e.type !== 'VERTEX' && e.type !== 'SEQEND');
    const order = ours.map((e) => layerOf(e));
    expect(new Parser().parseSync(text).entities.map((e) => e.layer)).toEqual(order);
    expect(new Helper(text).parsed.entities.map((e) => e.layer)).toEqual(order);
  },
);

test('micro-joints are gaps in the contours of parts, each a kerf wider than the metal that was asked for; holes are cut whole', () => {
  const length = (text: string) =>
    (new Parser().parseSync(text) as unknown as { entities: readonly Cut[] }).entities
      .filter((e) => e.layer === 'CUT' && e.type === 'LINE')
      .reduce((sum, { vertices: [a, b] }) => sum + Math.hypot(b.x - a.x, b.y - a.y), 0);
  const [whole, tied] = [dxf({ curves: 'arcs' }), dxf({ curves: 'arcs' }, 2)];
  expect(length(whole) - length(tied)).toBeCloseTo(3 * 2 * (0.5 + 1.3), 4);
  const holes = (text: string) =>
    readDxf(text).entities.filter((e) => e.type === 'CIRCLE' || e.type === 'ARC').length;
  expect(holes(tied)).toBe(holes(whole));
});

test('between micro-joints a contour runs on as one path', () => {
  const cuts = readDxf(dxf({}, 2)).entities.filter((e) => layerOf(e) === 'CUT');
  expect(cuts.filter((e) => e.type === 'LWPOLYLINE' || e.type === 'LINE')).toHaveLength(
    readDxf(dxf()).entities.filter((e) => layerOf(e) === 'CUT' && e.type === 'LWPOLYLINE').length + 3 * 2,
  );
});

interface Cut {
  readonly type: string;
  readonly layer: string;
  readonly vertices: readonly [XY, XY];
}
interface XY {
  readonly x: number;
  readonly y: number;
}
