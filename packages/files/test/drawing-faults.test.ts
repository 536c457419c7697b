import { drawingOutlines } from '@tinwright/files';
import { expect, test } from 'vitest';
import { cut, dxf, line, refusal, square, svg } from './drawings.js';

test.each<[string, () => unknown, RegExp]>([
  [
    'an open chain',
    () => drawingOutlines('a.dxf', dxf(line(0, 0, 10, 0) + line(10, 0, 10, 10))),
    /a chain of lines is open: it starts at 0 mm, 0 mm and ends at 10 mm, 10 mm\. Close it/,
  ],
  ['no unit', () => drawingOutlines('a.dxf', dxf(line(0, 0, 1, 0), 0)), /says no unit\. Give unit: mm or in/],
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
    'a size in the style of the drawing, which counts before its width',
    () =>
      drawingOutlines(
        'a.svg',
        svg('<rect width="9" height="9"/>', 'width="40mm" viewBox="0 0 40 20" style="width: 20mm"'),
      ),
    /a style in the drawing says "width", which is not followed/,
  ],
  ...[
    '<rect x="9" width="-9" height="9"/>',
    '<rect width="9" height="-9"/>',
    '<rect width="9" height="9" ry="-2"/>',
    '<circle r="-5"/>',
    '<ellipse rx="5" ry="-5"/>',
  ].map((drawn): [string, () => unknown, RegExp] => [
    `the negative size in ${drawn}`,
    () => drawingOutlines('a.svg', svg(drawn)),
    /(rect|circle|ellipse) \w+ "-\d" cannot be read/,
  ]),
  [
    'a drawing that breaks off',
    () =>
      drawingOutlines('a.svg', svg('<rect width="9" height="9"/><circle r="9"/>').replace(/<circle.*/, '')),
    /the drawing breaks off before its <\/svg>\. Save it as plain SVG/,
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
  ...['10,5', '10mm', '1.D1', ''].map((x): [string, () => unknown, RegExp] => [
    `the coordinate "${x}"`,
    () => drawingOutlines('a.dxf', dxf(square().replace('10\n10\n20\n10', `10\n${x}\n20\n10`))),
    /a coordinate in the drawing is no number: ".*"\. Write it again as DXF/,
  ]),
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
  ['another kind of file', () => drawingOutlines('a.png', ''), /"a\.png" given\. Give a \.svg or \.dxf file/],
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
  ['no outline at all', () => cut(undefined), /no outline\. Give cut: with a \.svg or \.dxf file, or loops/],
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
