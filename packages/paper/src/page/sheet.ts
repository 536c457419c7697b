import type { Box } from '@tinwright/core';
import type { Item } from './page.js';
import type { Paper } from './paper.js';

const FILING = 20; // mm of margin to the left, for holes (ISO 5457)
const MARGIN = 10; // mm of margin elsewhere
const INNER = 3; // mm between the frame and what stands in it
const LARGE = 100_000; // mm² of paper that is read on its side, in two columns

/** Least width of a column of tables, mm. */
export const COLUMN = 168;

/** A sheet one way up: its size, its frame and the room inside over a title block. mm */
export interface PaperSheet {
  readonly width: number;
  readonly height: number;
  readonly frame: Box;
}

/** A sheet of paper upright or on its side. */
export function sheetOf({ width, height }: Paper, way: 'portrait' | 'landscape'): PaperSheet {
  const [w, h] = way === 'portrait' ? [width, height] : [height, width];
  return { width: w, height: h, frame: { min: [FILING, MARGIN], max: [w - MARGIN, h - MARGIN] } };
}

/** The way a paper lies when tables are read on it. */
export const readingSheet = (paper: Paper): PaperSheet =>
  sheetOf(paper, paper.width * paper.height < LARGE ? 'portrait' : 'landscape');

/** Room inside a frame, over a title block of this height. */
export function roomOf({ frame }: PaperSheet, titleHeight: number): Box {
  return {
    min: [frame.min[0] + INNER, frame.min[1] + titleHeight + INNER],
    max: [frame.max[0] - INNER, frame.max[1] - INNER],
  };
}

/** A frame's line. */
export function frameLine({ min, max }: Box): Item {
  return {
    kind: 'stroke',
    pen: 'wide',
    closed: true,
    points: [min, [max[0], min[1]], max, [min[0], max[1]]],
  };
}

/** A box cut into columns of at least this width. */
export function columnsIn({ min, max }: Box, least: number, apart: number): readonly Box[] {
  const count = Math.max(1, Math.floor((max[0] - min[0] + apart) / (least + apart)));
  const width = (max[0] - min[0] - apart * (count - 1)) / count;
  return Array.from({ length: count }, (_, i): Box => {
    const x = min[0] + i * (width + apart);
    return { min: [x, min[1]], max: [x + width, max[1]] };
  });
}
