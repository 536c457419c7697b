import { type Bench, emptyFloor } from './fill.js';
import { type Laid, laidOn, put, putWithin } from './floor.js';
import { itemArea, type NestShape } from './kit.js';
import { overlapOf } from './overlap.js';
import type { BedKind, FilledBed } from './problem.js';
import { layoutArea } from './rank.js';
import { LOOKING, relocator } from './relocate.js';
import { type Pulse, separate } from './separate.js';

const PATIENCE = { rounds: 30, strikes: 2 } as const;

/** The bed with one piece more, its pieces moved to make room; undefined where no way was found. */
export function topUp(
  bench: Bench,
  bed: FilledBed,
  item: number,
  random: () => number,
  pulse: Pulse,
): FilledBed | undefined {
  const floor = emptyFloor(bench, bed.kind, [...bed.laid.map((l) => l.item), item]);
  const shapes = floor.shapesOf[item] as readonly number[];
  if (shapes.length === 0) return undefined;
  bed.laid.forEach((l, i) => {
    put(floor, i, l);
  });
  const { x1, y1 } = floor.bed;
  const shape = shapes[(random() * shapes.length) | 0] as number;
  const { box } = bench.kit.shapes[shape] as NestShape;
  if (box[2] - box[0] > x1 || box[3] - box[1] > y1) return undefined;
  putWithin(floor, bed.laid.length, { shape, x: random() * x1, y: random() * y1 });
  const overlap = overlapOf(floor);
  const relocate = relocator(floor, overlap, random, LOOKING);
  if (!separate(floor, overlap, relocate, random, PATIENCE, pulse)) return undefined;
  return { kind: bed.kind, laid: laidOn(floor) };
}

/** Is there area left for an item on a bed at all? */
export function hasRoom({ problem, kit }: Bench, bed: FilledBed, item: number): boolean {
  return layoutArea(kit, bed.laid) + itemArea(kit, item) <= (problem.kinds[bed.kind] as BedKind).area;
}

export const without = (bed: FilledBed, piece: Laid): FilledBed => ({
  ...bed,
  laid: bed.laid.filter((l) => l !== piece),
});
