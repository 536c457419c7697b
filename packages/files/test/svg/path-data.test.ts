import type { Loop, Point } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { pathData } from '../../src/svg/path-data.js';
import { pathPoints, polygonArea } from '../svg-reader.js';

const loop = (...points: readonly (readonly [x: number, y: number, bulge?: number])[]): Loop =>
  points.map(([x, y, bulge = 0]) => ({ at: [x, y] as Point, bulge }));

// areas by hand: a 20 x 10 bar, its east end rounded out or in by a half circle, or its corner by a quarter
const QUARTER = Math.tan(Math.PI / 8); // bulge of 90 degrees
const BAR = 200;
const SHAPES = [
  { name: 'a bar', area: BAR, flags: [], loop: loop([0, 0], [20, 0], [20, 10], [0, 10]) },
  {
    name: 'a bar with its end rounded out',
    area: BAR + (Math.PI * 25) / 2,
    flags: ['0 0', '0 0'], // a half turn in two
    loop: loop([0, 0], [20, 0, 1], [20, 10], [0, 10]),
  },
  {
    name: 'a bar with its end rounded in',
    area: BAR - (Math.PI * 25) / 2,
    flags: ['0 1', '0 1'],
    loop: loop([0, 0], [20, 0, -1], [20, 10], [0, 10]),
  },
  {
    name: 'a bar with one rounded corner of 4 mm',
    area: BAR - 16 + (Math.PI * 16) / 4,
    flags: ['0 0'],
    loop: loop([0, 0], [16, 0, QUARTER], [20, 4], [20, 10], [0, 10]),
  },
  {
    name: 'a bar with a quarter circle let into its corner',
    area: BAR - (Math.PI * 16) / 4,
    flags: ['0 1'],
    loop: loop([0, 0], [16, 0, -QUARTER], [20, 4], [20, 10], [0, 10]),
  },
  {
    name: 'a bar with a disc round its corner, three quarters of it outside',
    area: BAR + (Math.PI * 16 * 3) / 4,
    flags: ['1 0'],
    loop: loop([0, 0], [16, 0, Math.tan((3 * Math.PI) / 8)], [20, 4], [20, 10], [0, 10]),
  },
];

const flagsOf = (d: string) => [...d.matchAll(/A \S+ \S+ \S+ ([01]) ([01])/g)].map((m) => `${m[1]} ${m[2]}`);

describe.each(SHAPES)('$name', ({ area, flags, loop: outline }) => {
  test('keeps its area, and is closed', () => {
    const { points, closed } = pathPoints(pathData({ kind: 'loop', loop: outline }, [0, 0]));
    expect(closed).toBe(true);
    expect(Math.abs(polygonArea(points))).toBeCloseTo(area, 3);
  });

  test('has arcs with the large and sweep flags it should', () => {
    const d = pathData({ kind: 'loop', loop: outline }, [0, 0]);
    // y points down: a path walked counter-clockwise as seen has a negative area; walked back, sweep turns over
    const walked = polygonArea(pathPoints(d).points) < 0 ? flags : flags.map(turned);
    expect(flagsOf(d)).toEqual(walked);
  });
});

const turned = (f: string) => `${f[0]} ${f[2] === '1' ? 0 : 1}`;

test('a full circle of two arcs keeps its area: an arc that ends where it starts would draw nothing', () => {
  const { points, closed } = pathPoints(
    pathData({ kind: 'loop', loop: loop([5, 0, 1], [-5, 0, 1]) }, [0, 0]),
  );
  expect(closed).toBe(true);
  expect(Math.abs(polygonArea(points))).toBeCloseTo(Math.PI * 25, 3);
});

test('the origin moves the path, y up becomes y down', () => {
  const { points } = pathPoints(pathData({ kind: 'loop', loop: loop([0, 0], [3, 0], [3, 2]) }, [10, 20]));
  const corners = new Set(points.map((p) => p.join(' ')));
  expect(corners).toEqual(new Set(['10 20', '13 20', '13 18']));
});

test('a bulge that is no number or one without end is refused', () => {
  for (const bulge of [Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => pathData({ kind: 'loop', loop: loop([0, 0, bulge], [9, 0], [9, 9]) }, [0, 0])).toThrow(
      RangeError,
    );
});
