import { typeface } from '@tinwright/paper/internal';
import { LANGUAGES } from '@tinwright/words/internal';
import { describe, expect, test } from 'vitest';
import { markings } from '../../src/marking/marking.js';
import { markingTable } from '../../src/marking/marking-table.js';
import { dimsOf } from '../../src/page/dims.js';
import { featuresOf } from '../../src/pattern/features.js';
import type { Marking } from '../../src/pattern/marked.js';
import { box, planned, strip } from '../plan/patterns.js';

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

  const near = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  const { sides } = featuresOf(part.flat);

  test.each([
    ['left', 0],
    ['bottom', 1],
  ] as const)('every side along the %s edge that is no edge of the blank is scribed, whole', (edge, axis) => {
    const other = axis === 0 ? 1 : 0;
    const far = part.flat.blank.max[axis];
    const own = sides.filter(
      ({ from, to }) => near(from[axis], to[axis]) && !near(from[axis], 0) && !near(from[axis], far),
    );
    expect(own.length).toBeGreaterThan(3);
    const cuts = list.flatMap((m) =>
      m.kind === 'line' && m.thing.kind === 'cut' && m.edge === edge ? [m] : [],
    );
    for (const { from, to } of own) {
      const [low, high] = [Math.min(from[other], to[other]), Math.max(from[other], to[other])];
      const covers = (reach: readonly (readonly [number, number])[]) =>
        reach.some(([a, b]) => a <= low + 1e-6 && b >= high - 1e-6);
      expect(
        cuts.some((m) => near(m.offset, from[axis]) && covers(m.reach)),
        `${from} ${to}`,
      ).toBe(true);
    }
  });
});

test('every slanted side has its two ends', () => {
  const part = planned({ family: 'gusset-end', width: 200, shoulderHeight: 50, height: 160, crownWidth: 60 });
  const slants = listOf(part).flatMap((m) => (m.kind === 'slant' ? [[m.from, m.to]] : []));
  expect(slants).toHaveLength(4);
  expect(slants.flat()).toEqual(
    expect.arrayContaining([
      [70, 160],
      [130, 160],
      [0, 50],
      [200, 50],
    ]),
  );
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

test.each([
  ['mm', 'Ø2.5'],
  ['1/16', 'Ø3/32'], // 1.57 sixteenths: under three, so to a sixty-fourth
  ['1/64', 'Ø3/32'], // 6.3 sixty-fourths
] as const)('in %s a round relief of 2.5 mm is told as %s', (dims, told) => {
  const { flat } = box();
  const round: Marking = { kind: 'round', at: [10, 10], diameter: 2.5 };
  const setting = { face: typeface(), height: 2.5 };
  const { rows } = markingTable(flat, [round], dimsOf(dims), LANGUAGES.en.plans, setting)(160);
  const texts = rows.flatMap((r) => r.items.flatMap((i) => (i.kind === 'words' ? [i.text] : [])));
  expect(texts).toContain(`relief hole ${told}`);
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
