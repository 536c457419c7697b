import type { Box, Point } from '@tinwright/core';
import type { Label } from '../figure/labels.js';
import type { Item } from '../page/page.js';
import type { PatternAsk } from '../pattern/pattern-ask.js';
import { OVERLAP, type Tile, type Tiling } from './tiles.js';

const CROSS = 3; // mm, half a cross that tiles are joined by

/** Lines of a tile's seams, and texts along them. mm of the pattern */
export interface Joints {
  readonly items: readonly Item[];
  readonly labels: readonly Label[];
}

/** Crosses that both tiles of a seam carry, and along each seam what to do with this tile's edge. */
export function jointMarks({ words }: PatternAsk, { rows, columns, tiles }: Tiling, tile: Tile): Joints {
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
