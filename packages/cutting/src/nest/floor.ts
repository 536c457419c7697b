import type { Kit, NestShape } from './kit.js';

/** A place for pieces: a rectangle, mm. The search moves its east side. */
export interface Bed {
  readonly x0: number;
  readonly y0: number;
  x1: number;
  readonly y1: number;
}

/** A place for a piece: a shape of the kit, and where its origin lies. */
export interface NestSpot {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
}

/** A piece in its place. */
export interface Laid extends NestSpot {
  readonly item: number;
}

/**
 * Pieces on a bed, in arrays that the search changes in place; they never leave the kernel.
 * Pieces from `movable` on stay where they are: what an offcut lacks of its rectangle.
 */
export interface Floor {
  readonly kit: Kit;
  readonly bed: Bed;
  /** Shapes that each item may take on this bed. */
  readonly shapesOf: readonly (readonly number[])[];
  readonly item: Int32Array;
  readonly movable: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly shape: Int32Array;
  /** x0, y0, x1, y1 of every piece. */
  readonly boxes: Float64Array;
}

/** A bed with what is fixed on it; the movable ones lie at the origin until they are put somewhere. */
export function floorOf(
  kit: Kit,
  bed: Bed,
  shapesOf: readonly (readonly number[])[],
  items: readonly number[],
  fixed: readonly Laid[],
): Floor {
  const all = [...items, ...fixed.map((f) => f.item)];
  const floor: Floor = {
    kit,
    bed: { ...bed },
    shapesOf,
    item: Int32Array.from(all),
    movable: items.length,
    x: new Float64Array(all.length),
    y: new Float64Array(all.length),
    shape: Int32Array.from(all, (i) => shapesOf[i]?.[0] ?? kit.shapesOf[i]?.[0] ?? 0),
    boxes: new Float64Array(4 * all.length),
  };
  fixed.forEach((f, k) => {
    put(floor, items.length + k, f);
  });
  return floor;
}

export const shapeOn = (floor: Floor, shape: number): NestShape => floor.kit.shapes[shape] as NestShape;

/** Lay a piece at a place. */
export function put(floor: Floor, piece: number, { shape, x, y }: NestSpot): void {
  floor.x[piece] = x;
  floor.y[piece] = y;
  floor.shape[piece] = shape;
  const { box } = shapeOn(floor, shape);
  const at = 4 * piece;
  floor.boxes[at] = x + box[0];
  floor.boxes[at + 1] = y + box[1];
  floor.boxes[at + 2] = x + box[2];
  floor.boxes[at + 3] = y + box[3];
}

/** Lay a piece as near to a place as the bed allows. */
export function putWithin(floor: Floor, piece: number, { shape, x, y }: NestSpot): void {
  const { x0, y0, x1, y1 } = floor.bed;
  const { box } = shapeOn(floor, shape);
  put(floor, piece, {
    shape,
    x: Math.max(x0 - box[0], Math.min(x1 - box[2], x)),
    y: Math.max(y0 - box[1], Math.min(y1 - box[3], y)),
  });
}

export const spotOf = ({ shape, x, y }: Floor, piece: number): NestSpot => ({
  shape: shape[piece] as number,
  x: x[piece] as number,
  y: y[piece] as number,
});

/** Where the movable pieces lie. */
export const laidOn = (floor: Floor): readonly Laid[] =>
  Array.from({ length: floor.movable }, (_, i) => ({ item: floor.item[i] as number, ...spotOf(floor, i) }));

/** Lay the movable pieces, in their order, as they lay then. */
export function layAgain(floor: Floor, laid: readonly NestSpot[]): void {
  laid.forEach((l, i) => {
    put(floor, i, l);
  });
}

/** How far east the movable pieces reach. */
export function furthest({ boxes, movable, bed }: Floor): number {
  let x = bed.x0;
  for (let i = 0; i < movable; i++) x = Math.max(x, boxes[4 * i + 2] as number);
  return x;
}
