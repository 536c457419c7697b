import type { Box, Point } from '@tinwright/core';
import { type Item, moved } from '../page/page.js';
import { clipped } from '../plan/clip.js';
import { bendNumber, groupsOf } from '../plan/features.js';
import { type Label, placed } from '../plan/labels.js';
import { bendText } from '../plan/marking-table.js';
import type { PatternAsk } from '../plan/pattern-ask.js';
import { patternLines } from '../plan/pattern-lines.js';
import { roomIn } from '../plan/room.js';
import { checkSquare } from './check-square.js';
import { MARGIN, OVERLAP, type Tile, type Tiling } from './tiles.js';

const CROSS = 3; // mm, half a cross that tiles are joined by

/** A square to measure: its side, mm, and what is written in it. */
export interface Square {
  readonly side: number;
  readonly text: string;
}

/** What lies on a tile at full size: the pattern, marks for gluing, and a square to measure. mm of the page */
export function tileItems(ask: PatternAsk, tiling: Tiling, tile: Tile, square: Square): readonly Item[] {
  const { area } = tile;
  const lines = patternLines(ask, 1).flatMap((item) => inside(item, area));
  const joints = jointMarks(ask, tiling, tile);
  const room = roomIn(area);
  room.add([...lines, ...joints.items]);
  const texts: Item[] = [];
  const add = (items: readonly Item[]) => {
    room.add(items);
    texts.push(...items);
  };
  for (const label of joints.labels) add(placed(label, room, ask.face, ask.height) ?? []);
  add(checkSquare(square.side, square.text, area, room, ask));
  for (const label of labelsOn(ask, area)) add(placed(label, room, ask.face, ask.height) ?? []);
  return moved(
    [...lines, ...joints.items, ...texts],
    [MARGIN - area.min[0], MARGIN + tiling.strip - area.min[1]],
  );
}

/** What of a thing lies in a box; circles that reach out of it as runs of short lines. */
function inside(item: Item, area: Box): readonly Item[] {
  if (item.kind === 'words' || item.kind === 'fill') return [];
  if (item.kind === 'stroke')
    return clipped(item.points, item.closed === true, area).map(
      (points): Item => ({ kind: 'stroke', pen: item.pen, points }),
    );
  const { centre, radius, pen } = item;
  const whole = ([0, 1] as const).every(
    (k) => centre[k] - radius > area.min[k] && centre[k] + radius < area.max[k],
  );
  if (whole) return [item];
  const n = 64 + Math.ceil(8 * Math.sqrt(radius));
  const points = Array.from({ length: n }, (_, i): Point => {
    const a = (2 * Math.PI * i) / n;
    return [centre[0] + radius * Math.cos(a), centre[1] + radius * Math.sin(a)];
  });
  return clipped(points, true, area).map((run): Item => ({ kind: 'stroke', pen, points: run }));
}

interface Joints {
  readonly items: readonly Item[];
  readonly labels: readonly Label[];
}

/** Crosses that both tiles of a seam carry, and along each seam what to do with this tile's edge. */
function jointMarks({ words }: PatternAsk, { rows, columns, tiles }: Tiling, tile: Tile): Joints {
  const { area, row, column } = tile;
  const near = (r: number, c: number) => tiles.find((t) => t.row === r && t.column === c);
  const seams = (
    [
      [0, 'low', near(row, column - 1)],
      [0, 'high', near(row, column + 1)],
      [1, 'low', near(row - 1, column)],
      [1, 'high', near(row + 1, column)],
    ] as const
  ).flatMap(([axis, side, other]) => (other === undefined ? [] : [{ axis, side, other }]));
  const items = seams.flatMap(({ axis, side }): readonly Item[] => {
    const along = axis === 0 ? 1 : 0;
    const edge = side === 'low' ? area.min[axis] : area.max[axis];
    const inner = edge + (side === 'low' ? OVERLAP : -OVERLAP);
    const middle = (edge + inner) / 2;
    const at = (across: number, t: number): Point => {
      const v = area.min[along] + (area.max[along] - area.min[along]) * t;
      return axis === 0 ? [across, v] : [v, across];
    };
    // the edge to cut is drawn, and on the other tile where it comes to lie
    const line: Item = {
      kind: 'stroke',
      pen: 'faint',
      points: [at(side === 'low' ? edge : inner, 0), at(side === 'low' ? edge : inner, 1)],
    };
    return [line, ...[0.2, 0.5, 0.8].flatMap((t) => plus(at(middle, t)))];
  });
  const labels = seams.map(
    ({ axis, side, other }): Label => ({
      texts: [side === 'low' ? words.template.cut : words.template.glue(other.name)],
      of: { kind: 'area', corners: stripOf(area, axis, side) },
    }),
  );
  return { items: rows * columns === 1 ? [] : items, labels };
}

function plus([x, y]: Point): readonly Item[] {
  return [
    {
      kind: 'stroke',
      pen: 'narrow',
      points: [
        [x - CROSS, y],
        [x + CROSS, y],
      ],
    },
    {
      kind: 'stroke',
      pen: 'narrow',
      points: [
        [x, y - CROSS],
        [x, y + CROSS],
      ],
    },
  ];
}

function stripOf({ min, max }: Box, axis: 0 | 1, side: 'low' | 'high'): readonly Point[] {
  const from = side === 'low' ? min[axis] : max[axis] - OVERLAP;
  const to = from + OVERLAP;
  return axis === 0
    ? [
        [from, min[1]],
        [to, min[1]],
        [to, max[1]],
        [from, max[1]],
      ]
    : [
        [min[0], from],
        [max[0], from],
        [max[0], to],
        [min[0], to],
      ];
}

/** Bends and hole sizes as far as they lie on a tile. */
function labelsOn({ flat, features, dims, words }: PatternAsk, area: Box): readonly Label[] {
  const on = (p: Point) => p.every((v, k) => v > (area.min[k] as number) && v < (area.max[k] as number));
  const bends = flat.bends.flatMap((b, i): readonly Label[] => {
    const [from, to] = clipped(b.line, false, area)[0] ?? [];
    if (from === undefined || to === undefined) return [];
    return [
      { texts: [bendText([bendNumber(i)], b, dims, words), bendNumber(i)], of: { kind: 'line', from, to } },
    ];
  });
  const round = [
    ...features.holes,
    ...flat.marks.flatMap((m) => (m.hole === null ? [] : [{ at: m.at, diameter: m.hole }])),
  ].filter((h) => on(h.at));
  const holes = groupsOf(round, (h) => dims.fine(h.diameter)).map(
    ([text, list]): Label => ({
      texts: [words.hole(1, text, '')],
      of: { kind: 'points', at: list.map((h) => h.at), radius: (list[0]?.diameter ?? 0) / 2 },
    }),
  );
  const panels = flat.panels.map(
    ({ id, shape }): Label => ({ texts: [id], of: { kind: 'area', corners: shape } }),
  );
  return [...bends, ...holes, ...panels.filter(({ of }) => of.kind === 'area' && of.corners.every(on))];
}
