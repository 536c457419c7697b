import type { Box, Point } from '@tinwright/core';
import { clipped } from '../figure/clip.js';
import { type Label, placed } from '../figure/labels.js';
import { roomIn } from '../figure/room.js';
import { bendText } from '../marking/marking-table.js';
import { type Item, moved } from '../page/page.js';
import { bendNumber, groupsOf } from '../pattern/features.js';
import type { PatternAsk } from '../pattern/pattern-ask.js';
import { patternLines } from '../pattern/pattern-lines.js';
import { checkSquare } from './check-square.js';
import { jointMarks } from './joint-marks.js';
import { MARGIN, type Tile, type Tiling } from './tiles.js';

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

/** Bends and hole sizes as far as they lie on a tile. */
function labelsOn({ flat, features, sights, dims, words }: PatternAsk, area: Box): readonly Label[] {
  const on = (p: Point) => p.every((v, k) => v > (area.min[k] as number) && v < (area.max[k] as number));
  const bends = flat.bends.flatMap((b, i): readonly Label[] => {
    const [from, to] = clipped(b.line, false, area)[0] ?? [];
    if (from === undefined || to === undefined) return [];
    return [
      { texts: [bendText([bendNumber(i)], b, dims, words), bendNumber(i)], of: { kind: 'line', from, to } },
    ];
  });
  const seen = sights.flatMap((s): readonly Label[] => {
    const [from, to] = clipped(s.line, false, area)[0] ?? [];
    if (from === undefined || to === undefined) return [];
    const number = bendNumber(flat.bends.findIndex((b) => b.id === s.bend));
    return [{ texts: [words.marking.sight(number), `S${number.slice(1)}`], of: { kind: 'line', from, to } }];
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
  return [
    ...bends,
    ...seen,
    ...holes,
    ...panels.filter(({ of }) => of.kind === 'area' && of.corners.every(on)),
  ];
}
