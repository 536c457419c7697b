import type { Drawing, Shape } from '@tinwright/files';
import { flatDrawing, LAYERS, toSvg } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { samples } from '../samples.js';
import { type Element, pathPoints, polygonArea, polygonLength, readSvg } from '../svg-reader.js';

const PARTS = samples();

const layer = (svg: Element, id: string) => svg.children.find((c) => c.attributes.id === id)?.children ?? [];
const numbers = (e: Element | undefined, ...names: readonly string[]) =>
  names.map((n) => Number(e?.attributes[n]));

describe.each(PARTS)('$name', ({ name, flat }) => {
  const drawing = flatDrawing(flat, name, [name]);
  const text = toSvg(drawing);
  const svg = readSvg(text.trimEnd());

  test('one user unit is one millimetre: size in mm equals the view box', () => {
    const [x, y, width, height] = (svg.attributes.viewBox ?? '').split(' ').map(Number);
    expect([x, y]).toEqual([0, 0]);
    expect(svg.attributes.width).toBe(`${width}mm`);
    expect(svg.attributes.height).toBe(`${height}mm`);
    expect(width).toBeCloseTo(flat.blank.max[0] + 10, 5); // 5 mm of white all round
    expect(height).toBeCloseTo(flat.blank.max[1] + 10, 5);
  });

  test('one group a layer, in the order of the layer list', () => {
    const ids = svg.children.filter((c) => c.name === 'g').map((c) => c.attributes.id);
    expect(ids).toEqual(drawing.layers.map((l) => l.name));
    const order = ids.map((id) => LAYERS.findIndex((l) => l.name === id));
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(svg.children.map((c) => c.name).filter((n) => n !== 'g')).toEqual(['title']);
  });

  test('outline and openings are closed paths with the area and length of the pattern', () => {
    const cut = layer(svg, 'CUT');
    const paths = cut.filter((e) => e.name === 'path').map((e) => pathPoints(e.attributes.d ?? ''));
    expect(paths).toHaveLength(1 + flat.holes.filter((h) => h.length > 2).length);
    expect(paths.every((p) => p.closed)).toBe(true);
    const areas = paths.map((p) => Math.abs(polygonArea(p.points))).toSorted((a, b) => b - a);
    const radii = cut.filter((e) => e.name === 'circle').map((e) => Number(e.attributes.r));
    const area =
      areas.reduce((s, a, i) => (i === 0 ? a : s - a), 0) - radii.reduce((s, r) => s + Math.PI * r * r, 0);
    const length =
      paths.reduce((s, p) => s + polygonLength(p.points), 0) + radii.reduce((s, r) => s + 2 * Math.PI * r, 0);
    expect(Math.abs(area - flat.area)).toBeLessThan(1e-3);
    expect(Math.abs(length - flat.cutLength)).toBeLessThan(1e-3);
  });

  test('arcs of the outline are arcs in the file, not chords', () => {
    const path = layer(svg, 'CUT').find((e) => e.name === 'path');
    const count = (path?.attributes.d ?? '').split(' ').filter((w) => w === 'A').length;
    expect(count).toBe(flat.outline.filter((v) => v.bulge !== 0).length);
  });

  test('all lines stay on the page, bend lines 5 mm in and upside down', () => {
    const height = flat.blank.max[1];
    const drawn = [...layer(svg, 'BEND-UP'), ...layer(svg, 'BEND-DOWN')];
    const found = drawn.map((e) => numbers(e, 'x1', 'y1', 'x2', 'y2').map((v) => v.toFixed(4)));
    // the file holds six decimals: rounded to those first, a tie of the fourth falls the same way
    const wanted = flat.bends.map(({ line: [[x1, y1], [x2, y2]] }) =>
      [5 + x1, 5 + height - y1, 5 + x2, 5 + height - y2].map((v) => Number(v.toFixed(6)).toFixed(4)),
    );
    expect(found.toSorted()).toEqual(wanted.toSorted());
  });

  test('no number has an exponent, none is NaN or minus zero', () => {
    const values = [...text.matchAll(/ (?:d|x|y|x1|y1|x2|y2|cx|cy|r|font-size|viewBox)="([^"]*)"/g)];
    const words = values.flatMap((m) => (m[1] ?? '').split(' ')).filter((w) => !/^[MLAZ]$/.test(w));
    expect(words.length).toBeGreaterThan(8);
    expect(words.filter((w) => !/^-?\d+(\.\d+)?$/.test(w) || /^-0(\.0*)?$/.test(w))).toEqual([]);
  });

  test('is the same bytes when written again', () => {
    expect(toSvg(flatDrawing(flat, name, [name]))).toBe(text);
  });
});

const drawing = (title: string, shape: Shape): Drawing => ({
  title,
  layers: [{ name: shape.kind === 'text' ? 'NOTE' : 'CUT', shapes: [shape] }],
  box: { min: [0, 0], max: [20, 10] },
});

test('title and text are escaped, and read back as they were', () => {
  const text = `</title><script>"&amp;" 'tray' <5 mm>`;
  const svg = readSvg(toSvg(drawing(text, { kind: 'text', at: [1, 1], height: 2, text })).trimEnd());
  expect(svg.children.find((c) => c.name === 'title')?.text).toBe(text);
  expect(layer(svg, 'NOTE').map((e) => [e.name, e.text])).toEqual([['text', text]]);
});

test('characters XML cannot hold are replaced', () => {
  const svg = readSvg(
    toSvg(drawing('a\u0000b\ud800c', { kind: 'circle', centre: [5, 5], radius: 1 })).trimEnd(),
  );
  expect(svg.children.find((c) => c.name === 'title')?.text).toBe('a\ufffdb\ufffdc');
});

test('a circle keeps its radius, its centre is measured from the top', () => {
  const svg = readSvg(toSvg(drawing('t', { kind: 'circle', centre: [6, 2], radius: 1.5 })).trimEnd());
  expect(numbers(layer(svg, 'CUT')[0], 'cx', 'cy', 'r')).toEqual([11, 13, 1.5]);
});

test('a box that does not start at zero is moved onto the page', () => {
  const shape: Shape = { kind: 'line', from: [-30, -20], to: [-10, -15] };
  const svg = readSvg(toSvg({ ...drawing('t', shape), box: { min: [-30, -20], max: [-10, -15] } }).trimEnd());
  expect(svg.attributes.viewBox).toBe('0 0 30 15');
  expect(numbers(layer(svg, 'CUT')[0], 'x1', 'y1', 'x2', 'y2')).toEqual([5, 10, 25, 5]);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e9])('a coordinate of %s is refused', (v) => {
  const line: Shape = { kind: 'line', from: [0, v], to: [1, 1] };
  expect(() => toSvg(drawing('t', line))).toThrow(RangeError);
  const circle: Shape = { kind: 'circle', centre: [0, 0], radius: v };
  expect(() => toSvg(drawing('t', circle))).toThrow('a finite number up to 1000000 mm allowed');
  expect(() => toSvg({ ...drawing('t', circle), box: { min: [0, 0], max: [v, 1] } })).toThrow(RangeError);
});
