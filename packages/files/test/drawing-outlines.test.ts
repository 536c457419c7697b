import { drawingOutlines, partDxf, TABLE_STYLE } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { areaIn, areaOf, cut, dxf, line, missing, refusal, svg } from './drawings.js';

describe('a drawing as an opening', () => {
  test('an SVG in its own size: basic shapes and curves, their area missing from the flat', async () => {
    const plain =
      cut([
        [
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 1],
        ],
      ]).flat.area + 1;
    const square = await drawingOutlines(
      'a.svg',
      svg('<g transform="translate(50 50)"><rect width="100" height="50"/></g>'),
    );
    expect(plain - cut(square).flat.area).toBeCloseTo(10 * 5, 6);
    const round = await drawingOutlines('a.svg', svg('<circle cx="100" cy="100" r="80"/>'));
    expect(plain - cut(round).flat.area).toBeCloseTo(Math.PI * 64, 0);
    const curve = await drawingOutlines('a.svg', svg('<path d="M0 0 Q100 200 200 0 z"/>'));
    expect(plain - cut(curve).flat.area).toBeCloseTo((2 / 3) * 20 * 10, 0); // a parabola: two thirds of its box
  });

  test('a DXF of loose lines and arcs, joined end to end in whatever order; arcs stay arcs', async () => {
    const arc = '0\nARC\n8\n0\n10\n10\n20\n0\n40\n5\n50\n270\n51\n90\n';
    const slot = dxf(line(0, -5, 10, -5) + line(10, 5, 0, 5) + arc + line(0, 5, 0, -5));
    const [outline, ...others] = await drawingOutlines('slot.dxf', slot);
    expect(others).toEqual([]);
    expect(outline?.some(([, , bulge]) => Math.abs(Math.abs(bulge) - 1) < 1e-9)).toBe(true);
    const plain =
      cut([
        [
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 1],
        ],
      ]).flat.area + 1;
    expect(plain - cut([outline]).flat.area).toBeCloseTo(100 + (Math.PI * 25) / 2, 6);
  });

  test('a half disc of a line and an arc becomes a file that holds half a disc', async () => {
    const arc = '0\nARC\n8\n0\n10\n10\n20\n0\n40\n10\n50\n0\n51\n180\n';
    for (const drawn of [line(0, 0, 20, 0) + arc, arc + line(0, 0, 20, 0)]) {
      const part = cut(await drawingOutlines('half.dxf', dxf(drawn)));
      expect(await areaIn('half.dxf', dxf(drawn))).toBeCloseTo(50 * Math.PI, 6);
      expect(partDxf(part)).not.toContain('CIRCLE');
      expect(partDxf(part, { ...TABLE_STYLE, leastHole: 99 })).not.toContain('SCRIBE'); // nor a place for a punch
    }
  });

  const round = (x: number, y: number, r: number) => `0\nCIRCLE\n8\n0\n10\n${x}\n20\n${y}\n40\n${r}\n`;

  test('what a DXF draws closed is an outline of its own, however near another lies', async () => {
    const loops = await drawingOutlines('a.dxf', dxf(round(0, 0, 10) + round(20.01, 0, 10)));
    expect(loops).toHaveLength(2);
    expect(areaOf(loops as never)).toBeCloseTo(200 * Math.PI, 6);
  });

  test('an arc of a whole turn is a circle', async () => {
    const arc = (from: number, to: number) => `0\nARC\n8\n0\n10\n10\n20\n0\n40\n10\n50\n${from}\n51\n${to}\n`;
    for (const drawn of [arc(0, 360), arc(90, 450), arc(-180, 180)])
      expect(await areaIn('a.dxf', dxf(drawn))).toBeCloseTo(100 * Math.PI, 6);
  });

  const box = line(0, 0, 30, 0) + line(30, 0, 30, 20) + line(30, 20, 0, 20) + line(0, 20, 0, 0);
  const back = line(30, 0, 0, 0) + line(30, 20, 30, 0) + line(0, 20, 30, 20) + line(0, 0, 0, 20);
  test.each([
    ['a circle twice', round(5, 5, 5) + round(5, 5, 5)],
    ['circles that touch', round(0, 0, 10) + round(20, 0, 10)],
    ['a circle that touches another inside', round(0, 0, 10) + round(5, 0, 5)],
  ])('%s is refused: it would be cut twice', async (_, drawn) => {
    const loops = await drawingOutlines('a.dxf', dxf(drawn));
    expect(await refusal(() => cut(loops))).toContain('lines cross');
  });

  test.each([
    ['lines', box + box],
    ['lines there and back', box + back],
    ['one line of an outline', box + line(30, 0, 0, 0)],
  ])('%s drawn twice: the line is named', async (_, drawn) => {
    expect(await refusal(() => drawingOutlines('a.dxf', dxf(drawn)))).toMatch(/0 mm, 0 mm .*is drawn twice/);
  });

  test('circles of a DXF are loops of two arcs; texts and points are passed over, what has no outline is refused', async () => {
    const circle = '0\nCIRCLE\n8\n0\n10\n30\n20\n20\n40\n5\n';
    const point = '0\nPOINT\n8\n0\n10\n1\n20\n1\n';
    const [loop, ...others] = await drawingOutlines('a.dxf', dxf(circle + point));
    expect(others).toEqual([]);
    expect(loop?.map(([, , bulge]) => bulge)).toEqual([1, 1]);
    const ellipse = '0\nELLIPSE\n8\n0\n10\n0\n20\n0\n11\n5\n21\n0\n40\n0.5\n41\n0\n42\n6.283\n';
    expect(await refusal(() => drawingOutlines('a.dxf', dxf(ellipse)))).toContain('holds ELLIPSE');
    expect(await refusal(() => drawingOutlines('a.dxf', dxf(circle), 'ft' as 'mm'))).toContain(
      'Known: mm, in',
    );
  });

  test('polygons, polylines and lines of an SVG are outlines where they close', async () => {
    const three = '0,0 100,0 100,100';
    for (const drawn of [
      `<polygon points="${three}"/>`,
      `<polyline points="${three} 0,0"/>`,
      '<line x1="0" y1="0" x2="100" y2="0"/><line x1="100" y1="0" x2="100" y2="100"/><line x1="100" y1="100" x2="0" y2="0"/>',
    ]) {
      const [loop, ...others] = await drawingOutlines('a.svg', svg(drawn));
      expect(others).toEqual([]);
      expect(loop).toHaveLength(3);
    }
  });

  test('scaled to a length, and in inches where the drawing or the job says so', async () => {
    const square = [
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ],
    ];
    expect(missing(square) - missing(square, { length: 20 })).toBeCloseTo(100 - 400, 6);
    const box = line(0, 0, 1, 0) + line(1, 0, 1, 1) + line(1, 1, 0, 1) + line(0, 1, 0, 0);
    const [inches] = await drawingOutlines('a.dxf', dxf(box, 1));
    const [asked] = await drawingOutlines('a.dxf', dxf(box, 0), 'in');
    expect(inches?.[1]?.[0]).toBeCloseTo(25.4, 9);
    expect(asked).toEqual(inches);
  });

  test('100,000 segments are read and cut in time that grows with their number', async () => {
    const wave = (n: number) => {
      const r = (a: number) => 80 + Math.sin(40 * a);
      const at = (i: number) => {
        const a = (2 * Math.PI * (i % n)) / n;
        return `${(r(a) * Math.cos(a)).toFixed(5)} ${(r(a) * Math.sin(a)).toFixed(5)}`;
      };
      return svg(
        `<path d="M${Array.from({ length: n }, (_, i) => at(i)).join('L')}z"/>`,
        'width="200mm" viewBox="0 0 200 200"',
      );
    };
    const outline = await drawingOutlines('wave.svg', wave(100_000));
    expect(outline[0]).toHaveLength(100_000);
    expect(cut(outline).flat.holes[0]?.length).toBeGreaterThan(50_000);
  });
});
