import type { Loop, Point } from '@tinwright/core';
import { contains, distanceToLoop, loopArea } from '@tinwright/core/internal';
import {
  type CutStyle,
  cutSheet,
  findNest,
  type NestedSheet,
  QUARTER_TURNS,
  type SheetCuts,
} from '@tinwright/cutting';
import { expect, test } from 'vitest';
import { loop, PARTS, part, rack, rectangle, sheet } from '../nest/parts.js';

const STYLE: CutStyle = { kerf: 1.5, lead: 'line', leadLength: 4, ties: 0, tieWidth: 0.5 };
const nest = findNest(
  { parts: PARTS, rack: rack(sheet('offer', 500, 400)), spacing: 6, edge: 5, turns: QUARTER_TURNS },
  { seeds: [1], moves: 300 },
);
const [laid] = nest.sheets as readonly [NestedSheet];
const cut = (style: Partial<CutStyle> = {}): SheetCuts => cutSheet(laid, PARTS, { ...STYLE, ...style });
const drawn = (id: string): Loop => {
  const piece = laid.pieces.find((p) => p.id === id) as NestedSheet['pieces'][number];
  const [a, b, c, d, e, f] = piece.matrix;
  const { outline } = PARTS.find((p) => p.part === piece.part) as (typeof PARTS)[number];
  return outline.map(({ at: [x, y], bulge }) => ({ at: [a * x + c * y + e, b * x + d * y + f], bulge }));
};

test('outlines run clockwise, holes counter-clockwise, all half a kerf off on the side of the scrap', () => {
  for (const { kind, loop: path, piece } of cut().contours) {
    expect(Math.sign(loopArea(path))).toBe(kind === 'outline' ? -1 : 1);
    if (kind === 'hole') continue;
    for (const { at } of path) {
      expect(distanceToLoop(at, drawn(piece))).toBeCloseTo(0.75, 6);
      expect(contains(drawn(piece), at)).toBe(false);
    }
  }
});

test('every way in starts on scrap, off every part, and ends where the cut begins', () => {
  for (const kind of ['line', 'arc'] as const)
    for (const { leadIn, leadOut, loop: path, piece } of cut({ lead: kind }).contours) {
      expect(leadIn).not.toBeNull();
      const from = leadIn?.from as Point;
      expect(leadIn?.to).toEqual(path[0]?.at);
      expect(distanceToLoop(from, path)).toBeGreaterThan(1);
      for (const p of laid.pieces) if (p.part !== 'ring') expect(contains(drawn(p.id), from)).toBe(false);
      if (leadOut !== null) expect(leadOut.from).toEqual(path[0]?.at);
      expect(piece).not.toBe('');
    }
});

test('long ways in between close pieces: none starts in the metal of a neighbour', () => {
  const parts = [part('plate', rectangle(60, 40), { quantity: 6 })];
  const close = findNest(
    { parts, rack: rack(sheet('s', 200, 92)), spacing: 4, edge: 2, turns: [0] },
    { seeds: [1], moves: 50 },
  ).sheets[0] as NestedSheet;
  const boxes = close.pieces.map(({ matrix: [, , , , e, f] }) => [e, f] as const);
  const { contours } = cutSheet(close, parts, { ...STYLE, leadLength: 14 });
  expect(contours).toHaveLength(6);
  for (const { leadIn } of contours) {
    const [x, y] = leadIn?.from ?? [-1, -1];
    expect(boxes.filter(([e, f]) => x > e && x < e + 60 && y > f && y < f + 40)).toEqual([]);
  }
});

test('a piece in the hole of another is cut before that hole, holes before their outline', () => {
  const parts = [
    ...PARTS.filter((p) => p.part === 'ring').map((p) => ({ ...p, quantity: 1 })),
    part('cap', rectangle(30, 30)),
  ];
  const one = findNest(
    { parts, rack: rack(sheet('bit', 130, 130)), spacing: 6, edge: 3, turns: [0] },
    { seeds: [1], moves: 100 },
  );
  const { contours } = cutSheet(one.sheets[0] as NestedSheet, parts, STYLE);
  expect(contours.map((c) => `${c.piece} ${c.kind}`)).toEqual([
    'cap-1 outline',
    'ring-1 hole',
    'ring-1 outline',
  ]);
});

test('micro-joints: as many gaps as asked, on the line, each a kerf wider than the metal asked for, as a torch is round', () => {
  for (const { kind, ties, loop: path, piece } of cut({ ties: 3 }).contours) {
    if (kind === 'hole' || piece.startsWith('ring')) {
      expect(ties).toEqual([]);
      continue;
    }
    expect(ties).toHaveLength(3);
    for (const [a, b] of ties) {
      expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeCloseTo(0.5 + STYLE.kerf, 9);
      expect(distanceToLoop(a, path)).toBeLessThan(1e-6);
    }
  }
});

test('what a cut is too wide for is named: a slot that closes, a hole that is gone', () => {
  const slotted = loop([0, 0], [60, 0], [60, 40], [30.5, 40], [30.5, 20], [29.5, 20], [29.5, 40], [0, 40]);
  const parts = [part('comb', slotted, { holes: [loop([10, 10], [11, 10], [11, 15], [10, 15])] })];
  const one = findNest(
    { parts, rack: rack(sheet('s', 100, 100)), spacing: 6, edge: 5, turns: [0] },
    { seeds: [1], moves: 10 },
  );
  const { remarks, contours } = cutSheet(one.sheets[0] as NestedSheet, parts, STYLE);
  expect(remarks.map((r) => r.code).toSorted()).toEqual(['edge-under-kerf', 'hole-closes', 'slot-closes']);
  expect(remarks.find((r) => r.code === 'edge-under-kerf')).toMatchObject({
    piece: 'comb-1',
    value: 1,
    limit: 1.5,
  });
  expect(contours.map((c) => c.kind)).toEqual(['outline']);
});
