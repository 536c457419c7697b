import type { Block, Item, Page } from '../page/page.js';
import { moved } from '../page/page.js';
import type { Paper } from '../page/paper.js';

const MARGIN = 8; // mm that printers leave white, and the page number stands in
const LARGE = 1.45; // pictures for large print: their letters are 2.2 mm high

interface Grid {
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly rows: number;
  readonly scale: number;
}

/** Pictures of steps, as many as fit on a sheet, in their own size or larger for large print. */
export function stepSheets(pictures: readonly Page[], paper: Paper, lettering: number): readonly Page[] {
  const [first] = pictures;
  if (first === undefined) return [];
  const grid = gridFor(first, paper, wantedFor(lettering));
  const { columns, rows, width, height, scale } = grid;
  const each = columns * rows;
  return Array.from({ length: Math.ceil(pictures.length / each) }, (_, n): Page => {
    const own = pictures.slice(n * each, (n + 1) * each);
    return {
      title: first.title,
      width,
      height,
      blocks: own.flatMap((picture, i) => {
        const column = i % columns;
        const row = Math.floor(i / columns);
        const x = (width - columns * picture.width * scale) / 2 + column * picture.width * scale;
        const y = height - (height - rows * picture.height * scale) / 2 - (row + 1) * picture.height * scale;
        return picture.blocks.map((b): Block => ({ ...b, items: moved(scaled(b.items, scale), [x, y]) }));
      }),
    };
  });
}

/** Pictures that stand on one sheet. */
export function perSheet(picture: Page, paper: Paper, lettering: number): number {
  const { columns, rows } = gridFor(picture, paper, wantedFor(lettering));
  return columns * rows;
}

const wantedFor = (lettering: number): number => (lettering > 2.5 ? LARGE : 1);

/** The way up that holds more, as large as wanted or as one picture fits. */
function gridFor({ width, height }: Page, paper: Paper, wanted: number): Grid {
  const ways = [
    [paper.width, paper.height],
    [paper.height, paper.width],
  ] as const;
  const most = Math.max(
    ...ways.map(([w, h]) => Math.min((w - 2 * MARGIN) / width, (h - 2 * MARGIN) / height)),
  );
  const scale = Math.min(wanted, most);
  const grids = ways.map(([w, h]): Grid => {
    const fit = (room: number, size: number) => Math.floor((room - 2 * MARGIN) / (size * scale) + 1e-9);
    return { width: w, height: h, columns: fit(w, width), rows: fit(h, height), scale };
  });
  return grids.reduce((a, b) => (b.columns * b.rows > a.columns * a.rows ? b : a));
}

/** Things larger or smaller; lines stay as wide as they are. */
function scaled(items: readonly Item[], by: number): readonly Item[] {
  if (by === 1) return items;
  const on = ([x, y]: readonly [number, number]) => [x * by, y * by] as const;
  return items.map((i): Item => {
    switch (i.kind) {
      case 'ring':
        return { ...i, centre: on(i.centre), radius: i.radius * by };
      case 'words':
        return { ...i, at: on(i.at), height: i.height * by, width: i.width * by };
      default:
        return { ...i, points: i.points.map(on) };
    }
  });
}
