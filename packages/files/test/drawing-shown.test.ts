import { drawingOutlines } from '@tinwright/files';
import { describe, expect, test, vi } from 'vitest';
import { areaIn, areaOf, dxf, line, square, svg } from './drawings.js';

describe('a drawing is read as it is shown', () => {
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

  test('shapes of no size are shown by nobody', async () => {
    const none = '<rect width="0" height="9"/><rect width="9"/><circle cx="9"/><ellipse rx="9" ry="0"/>';
    expect(await areaIn('a.svg', svg(`${none}<rect width="40" height="10"/>`))).toBeCloseTo(4, 6);
  });

  test.each([
    ['a circle', '<circle r="1000"/>'],
    ['two arcs', '<path d="M-1000 0A1000 1000 0 0 0 0 1000A1000 1000 0 1 0 -1000 0"/>'],
    ['arcs whose radii grow', '<path d="M-1000 0A1 1 77 0 1 1000 0A1 1 0 1 1 -1000 0"/>'],
    ['a tilted ellipse, stretched', '<g transform="scale(2 1)"><ellipse rx="500" ry="1000"/></g>'],
  ])('%s of a metre is round to the hundredth', async (_, drawn) => {
    const [outline = []] = await drawingOutlines('a.svg', svg(drawn, 'width="1mm" viewBox="0 0 1 1"'));
    const off = outline.flatMap(([x, y], i) => {
      const [u, v] = outline[(i + 1) % outline.length] as readonly [number, number, number];
      return [Math.hypot(x, y), Math.hypot((x + u) / 2, (y + v) / 2)].map((r) => Math.abs(r - 1000));
    });
    expect(outline.length).toBeGreaterThan(500);
    expect(Math.max(...off)).toBeLessThan(0.015);
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
    const circle = `0\nCIRCLE\n8\n0\n10\n50\n20\n0\n40\n10\n${back}`;
    const [round = []] = await drawingOutlines('a.dxf', dxf(circle));
    expect(areaOf([round])).toBeCloseTo(100 * Math.PI, 6);
    expect(round.map(([x]) => Math.round(x)).toSorted()).toEqual([-40, -60]);
  });

  test('a polyline of a DXF keeps its corners, whatever else is said of each', async () => {
    const corners = ['10\n0\n20\n0\n', '10\n30\n20\n0\n42\n0\n', '10\n30\n20\n20\n', '10\n0\n20\n20\n'];
    const drawn = (after: (i: number) => string) =>
      `0\nLWPOLYLINE\n8\n0\n90\n4\n70\n1\n43\n0\n${corners.map((c, i) => c + after(i)).join('')}`;
    const circle = '0\nCIRCLE\n8\n0\n10\n90\n20\n0\n40\n10\n';
    for (const after of [() => '91\n0\n', (i: number) => (i === 1 ? '91\n7\n' : ''), () => '1000\nnote\n'])
      expect(await areaIn('a.dxf', dxf(drawn(after) + circle))).toBeCloseTo(600 + 100 * Math.PI, 6);
  });

  test('codes that its reader has no type for are kept from it: it would print them', async () => {
    const said = vi.spyOn(console, 'log');
    expect(await areaIn('a.dxf', dxf(square('150\n\u009b31mred\n')))).toBeCloseTo(100, 6);
    expect(said).not.toHaveBeenCalled();
    said.mockRestore();
  });
});
