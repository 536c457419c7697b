import { drawingOutlines } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { shortRuns } from '../src/read/short-runs.js';
import { cut, dxf, line, refusal, svg } from './drawings.js';

describe('a drawing that means harm is refused', () => {
  const deep = `${'<g>'.repeat(100_000)}<rect width="10" height="5"/>${'</g>'.repeat(100_000)}`;
  test.each([
    ['groups in groups without end', 'a.svg', svg(deep), 'nested too deeply'],
    [
      'a curve of no end of chords',
      'a.svg',
      svg('<path d="M0 0C1e12 0 1e12 1e12 0 1z"/>'),
      'a curve of kilometres',
    ],
    [
      'no width',
      'a.svg',
      svg('<rect width="10" height="5"/>', 'width="0mm" viewBox="0 0 0 40"'),
      'says no unit',
    ],
    ['a block', 'a.dxf', dxf('0\nINSERT\n2\nhole\n'), 'Explode its blocks first'],
    [
      'a polyline of endless corners',
      'a.dxf',
      dxf('0\nLWPOLYLINE\n90\n999999999\n10\n1\n20\n1\n'),
      'cannot be read as DXF',
    ],
  ])('%s', async (_, name, text, says) => {
    expect(await refusal(() => drawingOutlines(name, text))).toContain(says);
  });
});

describe('a drawing of endless lines is answered at once', () => {
  const path = (points: readonly (readonly [number, number])[]) =>
    svg(`<path d="M${points.map((p) => p.join(' ')).join('L')}z"/>`);

  test('20,000 lines across each other: the first crossing', async () => {
    const wild = Array.from({ length: 20_000 }, (_, i) => [(i * 7919) % 389, (i * 104_729) % 197] as const);
    const loops = await drawingOutlines('a.svg', path(wild));
    expect(await refusal(() => cut(loops))).toMatch(/lines cross/);
  });

  test('a comb of long slanting teeth that nothing but every pair of them could tell apart', async () => {
    const teeth = Array.from({ length: 1500 }, (_, i) => [
      [i * 0.1, 0],
      [i * 0.1 + 150.03, 190],
    ]).flat() as [number, number][];
    const loops = await drawingOutlines('a.svg', path([...teeth, [160, -5], [0, -5]]));
    expect(await refusal(() => cut(loops))).toMatch(/too often to be looked through.*fewer or shorter lines/);
  });

  test('more corners than an opening may have: not drawn further', async () => {
    const dots = '<circle cx="100" cy="100" r="90"/>'.repeat(4000);
    expect(await refusal(() => drawingOutlines('a.svg', svg(dots)))).toMatch(/more than 200000 corners/);
  });
});

test.each([
  ['<style>.a{display:none}</style>', '"display"'],
  [
    '<defs><style type="text/css"><![CDATA[\n  .a { fill: none;\n visibility : hidden }]]></style></defs>',
    '"visibility"',
  ],
  ['<STYLE>circle { r: 3px }</STYLE>', '"r"'],
  ['<style>.a{fill:none;/* off */Clip-Path:url(#b)}</style>', '"Clip-Path"'],
  ['<style>.a{opacity: 0.0}</style>', '"opacity"'],
  ['<style>@import "other.css";</style>', '"@import"'],
  ['<?xml-stylesheet href="other.css"?>', '"xml-stylesheet"'],
])('a style sheet that decides what is seen where is refused: %s', async (style, said) => {
  const text = svg(`${style}<circle class="a" cx="5" cy="5" r="3"/>`);
  expect(await refusal(() => drawingOutlines('a.svg', text))).toContain(said);
});

test.each([
  ['<circle clip-path="url(#b)" cx="5" cy="5" r="3"/>', '"clip-path"'],
  ['<g style="mask:url(#b)"><circle cx="5" cy="5" r="3"/></g>', '"mask"'],
  ['<circle style="r: 9px" cx="5" cy="5" r="3"/>', '"r"'],
  ['<circle style="rotate: 30deg" cx="5" cy="5" r="3"/>', '"rotate"'],
  ['<g transform="rotate(9)" style="transform-origin: 5px 0"><circle r="3"/></g>', '"transform-origin"'],
  ['<switch><circle r="3"/><circle r="4"/></switch>', 'holds switch'],
  ['<circle r="3"><animate attributeName="r" to="9"/></circle>', 'holds animate'],
])('what shows a shape elsewhere, or in part, is refused: %s', async (shapes, said) => {
  expect(await refusal(() => drawingOutlines('a.svg', svg(shapes)))).toContain(said);
});

test('a style sheet of colours and line widths is passed over', async () => {
  const style =
    '<style>.a, rect:hover { fill: none; stroke:#000; stroke-width:1px; font-family: serif; opacity:.05; fill-opacity:0; clip-rule:evenodd }</style>';
  expect(await drawingOutlines('a.svg', svg(`${style}<rect class="a" width="10" height="5"/>`))).toHaveLength(
    1,
  );
});

test('what is no drawing is refused; text in a DXF is not cut', async () => {
  for (const text of ['leaf', '<p>leaf</p>', '<svg><'])
    expect(await refusal(() => drawingOutlines('a.svg', text))).toMatch(/cannot be read as SVG/);
  const square = line(0, 0, 9, 0) + line(9, 0, 9, 9) + line(9, 9, 0, 9) + line(0, 9, 0, 0);
  const said = '0\nTEXT\n8\n0\n10\n1\n20\n1\n40\n2\n1\nleaf\n';
  expect(await drawingOutlines('a.dxf', dxf(square + said))).toEqual(
    await drawingOutlines('a.dxf', dxf(square)),
  );
});

describe('drawings that are long in one way', () => {
  const svg = (inside: string) =>
    drawingOutlines('a.svg', `<svg width="9mm" height="9mm" viewBox="0 0 9 9">${inside}</svg>`);
  const refusal = (inside: string) => svg(inside).catch((e: Error) => e.message);

  test('5,000 corners after one letter are those of as many letters, whichever it is', async () => {
    const corners = Array.from({ length: 5000 }, (_, i) => [(i % 173) + 0.5, (i % 89) - 3] as const);
    const steps: readonly (readonly [string, string, (p: readonly [number, number]) => string])[] = [
      ['M', 'L', ([x, y]) => `${x} ${y}`],
      ['m', 'l', ([x, y]) => `${x},${y}`],
      ['M0 0L', 'L', ([x, y]) => `${x} ${y}`],
      ['M0 0h', 'h', ([x]) => `${x}`],
      ['M0 0a', 'a', ([x]) => `1 1 0 01${x} 0`],
      ['M0 0t', 't', ([x, y]) => `${x} ${y}`],
    ];
    for (const [first, then, said] of steps) {
      const all = corners.map(said);
      const letters = (run: string) => run.replace(/[^a-z]/gi, '').length;
      const runs = shortRuns(`${first}${all.join(' ')}z`);
      expect(letters(runs)).toBeLessThan(100);
      expect(Math.max(...runs.split(/[a-z]/i).map((r) => r.length))).toBeLessThan(10_000);
      const written = `${first}${all[0]}${all
        .slice(1)
        .map((a) => then + a)
        .join('')}z`;
      const flat = (d: string) =>
        d
          .replace(/[\s,]+/g, ' ')
          .replace(/[a-z]/gi, ' ')
          .replace(/\s+/g, ' ')
          .trim();
      expect(flat(runs)).toBe(flat(written));
    }
    expect(shortRuns(`M${'1 '.repeat(20_001)}x`).endsWith('1 x')).toBe(true); // for the reader to refuse
  });

  test('as many strokes as there may be that meet in one place', async () => {
    const star = Array.from({ length: 20_000 }, (_, i) => `M1 1L${2 + i} 2`);
    expect(await refusal(`<path d="${star.join('')}"/><path d="M2 2L3 3"/>`)).toContain(
      'a chain of lines is open',
    );
  });

  test('elements without end, or corners of one path, are refused before they take room', async () => {
    expect(await refusal('<g/>'.repeat(410_000))).toContain('more than 200000 elements');
    expect(await refusal(`<path d="M${' 0 0 1 1'.repeat(110_000)}"/>`)).toContain('more than 200000 corners');
  });
});
