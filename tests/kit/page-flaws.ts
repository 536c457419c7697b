// What is wrong with a page as a reader sees it: texts on texts, on lines, or off the paper. Knows nothing of how pages
// are laid out.
import type { Item, Page, Words } from '@tinwright/paper';

type Point = readonly [number, number];
type Box = readonly [x0: number, y0: number, x1: number, y1: number];

/** Letters reach 0.21 of the font size below the base line: 0.3 of the height of capitals. */
export function boxOf({ at: [x, y], height, width, turn }: Words): Box {
  return turn === 0
    ? [x, y - 0.3 * height, x + width, y + height]
    : [x - height, y, x + 0.3 * height, y + width];
}

/** Every fault of a page in words. */
export function pageFlaws({ width, height, blocks }: Page): readonly string[] {
  const items = blocks.flatMap((b) => b.items);
  const words = items.filter((i): i is Words => i.kind === 'words').map((w) => ({ w, box: boxOf(w) }));
  const lines = items.flatMap(linesOf);
  const found: string[] = [];
  words.forEach(({ w, box }, i) => {
    if (w.text === '' || w.width <= 0) found.push(`an empty text at ${w.at}`);
    if (box[0] < 0 || box[1] < 0 || box[2] > width || box[3] > height)
      found.push(`"${w.text}" off the paper`);
    for (const other of words.slice(i + 1))
      if (meet(box, other.box)) found.push(`"${w.text}" on "${other.w.text}"`);
    for (const [a, b] of lines) if (through(a, b, box)) found.push(`"${w.text}" on a line ${a} ${b}`);
  });
  for (const p of lines.flat())
    if (p[0] < 0 || p[1] < 0 || p[0] > width || p[1] > height) found.push(`a line off the paper at ${p}`);
  return found;
}

function linesOf(item: Item): readonly (readonly [Point, Point])[] {
  if (item.kind === 'words') return [];
  const points: readonly Point[] =
    item.kind === 'ring'
      ? Array.from({ length: 24 }, (_, i): Point => {
          const a = (Math.PI * i) / 12;
          return [item.centre[0] + item.radius * Math.cos(a), item.centre[1] + item.radius * Math.sin(a)];
        })
      : item.points;
  const closed = item.kind !== 'stroke' || item.closed === true;
  return points.flatMap((p, i): readonly (readonly [Point, Point])[] => {
    const q = points[i + 1] ?? (closed ? points[0] : undefined);
    return q === undefined ? [] : [[p, q]];
  });
}

const meet = (a: Box, b: Box): boolean => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];

/** True when a line passes through the inside of a box: halved until it is clear of it or within it. */
function through(a: Point, b: Point, box: Box, depth = 0): boolean {
  const [x0, x1] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])];
  const [y0, y1] = [Math.min(a[1], b[1]), Math.max(a[1], b[1])];
  if (x1 <= box[0] || x0 >= box[2] || y1 <= box[1] || y0 >= box[3]) return false;
  const inside = (p: Point) => p[0] > box[0] && p[0] < box[2] && p[1] > box[1] && p[1] < box[3];
  if (inside(a) || inside(b)) return true;
  if (depth > 30) return false;
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  return through(a, middle, box, depth + 1) || through(middle, b, box, depth + 1);
}
