import type { FlatPattern } from '@tinwright/core';
import type { Drawing } from '@tinwright/files';
import { flatDrawing, toDxf, toDxfR12 } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { areaOf, lengthOf } from '../bulged.js';
import { type DxfFile, headerPoint, layerOf, numbers, outlines, readDxf } from '../dxf-reader.js';
import { samples } from '../samples.js';

const FORMS = [
  { form: 'R2000', write: toDxf },
  { form: 'R12', write: toDxfR12 },
] as const;
const PARTS = samples();
const CASES = FORMS.flatMap(({ form, write }) =>
  PARTS.map(({ name, flat }) => ({ form, name, flat, write: () => write(drawingOf(flat)) })),
);

const drawingOf = (flat: FlatPattern): Drawing => flatDrawing(flat, 'seed tray', ['seed tray']);
const circles = (file: DxfFile) => file.entities.filter((e) => e.type === 'CIRCLE');
const lines = (file: DxfFile, layer: string) =>
  file.entities.filter((e) => e.type === 'LINE' && layerOf(e) === layer);

test('there are parts to write, with arcs and with circles', () => {
  const arcs = PARTS.flatMap(({ flat }) => flat.outline.filter((v) => v.bulge !== 0));
  expect(PARTS.length).toBeGreaterThan(5);
  expect(arcs.length).toBeGreaterThan(8);
  expect(PARTS.flatMap(({ flat }) => flat.holes).length).toBeGreaterThan(1);
});

describe.each(CASES)('$form of $name', ({ flat, write }) => {
  const text = write();
  const file = readDxf(text); // refuses lines that do not pair up, and a missing last line end

  test('is ASCII with CRLF line ends only', () => {
    expect(text).toMatch(/^[\r\n -~]*$/);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(file.tags.at(-1)).toEqual([0, 'EOF']);
  });

  test('says the blank as its extents', () => {
    expect(headerPoint(file, '$EXTMIN')).toEqual([0, 0, 0]);
    const [x, y] = headerPoint(file, '$EXTMAX');
    expect(x).toBeCloseTo(flat.blank.max[0], 5);
    expect(y).toBeCloseTo(flat.blank.max[1], 5);
  });

  test('declares every layer that is drawn on, once', () => {
    expect(new Set(file.layers).size).toBe(file.layers.length);
    const drawn = new Set(file.entities.map(layerOf));
    expect([...drawn].filter((l) => !file.layers.includes(l))).toEqual([]);
  });

  test('has one closed outline, everything to cut on CUT', () => {
    const rounds = flat.holes.filter((h) => h.length === 2);
    const loops = outlines(file);
    expect(loops).toHaveLength(1 + flat.holes.length - rounds.length);
    for (const loop of loops) expect(loop).toMatchObject({ layer: 'CUT', closed: true });
    expect(circles(file).map(layerOf)).toEqual(rounds.map(() => 'CUT'));
  });

  test('cuts the area and the length of the pattern', () => {
    const loops = outlines(file).map((l) => l.corners);
    const radii = circles(file).flatMap((c) => numbers(c, 40));
    const areas = loops.map((l) => Math.abs(areaOf(l))).toSorted((a, b) => b - a);
    const area =
      areas.reduce((s, a, i) => (i === 0 ? a : s - a), 0) - radii.reduce((s, r) => s + Math.PI * r * r, 0);
    const length =
      loops.reduce((s, l) => s + lengthOf(l), 0) + radii.reduce((s, r) => s + 2 * Math.PI * r, 0);
    // six decimals: no corner moves by more than 0.71e-6 mm
    expect(Math.abs(area - flat.area)).toBeLessThan(1e-6 * flat.cutLength);
    expect(Math.abs(length - flat.cutLength)).toBeLessThan(1e-4);
  });

  test('has every bend once, up and down apart', () => {
    const count = (direction: 'up' | 'down') => flat.bends.filter((b) => b.direction === direction).length;
    expect(lines(file, 'BEND-UP')).toHaveLength(count('up'));
    expect(lines(file, 'BEND-DOWN')).toHaveLength(count('down'));
    const found = file.entities
      .filter((e) => layerOf(e).startsWith('BEND'))
      .map((e) => numbers(e, 10, 20, 11, 21).map((v) => v.toFixed(4)));
    // the file holds six decimals: rounded to those first, a tie of the fourth falls the same way
    const wanted = flat.bends.map((b) => b.line.flat().map((v) => Number(v.toFixed(6)).toFixed(4)));
    expect(found.toSorted()).toEqual(wanted.toSorted());
  });

  test('draws no line twice and none of no length', () => {
    const sides = outlines(file).flatMap(({ corners }) =>
      corners.map((a, i) => {
        const b = corners[(i + 1) % corners.length] ?? a;
        return [`${a.x} ${a.y}`, `${b.x} ${b.y}`, String(Math.abs(a.bulge))];
      }),
    );
    const straight = file.entities
      .filter((e) => e.type === 'LINE')
      .map((e) => [numbers(e, 10, 20).join(' '), numbers(e, 11, 21).join(' '), '0']);
    const all = [...sides, ...straight];
    expect(all.filter(([a, b]) => a === b)).toEqual([]);
    const keys = all.map(([a, b, bulge]) => [...[a, b].toSorted(), bulge].join(' / '));
    expect(keys.filter((k, i) => keys.indexOf(k) !== i)).toEqual([]);
  });

  test('is the same bytes when written again, whatever was written between', () => {
    for (const other of PARTS.slice(0, 2)) FORMS.forEach((f) => void f.write(drawingOf(other.flat)));
    expect(write()).toBe(text);
  });
});
