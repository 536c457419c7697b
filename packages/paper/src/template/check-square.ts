import type { Box, Point } from '@tinwright/core';
import type { PaperRoom } from '../figure/room.js';
import { letter } from '../page/letter.js';
import type { Item } from '../page/page.js';
import type { TypeSetting } from '../page/table.js';

const LEG = 6; // mm of each line at a corner
const STEP = 7; // mm between places tried

/** A square to measure a print with, told by its corners so that it is not taken for a part of the pattern. */
export function checkSquare(
  side: number,
  text: string,
  area: Box,
  room: PaperRoom,
  { face, height }: TypeSetting,
): readonly Item[] {
  let best: { items: readonly Item[]; crossed: number } | null = null;
  for (let y = area.max[1] - side - STEP; y > area.min[1] + 1; y -= STEP)
    for (let x = area.min[0] + STEP; x + side < area.max[0] - 1; x += STEP) {
      const lines = cornersOf([x, y], side);
      const words = letter(face, text, [x + 2, y + 2], { height, value: side });
      if (!room.free(words)) continue;
      const crossings = lines.flatMap(({ points: [a, b, c] }) => [
        room.crossings([a as Point, b as Point]),
        room.crossings([b as Point, c as Point]),
      ]);
      const crossed = crossings.reduce<number>((sum, n) => sum + (n ?? 10), 0);
      if (crossed < (best?.crossed ?? Infinity)) best = { items: [...lines, words], crossed };
      if (crossed === 0) return [...lines, words];
    }
  return best?.items ?? cornersOf([area.min[0] + 2, area.min[1] + 2], side);
}

type Corner = Extract<Item, { kind: 'stroke' }>;

function cornersOf([x, y]: Point, side: number): readonly Corner[] {
  return ([0, 1] as const).flatMap((i) =>
    ([0, 1] as const).map((j): Corner => {
      const [cx, cy] = [x + i * side, y + j * side];
      const [u, v] = [i === 0 ? LEG : -LEG, j === 0 ? LEG : -LEG];
      return {
        kind: 'stroke',
        pen: 'narrow',
        points: [
          [cx + u, cy],
          [cx, cy],
          [cx, cy + v],
        ],
      };
    }),
  );
}
