import type { Floor, NestSpot } from './floor.js';
import type { NestShape } from './kit.js';
import type { PairDepth } from './pair-depth.js';

/** Levels at which a piece is tried on a bed. */
const LEVELS = 96;

/**
 * The place furthest to the west of the bed, among `pieces` that lie there, where a piece lies free, at any of its turns, and of those the lowest;
 * undefined where there is none. At each level the runs of the no-fit polygons that cross it tell what is blocked.
 */
export function bottomLeft(
  floor: Floor,
  depth: PairDepth,
  piece: number,
  pieces: readonly number[],
): NestSpot | undefined {
  const shapes = floor.shapesOf[floor.item[piece] as number] as readonly number[];
  let best: NestSpot | undefined;
  for (const shape of shapes) {
    const spot = forShape(floor, depth, piece, shape, pieces, best);
    if (spot !== undefined) best = spot;
  }
  return best;
}

/** The same for one shape; undefined unless it ends further to the west than `beat`. */
function forShape(
  floor: Floor,
  depth: PairDepth,
  piece: number,
  shape: number,
  pieces: readonly number[],
  beat: NestSpot | undefined,
): NestSpot | undefined {
  const { bed } = floor;
  const { box } = floor.kit.shapes[shape] as NestShape;
  const [x0, x1, y0, y1] = [bed.x0 - box[0], bed.x1 - box[2], bed.y0 - box[1], bed.y1 - box[3]];
  if (x0 > x1 || y0 > y1) return undefined;
  const ending = beat === undefined ? Infinity : beat.x + (floor.kit.shapes[beat.shape] as NestShape).box[2];
  let [x, y] = [Math.min(x1, ending - box[2]), Number.NaN];
  for (const level of levels(floor, shape, pieces, y0, y1)) {
    const west = westmost(floor, shape, level, pieces, x0, x);
    if (west === undefined || (west >= x - 1e-6 && !Number.isNaN(y))) continue;
    if (pieces.some((j) => meets(floor, depth, piece, { shape, x: west, y: level }, j))) continue;
    [x, y] = [west, level];
  }
  return Number.isNaN(y) ? undefined : { shape, x, y };
}

function meets(floor: Floor, depth: PairDepth, piece: number, spot: NestSpot, j: number): boolean {
  const { box } = floor.kit.shapes[spot.shape] as NestShape;
  const side = (k: number) => floor.boxes[4 * j + k] as number;
  if (spot.x + box[2] <= side(0) || spot.x + box[0] >= side(2)) return false;
  if (spot.y + box[3] <= side(1) || spot.y + box[1] >= side(3)) return false;
  return depth.of(piece, spot.shape, spot.x, spot.y, j) > 0;
}

/** Levels to try, from below: evenly spread, and those on which the piece would lie on top of another. */
function levels(
  floor: Floor,
  shape: number,
  pieces: readonly number[],
  y0: number,
  y1: number,
): readonly number[] {
  const { box } = floor.kit.shapes[shape] as NestShape;
  const even = Array.from({ length: LEVELS + 1 }, (_, k) => y0 + ((y1 - y0) * k) / LEVELS);
  const tops = pieces.map((j) => (floor.boxes[4 * j + 3] as number) - box[1]).filter((y) => y > y0 && y < y1);
  const recent = tops.slice(-LEVELS);
  return [...new Set([...even, ...recent])].sort((a, b) => a - b);
}

/** The least x from `from` up to `to` at which a shape's origin is blocked by none of the pieces. */
function westmost(
  floor: Floor,
  shape: number,
  y: number,
  pieces: readonly number[],
  from: number,
  to: number,
): number | undefined {
  const blocked: [number, number][] = [];
  for (const j of pieces) blockedBy(floor, shape, y, j, from, to, blocked);
  blocked.sort((a, b) => a[0] - b[0]);
  let x = from;
  for (const [west, east] of blocked) {
    if (west > x - NUDGE) break;
    if (east > x) x = east + NUDGE;
    if (x > to) return undefined;
  }
  return x <= to ? x : undefined;
}

const NUDGE = 1e-4; // mm

function blockedBy(
  floor: Floor,
  shape: number,
  y: number,
  j: number,
  from: number,
  to: number,
  blocked: [number, number][],
): void {
  const { kit, boxes } = floor;
  const own = kit.shapes[shape] as NestShape;
  const at = 4 * j;
  const bx0 = boxes[at] as number;
  const by0 = boxes[at + 1] as number;
  const bx1 = boxes[at + 2] as number;
  const by1 = boxes[at + 3] as number;
  if (y + own.box[3] <= by0 || y + own.box[1] >= by1 || from + own.box[0] >= bx1 || to + own.box[2] <= bx0)
    return;
  const other = floor.shape[j] as number;
  const [f, m] = other <= shape ? [other, shape] : [shape, other];
  const { runs } = kit.table(f, m);
  const { cos, sin } = kit.shapes[f] as NestShape;
  const sign = other <= shape ? 1 : -1; // the moving one's places seen from the fixed one
  const [ox, oy] = [floor.x[j] as number, floor.y[j] as number];
  const crossed: number[] = [];
  for (let e = 0; e < runs.length; e += 5) {
    const rx = runs[e] as number;
    const ry = runs[e + 1] as number;
    const dx = runs[e + 2] as number;
    const dy = runs[e + 3] as number;
    const ay = oy + sign * (sin * rx + cos * ry);
    const by = ay + sign * (sin * dx + cos * dy);
    if (ay <= y === by <= y) continue;
    const t = (y - ay) / (by - ay);
    crossed.push(ox + sign * (cos * (rx + dx * t) - sin * (ry + dy * t)));
  }
  crossed.sort((a, b) => a - b);
  if (crossed.length % 2 === 1) blocked.push([crossed[0] as number, crossed.at(-1) as number]);
  else
    for (let k = 0; k < crossed.length; k += 2)
      blocked.push([crossed[k] as number, crossed[k + 1] as number]);
}
