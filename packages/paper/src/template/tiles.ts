import type { Box, Point } from '@tinwright/core';
import { letterOf } from '@tinwright/files/internal';

/** A page of a template: which part of the pattern lies on it, and where its neighbours are. mm of the pattern */
export interface Tile {
  readonly row: number;
  readonly column: number;
  /** `B2`: row B from below, second from the left; '' for the only one. */
  readonly name: string;
  readonly area: Box;
}

/** A template cut into tiles for one size of page. mm */
export interface Tiling {
  readonly page: { readonly width: number; readonly height: number };
  /** Height of the strip of text under each tile. */
  readonly strip: number;
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
}

/** Margin that printers leave white, mm. */
export const MARGIN = 8;
/** What two tiles share, mm. */
export const OVERLAP = 10;

const ROUND = 6; // mm of white round a pattern
const LONGEST = 5000; // mm of a page; PDF ends at 5080
const LEAST_LENGTH = 130; // mm of a page from a roll: the square to measure has to fit

/** What can be printed on: sheets of a size, or a roll so wide. mm */
export type Medium =
  | { readonly kind: 'sheets'; readonly width: number; readonly height: number }
  | { readonly kind: 'roll'; readonly width: number };

/**
 * The tiling of a blank with the fewest pages, of those the one with the least paper.
 * @param strip height of the text under a tile, by the width of the page
 */
export function tilingOf(blank: Point, medium: Medium, strip: (width: number) => number): Tiling {
  const pages: readonly Tiling['page'][] =
    medium.kind === 'sheets'
      ? [
          { width: medium.width, height: medium.height },
          { width: medium.height, height: medium.width },
        ]
      : [
          { width: medium.width, height: lengthFor(blank[1] + strip(medium.width)) },
          { width: lengthFor(blank[0]), height: medium.width },
        ];
  const tilings = pages.map((page) => tiled(blank, page, strip(page.width)));
  const paper = ({ page, tiles }: Tiling) => page.width * page.height * tiles.length;
  return tilings.toSorted((a, b) => a.tiles.length - b.tiles.length || paper(a) - paper(b))[0] as Tiling;
}

const lengthFor = (along: number): number =>
  Math.min(LONGEST, Math.max(LEAST_LENGTH, Math.ceil(along + 2 * ROUND + 2 * MARGIN)));

function tiled(blank: Point, page: Tiling['page'], strip: number): Tiling {
  const size: Point = [page.width - 2 * MARGIN, page.height - 2 * MARGIN - strip];
  const count = ([0, 1] as const).map((k) =>
    Math.max(1, Math.ceil((blank[k] + 2 * ROUND - OVERLAP) / (size[k] - OVERLAP) - 1e-9)),
  );
  const [columns, rows] = count as [number, number];
  const tiles = Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    const min: Point = [column * (size[0] - OVERLAP) - ROUND, row * (size[1] - OVERLAP) - ROUND];
    const name = rows * columns === 1 ? '' : `${letterOf(row)}${column + 1}`;
    return { row, column, name, area: { min, max: [min[0] + size[0], min[1] + size[1]] } };
  });
  return { page, strip, rows, columns, tiles };
}
