import type { Box, Point } from '@tinwright/core';
import { placed } from '../figure/labels.js';
import { roomIn } from '../figure/room.js';
import { letter, lines } from '../page/letter.js';
import { type Block, type Item, moved } from '../page/page.js';
import type { PatternAsk } from '../pattern/pattern-ask.js';
import { patternLines } from '../pattern/pattern-lines.js';
import { checkSquare } from './check-square.js';
import type { Square } from './tile-page.js';
import { MARGIN, type Tiling } from './tiles.js';

const LEAD = 1.6;
const APART = 5; // mm

/** The first page of a template of several tiles: what to do with them, where they lie, and a square to measure. */
export function mapBlocks(
  ask: PatternAsk,
  tiling: Tiling,
  square: Square,
  title: string,
  notes: readonly string[],
): readonly Block[] {
  const { face, height, words } = ask;
  const { width, height: tall } = tiling.page;
  const area: Box = { min: [MARGIN, MARGIN], max: [width - MARGIN, tall - MARGIN] };
  const large = 1.4 * height;
  let y = area.max[1] - large;
  const heading = letter(face, title, [MARGIN, y], { height: large, bold: true });
  const text = notes.flatMap((note) =>
    lines(face, note, width - 2 * MARGIN, height).map((line, i) => {
      y -= (i === 0 ? LEAD + 0.4 : LEAD) * height;
      return letter(face, line, [MARGIN, y], { height });
    }),
  );
  const rest: Box = { min: area.min, max: [area.max[0], y - APART] };
  const [map, room] = split(rest, square.side + 16);
  const measured = checkSquare(square.side, square.text, room, roomIn(room), ask);
  return [
    { alt: null, items: [heading, ...text] },
    { alt: words.template.mapAlt(ask.name, tiling.tiles.length), items: tileMap(ask, tiling, map) },
    { alt: null, items: measured },
  ];
}

/** The longer side gives room for the square: to the right of a wide box, under a tall one. */
function split({ min, max }: Box, side: number): readonly [Box, Box] {
  if (max[0] - min[0] > max[1] - min[1])
    return [
      { min, max: [max[0] - side - APART, max[1]] },
      { min: [max[0] - side, min[1]], max },
    ];
  return [
    { min: [min[0], min[1] + side + APART], max },
    { min, max: [max[0], min[1] + side] },
  ];
}

/** The pattern small, with the tiles' edges and names. */
function tileMap(ask: PatternAsk, { tiles }: Tiling, box: Box): readonly Item[] {
  const last = tiles.at(-1)?.area.max as Point;
  const first = tiles[0]?.area.min as Point;
  const size: Point = [last[0] - first[0], last[1] - first[1]];
  const scale = Math.min((box.max[0] - box.min[0]) / size[0], (box.max[1] - box.min[1]) / size[1]);
  const on = ([x, y]: Point): Point => [x * scale, y * scale];
  const edges = tiles.map(
    ({ area: { min, max } }): Item => ({
      kind: 'stroke',
      pen: 'faint',
      closed: true,
      points: [min, [max[0], min[1]] as Point, max, [min[0], max[1]] as Point].map(on),
    }),
  );
  const drawn = [...patternLines(ask, scale), ...edges];
  const room = roomIn({ min: on(first), max: on(last) });
  room.add(drawn);
  const names = tiles.flatMap(({ name, area: { min, max } }) => {
    const corners = [min, [max[0], min[1]] as Point, max, [min[0], max[1]] as Point].map(on);
    const items =
      placed({ texts: [name], of: { kind: 'area', corners } }, room, ask.face, 1.4 * ask.height) ?? [];
    room.add(items);
    return items;
  });
  return moved([...drawn, ...names], [box.min[0] - first[0] * scale, box.max[1] - last[1] * scale]);
}
