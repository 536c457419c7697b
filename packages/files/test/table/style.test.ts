import {
  BASIC_LAYERS,
  type MarkStyle,
  partDxf,
  partSvg,
  readLayers,
  TABLE_STYLE,
  type TableStyle,
} from '@tinwright/files';
import { expect, test } from 'vitest';
import { type DxfFile, layerOf, numbers, outlines, readDxf, value } from '../dxf-reader.js';
import { samples } from '../samples.js';

const PARTS = samples().map(({ name, flat }) => ({ name, flat }));
const read = (part: (typeof PARTS)[number], style: Partial<TableStyle>): DxfFile =>
  readDxf(partDxf(part, { ...TABLE_STYLE, ...style }));
const kinds = (file: DxfFile) => new Set(file.entities.map((e) => e.type));
const marked = PARTS.find((p) => p.flat.marks.some((m) => m.hole === null)) as (typeof PARTS)[number];
const holed = PARTS.find((p) => p.flat.holes.length > 0) as (typeof PARTS)[number];

test.each(PARTS)('$name: what is marked stands before what is cut, holes before the outline', (part) => {
  const layers = read(part, {}).entities.map(layerOf);
  const first = layers.indexOf('CUT');
  const last = layers.lastIndexOf('CUT');
  expect(layers.slice(first, last + 1).every((l) => l === 'CUT')).toBe(true);
  expect(layers.slice(last + 1).every((l) => l === 'NOTE')).toBe(true);
});

test.each(PARTS)(
  '$name: curves as arcs are lines, arcs and circles that run where the outline ran',
  (part) => {
    const file = read(part, { curves: 'arcs', text: 'off' });
    expect([...kinds(file)].filter((k) => !['LINE', 'ARC', 'CIRCLE'].includes(k))).toEqual([]);
    const cut = file.entities.filter((e) => layerOf(e) === 'CUT');
    const sides = outlines(read(part, {})).reduce((sum, o) => sum + o.corners.length, 0);
    const circles = cut.filter((e) => e.type === 'CIRCLE').length;
    expect(cut.length).toBe(sides + circles);
  },
);

test('inches: every coordinate divided by 25.4, and the header says so', () => {
  const [mm, inches] = [read(marked, {}), read(marked, { unit: 'in' })];
  expect(inches.header.get('$INSUNITS')).toEqual([[70, '1']]);
  expect(inches.header.get('$MEASUREMENT')).toEqual([[70, '0']]);
  const [a, b] = [mm, inches].map((f) => outlines(f).at(-1)?.corners ?? []);
  expect(b?.map((c) => [c.x, c.y])).toEqual(
    a?.map((c) => [expect.closeTo(c.x / 25.4, 5), expect.closeTo(c.y / 25.4, 5)]),
  );
  expect(b?.map((c) => c.bulge)).toEqual(a?.map((c) => c.bulge));
});

test.each<[MarkStyle, string, number]>([
  ['cross', 'LINE', 2],
  ['dash', 'LINE', 1],
  ['point', 'POINT', 1],
  ['circle', 'CIRCLE', 1],
  ['none', 'LINE', 0],
])('marks as %s: that many touches each', (marks, kind, each) => {
  const on = read(marked, { marks }).entities.filter((e) => layerOf(e) === 'WELD-MARK');
  const count = marked.flat.marks.filter((m) => m.hole === null).length;
  expect(on.map((e) => e.type)).toEqual(new Array(each * count).fill(kind));
});

test('holes under the least the table cuts become points, larger ones stay', () => {
  const radii = read(holed, {})
    .entities.filter((e) => e.type === 'CIRCLE' && layerOf(e) === 'CUT')
    .map((e) => numbers(e, 40)[0] as number);
  expect(radii.length).toBeGreaterThan(0);
  const all = read(holed, { leastHole: 2 * Math.max(...radii) + 0.1 });
  expect(all.entities.filter((e) => e.type === 'CIRCLE' && layerOf(e) === 'CUT')).toEqual([]);
  expect(all.entities.filter((e) => layerOf(e) === 'SCRIBE').map((e) => e.type)).toEqual(
    radii.map(() => 'POINT'),
  );
  const none = read(holed, { leastHole: 2 * Math.min(...radii) });
  expect(none.entities.filter((e) => layerOf(e) === 'SCRIBE')).toEqual([]);
});

test('a map of layers: names, colours, linetypes, two of ours under one name, one left out', () => {
  const map = readLayers({
    CUT: { name: 'PROFILE', colour: 1 },
    'WELD-MARK': { name: 'ETCH', colour: 3, linetype: 'DASHED' },
    'BEND-UP': { name: 'ETCH', colour: 3, linetype: 'DASHED' },
    NOTE: 'off',
  });
  const file = read(marked, map);
  expect(file.layers).toContain('PROFILE');
  expect(file.layers.filter((l) => l === 'ETCH')).toHaveLength(1);
  expect(file.layers).not.toContain('NOTE');
  expect(file.entities.map(layerOf)).toContain('PROFILE');
  expect(file.tags.some(([code, v]) => code === 2 && v === 'DASHED')).toBe(true);
});

test.each([
  [{ CUTS: {} }, /CUTS/],
  [{ CUT: { colour: 256 } }, /256 given, 1 to 255/],
  [{ CUT: { name: 'cut lines' } }, /"cut lines" given/],
  [{ CUT: { linetype: 'WAVY' } }, /WAVY|CONTINUOUS/],
  [{ CUT: { name: 'BEND-UP' } }, /^CUT\.name: "BEND-UP" is the name of what is cut and of BEND-UP/],
  [{ NOTE: { name: 'LEAD' } }, /^NOTE\.name: "LEAD" is the name of what is cut and of NOTE/],
])('a map that cannot be is refused: %j', (wrong, words) => {
  expect(() => readLayers(wrong)).toThrow(words);
});

test('ways in and what is cut may share a name, and take that of a layer that is left out', () => {
  const shared = { CUT: { name: 'NOTE' }, LEAD: { name: 'NOTE' }, NOTE: 'off' };
  expect(readLayers(shared).looks).toMatchObject({ CUT: { name: 'NOTE' }, LEAD: { name: 'NOTE' } });
});

test('the basic map gives every layer one of the seven basic colours', () => {
  const numbersOf = Object.values(BASIC_LAYERS.looks).map((l) => l.number);
  expect(numbersOf.toSorted()).toEqual([1, 2, 3, 4, 5, 6, 7]);
});

test('a map that leaves out what is cut is refused: nothing would be cut', () => {
  expect(() => readLayers({ CUT: 'off' })).toThrow(
    'CUT: "off" given for what is cut: nothing would be. Give it a name, a colour or a linetype',
  );
});

test('the note in full says quantity, material and thickness; off says nothing', () => {
  const part = { ...marked, quantity: 24, material: { name: 'galvanised-steel' } as never };
  const texts = (style: Partial<TableStyle>) =>
    readDxf(partDxf(part, { ...TABLE_STYLE, ...style }))
      .entities.filter((e) => e.type === 'TEXT')
      .map((e) => value(e, 1));
  expect(texts({})).toEqual([marked.name]);
  expect(texts({ note: 'full' })).toEqual([
    marked.name,
    '24 x',
    `galvanised-steel T ${marked.flat.thickness}`,
  ]);
  expect(texts({ text: 'off' })).toEqual([]);
});

test('an SVG shows the same marks and no unit', () => {
  const svg = partSvg(marked, { ...TABLE_STYLE, form: 'r12', marks: 'none' });
  expect(svg).not.toContain('WELD-MARK');
  expect(svg).not.toContain('>mm<');
});
