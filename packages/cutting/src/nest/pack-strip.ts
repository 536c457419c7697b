import type { Point } from '@tinwright/core';
import { type NoFitRing, ringArea, STEP } from '../no-fit/ring.js';
import { bottomLeft } from './bottom-left.js';
import { floorOf, furthest, laidOn, put } from './floor.js';
import { itemArea, kitOf, type NestShape } from './kit.js';
import { pairDepthOf } from './pair-depth.js';
import { randomFrom } from './random.js';
import { type Spend, STRIP_PLAN, shorten } from './strip.js';

/** Pieces for a strip: polygons in any unit, counter-clockwise. */
export interface StripPart {
  readonly polygon: NoFitRing;
  readonly turns: readonly number[];
  readonly quantity: number;
}

/** A packed strip: the length used, and each piece's corners. */
export interface PackedStrip {
  readonly length: number;
  readonly pieces: readonly { readonly part: number; readonly polygon: NoFitRing }[];
}

/** Height the kernel works at, in its steps' unit. */
const HEIGHT = 4096;

/** What counts as touching: two pieces may reach into one another by twice this, a millionth of the height. */
const TOUCHING = 4 * STEP;

/**
 * Pack pieces into a strip of a given height so that little length is used, as benchmarks of the trade ask: no
 * spacing, touching allowed (up to two millionths of the height). The same seed and spending give the same strip.
 */
export function packStrip(
  parts: readonly StripPart[],
  height: number,
  search: { readonly seed: number; readonly spend: Spend; readonly better: (strip: PackedStrip) => void },
): PackedStrip {
  const scale = HEIGHT / height;
  const random = randomFrom(search.seed);
  const items = parts.map((p) => ({
    region: {
      outer: inset(
        p.polygon.map(([x, y]): Point => [x * scale, y * scale]),
        TOUCHING,
      ),
      holes: [],
    },
    turns: p.turns,
  }));
  const kit = kitOf(items);
  const area = (item: number) => itemArea(kit, item);
  const pieces = parts
    .flatMap((p, i) => new Array<number>(p.quantity).fill(i))
    .sort((a, b) => area(b) - area(a));
  const longest = pieces.reduce((sum, i) => sum + longestSide(parts[i]?.polygon as NoFitRing) * scale, 0);
  const y1 = HEIGHT - 2 * TOUCHING + 2 * STEP;
  const floor = floorOf(kit, { x0: 0, y0: 0, x1: longest, y1 }, kit.shapesOf, pieces, []);
  const depth = pairDepthOf(floor);
  const lying: number[] = [];
  pieces.forEach((_, piece) => {
    const spot = bottomLeft(floor, depth, piece, lying);
    if (spot === undefined) throw new RangeError(`piece ${piece}: higher than the strip`);
    put(floor, piece, spot);
    lying.push(piece);
  });
  floor.bed.x1 = furthest(floor);
  const packed = (): PackedStrip => ({
    length: (furthest(floor) + 2 * TOUCHING) / scale,
    pieces: laidOn(floor).map(({ item, shape, x, y }) => {
      const { cos, sin } = kit.shapes[shape] as NestShape;
      const [sx, sy] = kit.shifts[shape] as Point;
      const at = ([px, py]: Point): Point => [
        cos * px - sin * py + (x + sx + TOUCHING) / scale,
        sin * px + cos * py + (y + sy + TOUCHING) / scale,
      ];
      return { part: item, polygon: (parts[item] as StripPart).polygon.map(at) };
    }),
  });
  shorten(floor, random, search.spend, STRIP_PLAN, () => search.better(packed()));
  return packed();
}

/** Every side moved inwards. */
function inset(ring: NoFitRing, by: number): NoFitRing {
  const ccw = ringArea(ring) > 0 ? ring : ring.toReversed();
  const n = ccw.length;
  return ccw.map((p, i): Point => {
    const normal = (a: Point, b: Point): Point => {
      const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
      const l = Math.sqrt(dx * dx + dy * dy);
      return [-dy / l, dx / l];
    };
    const u = normal(ccw[(i + n - 1) % n] as Point, p);
    const v = normal(p, ccw[(i + 1) % n] as Point);
    const k = by / (1 + u[0] * v[0] + u[1] * v[1]);
    return [p[0] + (u[0] + v[0]) * k, p[1] + (u[1] + v[1]) * k];
  });
}

function longestSide(ring: NoFitRing): number {
  const span = (axis: 0 | 1) => Math.max(...ring.map((p) => p[axis])) - Math.min(...ring.map((p) => p[axis]));
  return Math.hypot(span(0), span(1));
}
