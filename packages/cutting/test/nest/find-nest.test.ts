import { findNest, type Nest, type NestAsk, QUARTER_TURNS, verifyNest } from '@tinwright/cutting';
import { expect, test } from 'vitest';
import { PARTS, part, rack, rectangle, sheet } from './parts.js';

const ask = (more: Partial<NestAsk> = {}): NestAsk => ({
  parts: PARTS,
  rack: rack(sheet('offer', 500, 400, { count: 5 })),
  spacing: 4,
  edge: 3,
  turns: QUARTER_TURNS,
  ...more,
});
const search = { seeds: [1, 2], moves: 1500 };
const pieces = (nest: Nest) => nest.sheets.flatMap((s) => s.pieces);

test('mixed parts: all there, none closer than asked, the same every time', () => {
  const nest = findNest(ask(), search);
  expect(verifyNest(nest, PARTS)).toEqual([]);
  expect(pieces(nest)).toHaveLength(23);
  expect(nest.missing).toEqual([]);
  expect(nest.sheets).toHaveLength(1);
  expect(findNest(ask(), search)).toEqual(nest);
});

test('a part smaller than the hole of another is laid in it when the sheet has no room beside', () => {
  const ring = PARTS.filter((p) => p.part === 'ring').map((p) => ({ ...p, quantity: 1 }));
  const parts = [...ring, part('cap', rectangle(40, 40))];
  const nest = findNest(ask({ parts, rack: rack(sheet('bit', 127, 127)) }), search);
  expect(verifyNest(nest, parts)).toEqual([]);
  expect(nest.missing).toEqual([]);
  expect(pieces(nest)).toHaveLength(2);
});

test('an L-shaped offcut is filled first, in its arms only', () => {
  const outline = [
    [0, 0],
    [400, 0],
    [400, 100],
    [100, 100],
    [100, 300],
    [0, 300],
  ] as const;
  const offcut = sheet('el', 400, 300, { origin: 'offcut', outline });
  const nest = findNest(ask({ rack: rack(sheet('full', 500, 400, { count: 3 }), offcut) }), search);
  expect(verifyNest(nest, PARTS)).toEqual([]);
  expect(nest.sheets.map((s) => s.name)).toContain('el');
  expect(nest.sheets.find((s) => s.name === 'el')?.pieces.length).toBeGreaterThan(4);
});

test('grain: parts with rolling lines along x lie along the sheet of that grain, crossed on the other', () => {
  const parts = [part('slat', rectangle(200, 30), { quantity: 4, grain: 'x' })];
  const along = findNest(ask({ parts, rack: rack(sheet('s', 300, 300, { grain: 'x' })) }), search);
  expect(pieces(along).map((p) => Math.abs(p.matrix[0]))).toEqual([1, 1, 1, 1]);
  const crossed = findNest(ask({ parts, rack: rack(sheet('s', 300, 300, { grain: 'y' })) }), search);
  expect(pieces(crossed).map((p) => Math.abs(p.matrix[0]))).toEqual([0, 0, 0, 0]);
  expect(verifyNest(crossed, parts)).toEqual([]);
});

test.each([
  ['larger than every sheet', [part('p', rectangle(600, 300))], 'too-large'],
  ['of a metal that is not there', [part('p', rectangle(10, 10), { material: 'copper' })], 'no-metal'],
  ['too many for the stock', [part('p', rectangle(350, 280), { quantity: 7 })], 'stock-short'],
  ['too long along the grain', [part('p', rectangle(450, 300), { grain: 'y' })], 'grain'],
] as const)('a part %s is missing and says why', (_, parts, why) => {
  const stock = rack(sheet('offer', 500, 400, { count: 5, grain: 'x' }));
  const nest = findNest(ask({ parts, rack: stock }), search);
  expect(nest.missing.map((m) => m.why)).toEqual([why]);
  expect(verifyNest(nest, parts)).toEqual([]);
});

test('trim is kept free', () => {
  const trim = { west: 20, east: 10, south: 15, north: 5 };
  const nest = findNest(ask({ rack: rack(sheet('s', 600, 500, { trim })) }), search);
  expect(nest.missing).toEqual([]);
  expect(verifyNest(nest, PARTS)).toEqual([]);
});

test('no parts: no sheets', () => {
  expect(findNest(ask({ parts: [] }), search).sheets).toEqual([]);
});

test.each([
  [{ spacing: 0 }, /spacing 0 mm given, above 0/],
  [{ edge: -1 }, /edge -1 mm given, 0 or more/],
])('what cannot be asked is refused', (wrong, words) => {
  expect(() => findNest(ask(wrong), search)).toThrow(words);
});

test('a verifier that is told of a moved, turned, mirrored or doubled piece says so', () => {
  const parts = [part('slat', rectangle(200, 30), { quantity: 2, grain: 'x' })];
  const nest = findNest(ask({ parts, rack: rack(sheet('s', 300, 300, { grain: 'x' })) }), search);
  const change = (matrix: readonly number[], id = 'slat-1') => {
    const [first, second] = pieces(nest) as [Nest['sheets'][0]['pieces'][0], Nest['sheets'][0]['pieces'][0]];
    const changed = [{ ...first, id, matrix }, second] as Nest['sheets'][0]['pieces'];
    return verifyNest(
      { ...nest, sheets: [{ ...(nest.sheets[0] as Nest['sheets'][0]), pieces: changed }] },
      parts,
    ).map((f) => f.code);
  };
  const [, second] = pieces(nest) as [Nest['sheets'][0]['pieces'][0], Nest['sheets'][0]['pieces'][0]];
  const [, , , , e, f] = second.matrix;
  const [a, , , d] = second.matrix;
  expect(change(second.matrix)).toEqual(['overlap']);
  expect(change([a, 0, 0, d, e, f + a * 33])).toEqual(['too-close']);
  expect(change([1, 0, 0, 1, -1, 200])).toEqual(['off-sheet']);
  expect(change([1, 0, 0, -1, 20, 250])).toEqual(['mirrored']);
  expect(change([0, 1, -1, 0, 295, 80])).toEqual(['turned-against-grain']);
  expect(change([1, 0, 0, 1, 20, 200], 'slat-2')).toEqual(['quantity']);
});

test('10,000 equal parts: bed after bed comes out the same, and every piece is there once', () => {
  const many = part('tag', rectangle(180, 120), { quantity: 10_000 });
  const stock = rack(sheet('full', 2000, 1000, { count: Number.POSITIVE_INFINITY }));
  const nest = findNest(
    { parts: [many], rack: stock, spacing: 6, edge: 5, turns: [0] },
    { seeds: [1], moves: 1 },
  );
  expect(nest.missing).toEqual([]);
  expect(new Set(nest.sheets.flatMap((s) => s.pieces.map((p) => p.id))).size).toBe(10_000);
  const [first, ...others] = nest.sheets.slice(0, -1);
  const places = (s: typeof first) => s?.pieces.map((p) => p.matrix);
  for (const other of others) expect(places(other)).toEqual(places(first));
  expect(
    verifyNest({ ...nest, sheets: nest.sheets.slice(0, 1), missing: [] }, [
      { ...many, quantity: first?.pieces.length ?? 0 },
    ]),
  ).toEqual([]);
});

test('no parts: no sheets; parts that their grain keeps off every sheet are counted with the reason', () => {
  const stock = rack(sheet('full', 500, 100, { grain: 'x' }));
  const ask = (parts: readonly ReturnType<typeof part>[]) =>
    findNest({ parts, rack: stock, spacing: 6, edge: 5, turns: QUARTER_TURNS }, { seeds: [1], moves: 5 });
  expect(ask([])).toMatchObject({ sheets: [], missing: [] });
  const slat = part('slat', rectangle(400, 60), { quantity: 2, grain: 'y' });
  expect(ask([slat]).missing).toEqual([{ part: 'slat', count: 2, why: 'grain' }]);
});

test('of two kinds of sheets the cheapest that takes all is taken, and the one used best where none does', () => {
  const tile = part('tile', rectangle(90, 90), { quantity: 4 });
  const kinds = [
    sheet('large', 600, 600, { price: 40, count: 9 }),
    sheet('small', 220, 220, { price: 6, count: 9 }),
  ];
  const named = (quantity: number) => {
    const parts = [{ ...tile, quantity }];
    const nest = findNest(ask({ parts, rack: rack(...kinds) }), { seeds: [1], moves: 0 });
    expect(verifyNest(nest, parts)).toEqual([]);
    return nest.sheets.map((s) => s.name.replace(/-\d+$/, ''));
  };
  expect(named(4)).toEqual(['small']);
  // thirty-six tiles for 40 are more for the money than four for 6; the last four go on the cheapest that takes them
  expect(named(40)).toEqual(['large', 'small']);
});
