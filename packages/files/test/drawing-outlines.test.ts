import { drawingOutlines, partDxf, TABLE_STYLE } from '@tinwright/files';
import { describe, expect, test, vi } from 'vitest';
import { cut, dxf, line, missing, refusal, svg } from './drawings.js';

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

  /** Area that loops of points and bulges enclose, by the trapezoids below chords and the segments over them. */
  const areaOf = (loops: readonly (readonly (readonly [number, number, number])[])[]) =>
    loops.reduce((sum, loop) => {
      const parts = loop.map(([x, y, bulge], i) => {
        const [u, v] = loop[(i + 1) % loop.length] as readonly [number, number, number];
        const angle = 4 * Math.atan(bulge);
        const radius = bulge === 0 ? 0 : Math.hypot(u - x, v - y) / 2 / Math.sin(angle / 2);
        return (x * v - u * y) / 2 + (radius ** 2 * (angle - Math.sin(angle))) / 2;
      });
      return sum + Math.abs(parts.reduce((a, b) => a + b, 0));
    }, 0);
  const areaIn = async (name: string, text: string) =>
    areaOf(
      (await drawingOutlines(name, text)) as readonly (readonly (readonly [number, number, number])[])[],
    );
  const square = (more = '', x = 10) =>
    `0\nLWPOLYLINE\n8\n0\n${more}90\n4\n70\n1\n${[
      [0, 0],
      [x, 0],
      [x, 10],
      [0, 10],
    ]
      .map(([a, b]) => `10\n${a}\n20\n${b}\n`)
      .join('')}`;

  test('an SVG shows what is cut: round corners of a rectangle, nothing hidden', async () => {
    const rect = (more: string) => areaIn('a.svg', svg(`<rect width="100" height="50" ${more}/>`));
    expect(await rect('rx="20"')).toBeCloseTo(50 - (4 - Math.PI) * 4, 0);
    expect(await rect('rx="10" ry="99"')).toBeCloseTo(50 - (4 - Math.PI) * 2.5, 0);
    const hidden = [
      'style="fill:none; display : none"',
      'style="display:inline;/* off */DISPLAY:None !important"',
      'display="none"',
      'visibility="hidden"',
      'opacity="0"',
      'style="opacity:0.00"',
    ];
    const guides = hidden.map((h) => `<g ${h}><path d="M0 0L50 99L99 0z"/></g>`).join('');
    const marker = '<marker><path d="M0 0L9 0L9 9z"/></marker>';
    expect(await areaIn('a.svg', svg(`${guides}${marker}<path d="M0 0h100v50h-100z"/>`))).toBeCloseTo(50, 6);
  });

  test('what is visible in a hidden group is cut, what is hidden in a visible one is not', async () => {
    const [inner, outer] = ['<rect width="40" height="10" %/>', '<rect y="50" width="70" height="10"/>'];
    const [seen, unseen] = ['visible', 'hidden'].map((v) => inner.replace('%', `visibility="${v}"`));
    expect(await areaIn('a.svg', svg(`<g visibility="hidden">${seen}${outer}</g>`))).toBeCloseTo(4, 6);
    expect(await areaIn('a.svg', svg(`<g visibility="visible">${unseen}${outer}</g>`))).toBeCloseTo(7, 6);
  });

  test('notes that programs keep in a name space of their own are not cut', async () => {
    const note = '<my:view><rect width="90" height="90"/></my:view>';
    expect(await areaIn('a.svg', svg(`${note}<rect width="40" height="10"/>`))).toBeCloseTo(4, 6);
  });

  test.each([
    'scale(-1 1)',
    'scale(1 -1)',
    'matrix(0 1 1 0 0 0)',
    'rotate(77) scale(-1 1) skewX(30)',
    'scale(-1 -1)',
  ])('an arc under %s bulges as it is drawn, mirrored or not', async (transform) => {
    const turned = (drawn: string) => areaIn('a.svg', svg(`<g transform="${transform}">${drawn}</g>`));
    const half = (Math.PI * 5 ** 2) / 2;
    expect(await turned('<path d="M0 0H200A50 50 0 0 1 200 100H0z"/>')).toBeCloseTo(200 + half, 0);
    expect(await turned('<path d="m0 0h200a50 50 0 0 0 0 100h-200z"/>')).toBeCloseTo(200 - half, 0);
    expect(await turned('<path d="M0 0A100 100 0 1 1 100 100z"/>')).toBeCloseTo(75 * Math.PI + 50, 0);
    expect(await turned('<rect width="100" height="50" rx="20"/>')).toBeCloseTo(50 - (4 - Math.PI) * 4, 0);
  });

  test('a DXF shows what is cut: no layer that is off or frozen, nothing of paper space', async () => {
    const layer = (name: string, flags: number, colour: number) =>
      `0\nLAYER\n2\n${name}\n70\n${flags}\n62\n${colour}\n`;
    const tables = `0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n${layer('Guide', 0, -7)}${layer('Old', 1, 7)}0\nENDTAB\n0\nENDSEC\n`;
    const on = (name: string) => `0\nCIRCLE\n8\n${name}\n10\n5\n20\n5\n40\n7\n`;
    const text = square() + on('GUIDE') + on('old') + square('67\n1\n', 5) + square('60\n1\n', 5);
    expect(await areaIn('a.dxf', tables + dxf(text))).toBeCloseTo(100, 6);
  });

  test('what a DXF draws flat at some height is read as it lies', async () => {
    const corners = [
      [0, 0],
      [30, 0],
      [0, 20],
    ] as const;
    const sides = corners.map(([x, y], i) => {
      const [u, v] = corners[(i + 1) % 3] as readonly [number, number];
      return `0\nLINE\n8\n0\n10\n${x}\n20\n${y}\n30\n7\n11\n${u}\n21\n${v}\n31\n7.0000001\n`;
    });
    expect(await areaIn('a.dxf', dxf(sides.join('')))).toBeCloseTo(300, 6);
  });

  test('what a DXF draws mirrored, by its direction, is read mirrored', async () => {
    const back = '210\n0\n220\n0\n230\n-1\n';
    const arc = `0\nARC\n8\n0\n10\n-20\n20\n0\n40\n10\n50\n0\n51\n180\n${back}`;
    expect(await areaIn('a.dxf', dxf(line(10, 0, 30, 0) + arc))).toBeCloseTo(50 * Math.PI, 6);
    const [loop] = await drawingOutlines('a.dxf', dxf(square(back)));
    expect(Math.min(...(loop ?? []).map(([x]) => x))).toBe(-10);
  });

  test('codes that its reader has no type for are kept from it: it would print them', async () => {
    const said = vi.spyOn(console, 'log');
    expect(await areaIn('a.dxf', dxf(square('150\n\u009b31mred\n')))).toBeCloseTo(100, 6);
    expect(said).not.toHaveBeenCalled();
    said.mockRestore();
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

  test.each<[string, () => unknown, RegExp]>([
    [
      'an open chain',
      () => drawingOutlines('a.dxf', dxf(line(0, 0, 10, 0) + line(10, 0, 10, 10))),
      /a chain of lines is open: it starts at 0 mm, 0 mm and ends at 10 mm, 10 mm\. Close it/,
    ],
    [
      'no unit',
      () => drawingOutlines('a.dxf', dxf(line(0, 0, 1, 0), 0)),
      /says no unit\. Give unit: mm or in/,
    ],
    [
      'no unit in an SVG',
      () => drawingOutlines('a.svg', svg('<rect width="9" height="9"/>', 'width="40"')),
      /says no unit/,
    ],
    [
      'a width without a viewBox, which is dots of a screen',
      () => drawingOutlines('a.svg', svg('<rect width="9" height="9"/>', 'width="40mm" height="20mm"')),
      /says no unit\. Give unit: .* or its width in mm with a viewBox/,
    ],
    [
      'two scales',
      () =>
        drawingOutlines(
          'a.svg',
          svg('<rect width="9" height="9"/>', 'width="40mm" height="20mm" viewBox="0 0 40 40"'),
        ),
      /width and height do not go with its viewBox/,
    ],
    [
      'a copy of what stands elsewhere',
      () => drawingOutlines('a.svg', svg('<rect width="9" height="9"/><use href="#a"/>')),
      /the drawing holds use, which is no path or shape/,
    ],
    [
      'a length that is no number',
      () => drawingOutlines('a.svg', svg('<circle r="10mm"/>')),
      /circle r "10mm" cannot be read/,
    ],
    [
      'path data that breaks off',
      () => drawingOutlines('a.svg', svg('<path d="M0 0h9v9h-9z M5 5 hop"/>')),
      /path d ".*" cannot be read/,
    ],
    ...['rotate(45deg)', 'rotate(1 2)', `scale(${'1'.repeat(40)}x)`, 'turn(4)'].map(
      (t): [string, () => unknown, RegExp] => [
        `the transform ${t}`,
        () => drawingOutlines('a.svg', svg(`<rect width="9" height="9" transform="${t}"/>`)),
        /transform ".*" cannot be read/,
      ],
    ),
    [
      'a scale past numbers',
      () => drawingOutlines('a.svg', svg('<rect width="9" height="9" transform="scale(1e308)"/>')),
      /a coordinate in the drawing is no number/,
    ],
    [
      'a coordinate that is no number',
      () => drawingOutlines('a.dxf', dxf(line(0, 0, Number.NaN, 0))),
      /a coordinate in the drawing is no number/,
    ],
    [
      'a region, which the reader does not know',
      () => drawingOutlines('a.dxf', dxf(`${square()}0\nREGION\n8\n0\n`)),
      /holds REGION, which is no line/,
    ],
    [
      'a line that rises',
      () => drawingOutlines('a.dxf', dxf(`0\nLINE\n8\n0\n10\n0\n20\n0\n30\n0\n11\n9\n21\n0\n31\n5\n`)),
      /holds LINE that rises out of its plane/,
    ],
    [
      'a polyline in space',
      () =>
        drawingOutlines(
          'a.dxf',
          dxf(
            `0\nPOLYLINE\n8\n0\n66\n1\n70\n9\n${[0, 5, 0]
              .map((z, i) => `0\nVERTEX\n8\n0\n10\n${i * 9}\n20\n${i === 1 ? 9 : 0}\n30\n${z}\n70\n32\n`)
              .join('')}0\nSEQEND\n`,
          ),
        ),
      /holds POLYLINE that rises out of its plane/,
    ],
    [
      'what lies in a slanting plane',
      () => drawingOutlines('a.dxf', dxf(square('210\n1\n220\n0\n230\n1\n'))),
      /holds LWPOLYLINE in a slanting plane/,
    ],
    [
      'a polyline without an end',
      () => drawingOutlines('a.dxf', dxf('0\nPOLYLINE\n8\n0\n70\n1\n0\nVERTEX\n10\n0\n20\n0\n')),
      /cannot be read as DXF/,
    ],
    ['nothing in it', () => drawingOutlines('a.svg', svg('')), /holds no outline/],
    [
      'another kind of file',
      () => drawingOutlines('a.png', ''),
      /"a\.png" given\. Give a \.svg or \.dxf file/,
    ],
    [
      'lines that cross',
      () =>
        cut([
          [
            [0, 0],
            [10, 10],
            [10, 0],
            [0, 10],
          ],
        ]),
      /cutouts\[0\]\.loops\[0\]: (lines cross|an outline without area)/,
    ],
    [
      'a dot of a thousandth of a millimetre',
      async () => cut(await drawingOutlines('a.svg', svg('<rect width="0.001" height="0.001"/>'))),
      /narrower than 0\.01 mm/,
    ],
    [
      'a slit of a hundredth, on the slant',
      () =>
        cut([
          [
            [0, 0],
            [30, 30],
            [30, 30.009],
            [0, 0.009],
          ],
        ]),
      /narrower than 0\.01 mm/,
    ],
    [
      'an outline drawn twice round',
      () => {
        const round = [
          [0, 0],
          [30, 0],
          [30, 20],
          [0, 20],
        ] as const;
        return cut([[...round, ...round]]);
      },
      /loops\[0\]: lines cross/,
    ],
    [
      'an outline that crosses itself in a corner',
      () =>
        cut([
          [
            [-10, -10],
            [0, 0],
            [10, 10],
            [20, 0],
            [0, 0],
            [-10, 10],
          ],
        ]),
      /loops\[0\]: lines cross/,
    ],
    [
      'outlines that cross',
      () =>
        cut([
          [
            [0, 0],
            [10, 0],
            [10, 10],
            [0, 10],
          ],
          [
            [5, 5],
            [15, 5],
            [15, 15],
            [5, 15],
          ],
        ]),
      /loops\[1\]: lines cross/,
    ],
    [
      'one in another',
      () =>
        cut([
          [
            [0, 0],
            [10, 0],
            [10, 10],
            [0, 10],
          ],
          [
            [4, 4],
            [6, 4],
            [6, 6],
            [4, 6],
          ],
        ]),
      /outline 2 lies in or round outline 1: what is between them would fall out/,
    ],
    [
      'no outline at all',
      () => cut(undefined),
      /no outline\. Give cut: with a \.svg or \.dxf file, or loops/,
    ],
    [
      'larger than its panel',
      () =>
        cut([
          [
            [0, 0],
            [400, 0],
            [400, 10],
            [0, 10],
          ],
        ]),
      /larger than panel "leg-1"/,
    ],
  ])('%s is refused with what would work', async (_, work, said) => {
    expect(await refusal(work)).toMatch(said);
  });
});
