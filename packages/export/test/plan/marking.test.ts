import { describe, expect, test } from 'vitest';
import { featuresOf } from '../../src/plan/features.js';
import { type Marking, markings } from '../../src/plan/marking.js';
import { box, planned, strip } from './patterns.js';

const listOf = (part: ReturnType<typeof planned>): readonly Marking[] =>
  markings({ flat: part.flat, features: featuresOf(part.flat), sights: [] });

test('a strip: two bend lines across, from the left edge, the nearer first', () => {
  const list = listOf(strip());
  expect(list.map((m) => m.kind)).toEqual(['line', 'line']);
  expect(list.map((m) => 'offset' in m && m.offset.toFixed(2))).toEqual(['29.12', '87.35']);
  expect(list[0]).toMatchObject({ edge: 'left', reach: [[0, 40]], thing: { kind: 'bend', numbers: ['B1'] } });
});

describe('a box with open corners', () => {
  const part = box();
  const list = listOf(part);

  test('lines from the left come before lines from the bottom, each by its offset', () => {
    const lines = list.filter((m) => m.kind === 'line');
    const left = lines.filter((m) => m.edge === 'left').map((m) => m.offset);
    expect(lines.slice(0, left.length).every((m) => m.edge === 'left')).toBe(true);
    expect(left).toEqual(left.toSorted((a, b) => a - b));
  });

  test('every side of the outline that is no edge of the blank is scribed, whole', () => {
    const [X, Y] = part.flat.blank.max;
    const near = (a: number, b: number) => Math.abs(a - b) < 1e-6;
    for (const { from, to } of featuresOf(part.flat).sides) {
      const axis = near(from[0], to[0]) ? 0 : near(from[1], to[1]) ? 1 : null;
      if (axis === null) {
        const ends = list.filter((m) => m.kind === 'slant').map((m) => [m.from, m.to]);
        expect(ends).toContainEqual(expect.arrayContaining([from, to]));
        continue;
      }
      if (near(from[axis], 0) || near(from[axis], axis === 0 ? X : Y)) continue;
      const other = axis === 0 ? 1 : 0;
      const [low, high] = [from[other], to[other]].toSorted((a, b) => a - b) as [number, number];
      const covered = list.some(
        (m) =>
          m.kind === 'line' &&
          m.thing.kind === 'cut' &&
          (m.edge === 'left') === (axis === 0) &&
          near(m.offset, from[axis]) &&
          m.reach.some(([a, b]) => a <= low + 1e-6 && b >= high - 1e-6),
      );
      expect(covered, `${from} ${to}`).toBe(true);
    }
  });
});

test('bends in one line are scribed together across a notch', () => {
  const part = planned({
    family: 'hemmed-channel',
    length: 300,
    width: 160,
    height: 50,
    endTabs: { length: 18 },
  });
  const bends = listOf(part).filter((m) => m.kind === 'line' && m.thing.kind === 'bend' && m.edge === 'left');
  expect(bends).toHaveLength(2); // the three tabs of each end
  for (const m of bends)
    expect(m.kind === 'line' && m.thing.kind === 'bend' && [m.thing.numbers.length, m.reach.length]).toEqual([
      3, 1,
    ]);
});

test('marks are told by the lines that hold most of them', () => {
  const part = planned({
    family: 'tote-end',
    width: 200,
    shoulderHeight: 100,
    height: 200,
    crownWidth: 80,
    tabs: { length: 20 },
    bar: { diameter: 26, below: 34 },
  });
  const holes = listOf(part).filter((m) => m.kind === 'points');
  expect(holes).toHaveLength(1);
  expect(holes[0]).toMatchObject({ thing: { kind: 'hole', purpose: null } });
  expect(
    holes[0]?.kind === 'points' && holes[0].thing.kind === 'hole' && holes[0].thing.diameter,
  ).toBeCloseTo(26, 9);
});

test('round reliefs are told by their centres', () => {
  const list = listOf(box({ relief: 'hole', corner: 'tabbed', tabs: { length: 14 } }));
  const rounds = list.filter((m) => m.kind === 'round');
  expect(rounds).toHaveLength(4);
  for (const r of rounds) expect(r.kind === 'round' && r.diameter).toBeGreaterThan(0);
});

test('a sight line stands among the lines, named after its bend', () => {
  const part = strip();
  const [a, b] = part.flat.bends[0]?.line ?? [];
  if (a === undefined || b === undefined) throw new Error('the strip has bends');
  const line = [a, b].map(([x, y]) => [x - 0.5, y] as const) as [typeof a, typeof b];
  const list = markings({
    flat: part.flat,
    features: featuresOf(part.flat),
    sights: [{ bend: part.flat.bends[0]?.id ?? '', line }],
  });
  expect(list.map((m) => ('thing' in m ? m.thing.kind : m.kind))).toEqual(['sight', 'bend', 'bend']);
});
