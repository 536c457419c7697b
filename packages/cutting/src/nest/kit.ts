import type { Point } from '@tinwright/core';
import { type DepthTable, depthTable } from '../no-fit/depth-table.js';
import { noFit } from '../no-fit/no-fit.js';
import { direction, onGrid, type Region, ringArea, STEP, turned } from '../no-fit/ring.js';

/** A kind of piece for the kernel: grown by half the spacing already. mm, degrees. */
export interface NestItem {
  readonly region: Region;
  /** Turns it may lie at. */
  readonly turns: readonly number[];
}

/** An item at one of its turns, origin at the middle of the unturned item's box. */
export interface NestShape {
  readonly item: number;
  readonly turn: number;
  readonly cos: number;
  readonly sin: number;
  readonly region: Region;
  readonly box: readonly [x0: number, y0: number, x1: number, y1: number];
  readonly area: number;
}

/** Items made ready: their shapes, and the no-fit table of any two, built when first asked for. */
export interface Kit {
  readonly shapes: readonly NestShape[];
  /** Indices of the shapes of each item. */
  readonly shapesOf: readonly (readonly number[])[];
  /** What must be added to a shape's place to get the place of the item's own origin, turned about that origin. */
  readonly shifts: readonly Point[];
  /** Table of two shapes, `fixed` ≤ `moving`, in the frame of the fixed one unturned. */
  table(fixed: number, moving: number): DepthTable;
}

export function kitOf(items: readonly NestItem[]): Kit {
  const shapes: NestShape[] = [];
  const shifts: Point[] = [];
  const shapesOf = items.map((item, i) => {
    const { region, middle } = centred(item.region);
    const first = shapes.length;
    for (const turn of item.turns) {
      const shape = shapeOf(region, i, turn);
      if (shapes.slice(first).some((s) => alike(s.region, shape.region))) continue;
      shapes.push(shape);
      shifts.push([
        -(shape.cos * middle[0] - shape.sin * middle[1]),
        -(shape.sin * middle[0] + shape.cos * middle[1]),
      ]);
    }
    return shapes.slice(first).map((_, k) => first + k);
  });
  const made = new Map<string, DepthTable>();
  const known: (DepthTable | undefined)[] = new Array(shapes.length ** 2);
  const regions = items.map((item) => centred(item.region).region);
  const build = (fixed: number, moving: number): DepthTable => {
    const [f, m] = [shapes[fixed] as NestShape, shapes[moving] as NestShape];
    const turn = (((m.turn - f.turn) % 360) + 360) % 360;
    const key = `${f.item} ${m.item} ${turn}`;
    const table =
      made.get(key) ??
      depthTable(noFit(regions[f.item] as Region, turnedRegion(regions[m.item] as Region, turn)));
    made.set(key, table);
    return table;
  };
  const table = (fixed: number, moving: number): DepthTable => {
    const at = fixed * shapes.length + moving;
    const t = known[at] ?? build(fixed, moving);
    known[at] = t;
    return t;
  };
  return { shapes, shapesOf, shifts, table };
}

/** Area of an item, grown as it is, mm². */
export function itemArea({ shapes }: Kit, item: number): number {
  return (shapes.find((s) => s.item === item) as NestShape).area;
}

const turnedRegion = ({ outer, holes }: Region, turn: number): Region => ({
  outer: onGrid(turned(outer, turn)),
  holes: holes.map((h) => onGrid(turned(h, turn))),
});

/** On the grid, with the middle of its box, a point of the grid too, as origin. */
function centred({ outer, holes }: Region): { region: Region; middle: Point } {
  const [x0, y0, x1, y1] = boxOfRing(outer);
  const middle: Point = [Math.round((x0 + x1) / 2 / STEP) * STEP, Math.round((y0 + y1) / 2 / STEP) * STEP];
  const moved = (ring: readonly Point[]) =>
    onGrid(ring.map(([x, y]): Point => [x - middle[0], y - middle[1]]));
  return { region: { outer: moved(outer), holes: holes.map(moved) }, middle };
}

function shapeOf(region: Region, item: number, turn: number): NestShape {
  const turnedOne = turnedRegion(region, turn);
  const [cos, sin] = direction(turn);
  const area = [turnedOne.outer, ...turnedOne.holes].reduce((sum, r) => sum + ringArea(r), 0);
  return { item, turn, cos, sin, region: turnedOne, box: boxOfRing(turnedOne.outer), area };
}

/** The same set of corners, up to rounding: a turn that changes nothing. */
function alike(a: Region, b: Region): boolean {
  const near = (p: Point, ring: readonly Point[]) =>
    ring.some((q) => Math.abs(p[0] - q[0]) + Math.abs(p[1] - q[1]) <= 2 * STEP);
  const covers = (r: readonly Point[], s: readonly Point[]) =>
    r.length === s.length && r.every((p) => near(p, s));
  return covers(a.outer, b.outer) && a.holes.every((h) => b.holes.some((g) => covers(h, g)));
}

export function boxOfRing(ring: readonly Point[]): readonly [number, number, number, number] {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of ring) {
    x0 = Math.min(x0, x);
    y0 = Math.min(y0, y);
    x1 = Math.max(x1, x);
    y1 = Math.max(y1, y);
  }
  return [x0, y0, x1, y1];
}
