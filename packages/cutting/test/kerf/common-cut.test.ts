// Where cuts are shared, a general polygon library takes the torch's whole way off the sheet: what is left are the parts.
import { isArc, type Point, type Segment, segments } from '@tinwright/core';
import { arcOf, distanceToSegment } from '@tinwright/core/internal';
import {
  type Contour,
  type CutStyle,
  cutSheet,
  drawTogether,
  findNest,
  type NestedSheet,
  type NestPart,
  QUARTER_TURNS,
  torchWork,
  verifyCuts,
  verifyNest,
} from '@tinwright/cutting';
import {
  areaPathsD,
  differenceD,
  EndType,
  FillRule,
  inflatePathsD,
  JoinType,
  type PathD,
  type PathsD,
  xorD,
} from 'clipper2-ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loop, part, rack, rectangle, sheet } from '../nest/parts.js';

const KERF = 1.5;
const ALONE: CutStyle = { kerf: KERF, lead: 'line', leadLength: 4, ties: 0, tieWidth: 0.5 };
const STYLE: CutStyle = { ...ALONE, commonCuts: 10 };

const flat = (sides: readonly Segment[]): PathD =>
  sides.flatMap((s) => {
    if (!isArc(s)) return [{ x: s.from[0], y: s.from[1] }];
    const { centre, radius, start, sweep } = arcOf(s);
    const n = 4 + Math.ceil(Math.abs(sweep) * 30);
    return Array.from({ length: n }, (_, k) => {
      const angle = start + (sweep * k) / n;
      return { x: centre[0] + radius * Math.cos(angle), y: centre[1] + radius * Math.sin(angle) };
    });
  });
const open = (run: readonly Segment[]): PathD => {
  const [x, y] = (run.at(-1) as Segment).to;
  return [...flat(run), { x, y }];
};
const grown = (paths: PathsD, by: number, end: EndType) =>
  inflatePathsD(paths, by, JoinType.Round, end, 2, 6, 0.0005);

/** What hangs together once the torch has been everywhere, outer lines only. */
function left({ stock: { x, y } }: NestedSheet, contours: readonly Contour[]): PathsD {
  const whole = contours.filter((c) => c.runs === undefined).map((c) => flat(segments(c.loop)));
  const runs = contours.flatMap((c) => c.runs ?? []).map(open);
  const torch = [...grown(whole, KERF / 2, EndType.Joined), ...grown(runs, KERF / 2, EndType.Round)];
  const all: PathD = [
    { x: 0, y: 0 },
    { x, y: 0 },
    { x, y },
    { x: 0, y },
  ];
  return differenceD([all], torch, FillRule.NonZero, 6).filter((p) => areaPathsD([p]) > 0);
}

/** Every contour frees what it would free if it were cut whole and alone. */
function expectFree(on: NestedSheet, contours: readonly Contour[]): void {
  const islands = left(on, contours);
  for (const c of contours) {
    const alone = grown([flat(segments(c.loop)).toReversed()], -KERF / 2, EndType.Polygon);
    const differs = islands.map((island) => areaPathsD(xorD([island], alone, FillRule.NonZero, 6)));
    expect(Math.min(...differs.map(Math.abs)), c.piece).toBeLessThan(0.02);
  }
}

const laid = (part: string, ...places: readonly Point[]): NestedSheet['pieces'] =>
  places.map(([x, y], i) => ({ id: `${part}-${i + 1}`, part, matrix: [1, 0, 0, 1, x, y] }));
const on = (...pieces: NestedSheet['pieces']): NestedSheet => ({
  name: 'full',
  stock: sheet('full', 500, 400),
  pieces,
  density: 0,
  usedTo: 0,
});

const plate = part('plate', rectangle(100, 50));
const tee = part('tee', loop([20, 0], [60, 0], [60, 30], [80, 30], [80, 60], [0, 60], [0, 30], [20, 30]));
const wedge = part('wedge', loop([0, 0], [90, 0], [50, 60], [0, 60]));
const [w, h] = [100 + KERF, 50 + KERF];

test.each<[string, NestedSheet, readonly NestPart[], number]>([
  ['side by side', on(...laid('plate', [20, 20], [20 + w, 20])), [plate], 50],
  ['one over the half of another', on(...laid('plate', [20, 20], [70, 20 + h])), [plate], 50],
  [
    'four round a crossing',
    on(...laid('plate', [20, 20], [20 + w, 20], [20, 20 + h], [20 + w, 20 + h])),
    [plate],
    2 * 100 + 2 * 50,
  ],
  [
    'one across two: what lies over the cut between them, too',
    on(...laid('plate', [20, 20], [20 + w, 20], [10 + w, 20 + h])),
    [plate],
    50 + 100,
  ],
  ['a corner further up', on(...laid('plate', [20, 20], [20 + w, 45])), [plate], 25],
  ['too short to count: 8 of 10', on(...laid('plate', [20, 20], [20 + w, 62])), [plate], 0],
  ['a little further apart', on(...laid('plate', [20, 20], [20 + w + 0.01, 20])), [plate], 0],
  ['notches', on(...laid('tee', [20, 20], [20 + 80 + KERF, 20], [20, 20 + 60 + KERF])), [tee], 30 + 40],
])('plates %s: %#', (_, sheets, parts, common) => {
  const { contours, remarks } = cutSheet(sheets, parts, STYLE);
  const told = remarks.filter((r) => r.code === 'common-cut').reduce((sum, r) => sum + r.value, 0);
  expect(told).toBeCloseTo(common, 6);
  expect(verifyCuts(sheets, parts, contours, KERF)).toEqual([]);
  expectFree(sheets, contours);
});

test('eight plates in two rows: one pierce, seven starts in a cut, and 700 mm less to cut', () => {
  const places = [0, 1, 2, 3].flatMap((k): Point[] => [
    [10 + k * w, 20],
    [10 + k * w, 20 + h],
  ]);
  const sheets = on(...laid('plate', ...places));
  const rates = { speed: 3000, pierce: 2 };
  const whole = torchWork(cutSheet(sheets, [plate], ALONE).contours, rates);
  const { contours } = cutSheet(sheets, [plate], STYLE);
  const work = torchWork(contours, rates);
  expect(whole).toMatchObject({ spared: 0, pierces: 8, starts: 0 });
  expect(work).toMatchObject({ pierces: 1, starts: 7 });
  // 4 x 100 between the rows, 6 x 50 across; rounds at corners, straight ways over them and ways in change a little
  expect(Math.abs(work.spared - 700)).toBeLessThan(7 * 2 * KERF);
  expect(work.minutes).toBeCloseTo(work.length / 3000 + 16 / 60, 9);
  expectFree(sheets, contours);
});

test('a part without room for a way in waits for its neighbour, and starts in the cut of that one', () => {
  const corner = on(...laid('plate', [1, 1], [1 + w, 1], [1, 1 + h], [1 + w, 1 + h]));
  const alone = cutSheet(corner, [plate], ALONE).remarks.filter((r) => r.code === 'lead-none');
  expect(alone.map((r) => r.piece)).toEqual(['plate-1']);
  const { contours, remarks } = cutSheet(corner, [plate], STYLE);
  expect(remarks.filter((r) => r.code === 'lead-none')).toEqual([]);
  expect(contours.find((c) => c.piece === 'plate-1')?.runs).toHaveLength(1);
  expectFree(corner, contours);
});

test('micro-joints keep off what is cut for two, and are as many as asked', () => {
  const sheets = on(...laid('plate', [20, 20], [20 + w, 20], [20, 20 + h]));
  const { contours } = cutSheet(sheets, [plate], { ...STYLE, ties: 2 });
  expect(contours.map((c) => c.ties.length)).toEqual([2, 2, 2]);
  for (const { piece, ties } of contours)
    for (const [a] of ties)
      for (const other of contours.filter((c) => c.piece !== piece))
        for (const side of segments(other.loop)) expect(distanceToSegment(a, side)).toBeGreaterThan(KERF);
});

test('micro-joints beside the start of a cut are gaps in it; where there is no room, that is told', () => {
  const one = cutSheet(on(...laid('plate', [20, 20])), [plate], { ...STYLE, ties: 1 }).contours[0] as Contour;
  const begin = one.loop[0]?.at as Point;
  for (const p of one.ties.flat()) expect(Math.hypot(p[0] - begin[0], p[1] - begin[1])).toBeGreaterThan(1);
  // nine tiles so wide a joint has no room on: the one in the middle has no edge of its own
  const tile = part('tile', rectangle(45, 45));
  const side = 45 + KERF;
  const places = [0, 1, 2].flatMap((i) => [0, 1, 2].map((k): Point => [20 + i * side, 20 + k * side]));
  const { remarks, contours } = cutSheet(on(...laid('tile', ...places)), [tile], { ...STYLE, ties: 2 });
  expect(contours.filter((c) => c.ties.length === 0)).toHaveLength(1);
  expect(remarks.filter((r) => r.code === 'ties-few')).toMatchObject([
    { piece: 'tile-5', value: 0, limit: 2 },
  ]);
  expect(contours.find((c) => c.piece === 'tile-5')?.runs?.length).toBeLessThanOrEqual(1);
});

test('a cut that leaves a stretch standing, or runs into a part, is a flaw', () => {
  const sheets = on(...laid('plate', [20, 20], [20 + w, 20]));
  const { contours } = cutSheet(sheets, [plate], STYLE);
  const [first, second] = contours as readonly [Contour, Contour];
  const flaws = (...c: readonly Contour[]) => verifyCuts(sheets, [plate], c, KERF).map((f) => f.code);
  const run = second.runs?.[0] ?? [];
  expect(new Set(flaws(first, { ...second, runs: [run.slice(1)] }))).toEqual(new Set(['holds']));
  const last = run.at(-1) as Segment;
  const astray: Segment = { from: last.to, to: [70, 40], bulge: 0 };
  expect(flaws(first, { ...second, runs: [[...run, astray]] })).toContain('into-part');
});

const SHAPES = [plate, tee, wedge, part('strip', rectangle(140, 18)), part('tile', rectangle(45, 45))];

test('random nests drawn together: spacing kept, every part cut off whole, nothing cut into', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1e6 }),
      fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 5, maxLength: 5 }),
      fc.constantFrom(KERF, 4),
      (seed, counts, spacing) => {
        const parts = SHAPES.flatMap((p, i) => (counts[i] ? [{ ...p, quantity: counts[i] as number }] : []));
        const stock = rack(sheet('full', 500, 400));
        const ask = { parts, rack: stock, spacing, edge: 5, turns: QUARTER_TURNS };
        const nest = drawTogether(findNest(ask, { seeds: [seed], moves: 60 }), parts, 10);
        expect(verifyNest(nest, parts)).toEqual([]);
        for (const one of nest.sheets) {
          const { contours } = cutSheet(one, parts, STYLE);
          expect(verifyCuts(one, parts, contours, KERF)).toEqual([]);
          expectFree(one, contours);
        }
      },
    ),
    { numRuns: 6 },
  );
});

test('pieces drawn together on an L-shaped offcut stay in its arms', () => {
  const outline = [
    [0, 0],
    [420, 0],
    [420, 130],
    [130, 130],
    [130, 320],
    [0, 320],
  ] as const;
  const parts = [{ ...plate, quantity: 6 }, part('tile', rectangle(45, 45), { quantity: 6 })];
  const stock = rack(sheet('el', 420, 320, { origin: 'offcut', outline }));
  const ask = { parts, rack: stock, spacing: 6, edge: 5, turns: QUARTER_TURNS };
  const before = findNest(ask, { seeds: [3], moves: 200 });
  const after = drawTogether(before, parts, 10);
  expect(before.sheets[0]?.pieces.length).toBeGreaterThan(5);
  expect(verifyNest(after, parts)).toEqual([]);
  expect(after).not.toEqual(before); // something was drawn together
});
