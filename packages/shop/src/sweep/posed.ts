import type { Point } from '@tinwright/core';
import type { Convex } from './polygon.js';

const PLAY = 0.3; // mm two pieces may share: they lie on each other

/** A convex polygon as plain rows of numbers, and the box round it. mm */
interface Shape {
  readonly px: Float64Array;
  readonly pz: Float64Array;
  readonly x0: number;
  readonly x1: number;
  readonly z0: number;
  readonly z1: number;
}

/** Convex pieces that move together, each with what it may run into. */
export interface PosedBody {
  readonly pieces: readonly Piece[];
  /** Tilted about its hindmost corner, which has the least room. */
  readonly about: Point;
}

interface Piece {
  readonly shape: Shape;
  readonly against: readonly Shape[];
}

/** A body of its pieces. */
export function bodyOf(
  parts: readonly { readonly piece: Convex; readonly against: readonly Convex[] }[],
): PosedBody {
  const known = new Map<Convex, Shape>();
  const obstacle = (shape: Convex): Shape => {
    const made = known.get(shape) ?? shapeOf(smaller(shape));
    known.set(shape, made);
    return made;
  };
  const pieces = parts.map(({ piece, against }): Piece => {
    return { shape: shapeOf(piece), against: against.map(obstacle) };
  });
  const about: Point = [
    Math.min(...pieces.map((p) => p.shape.x0)),
    Math.min(...pieces.map((p) => p.shape.z0)),
  ];
  return { pieces, about };
}

/** How far apart corners of a body are at most, the box round it taken, and where the hindmost lies. mm */
export function reachOf({ pieces }: PosedBody): { readonly size: number; readonly rear: number } {
  const ends = (least: (s: Shape) => number, most: (s: Shape) => number) =>
    [Math.min(...pieces.map((p) => least(p.shape))), Math.max(...pieces.map((p) => most(p.shape)))] as const;
  const [x0, x1] = ends(
    (s) => s.x0,
    (s) => s.x1,
  );
  const [z0, z1] = ends(
    (s) => s.z0,
    (s) => s.z1,
  );
  return { size: pieces.length === 0 ? 0 : Math.hypot(x1 - x0, z1 - z0), rear: x0 };
}

/** A body at one tilt after another, in steps of so many radians; each is turned once. */
export function turnsOf({ pieces, about }: PosedBody, step: number): (tilt: number) => readonly Piece[] {
  const known = new Map<number, readonly Piece[]>();
  return (tilt) => {
    const before = known.get(tilt);
    if (before !== undefined) return before;
    const [c, s] = [Math.cos(tilt * step), Math.sin(tilt * step)];
    const made = pieces.map(({ shape, against }): Piece => ({ shape: turned(shape, about, c, s), against }));
    known.set(tilt, made);
    return made;
  };
}

/** How far out the hindmost corner of a moved body lies, mm; NaN where it runs into something. */
export function freeAt(pieces: readonly Piece[], dx: number, dz: number): number {
  let least = Infinity;
  for (let i = 0; i < pieces.length; i++) {
    const { shape, against } = pieces[i] as Piece;
    if (shape.x0 < least) least = shape.x0;
    for (let k = 0; k < against.length; k++) {
      const o = against[k] as Shape;
      if (shape.x1 + dx <= o.x0 || shape.x0 + dx >= o.x1 || shape.z1 + dz <= o.z0 || shape.z0 + dz >= o.z1)
        continue;
      if (!parted(shape, dx, dz, o) && !parted(o, -dx, -dz, shape)) return Number.NaN;
    }
  }
  return least + dx;
}

function shapeOf(points: Convex): Shape {
  return boxed(
    Float64Array.from(points, (p) => p[0]),
    Float64Array.from(points, (p) => p[1]),
  );
}

function boxed(px: Float64Array, pz: Float64Array): Shape {
  let [x0, x1, z0, z1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < px.length; i++) {
    const [x, z] = [px[i] as number, pz[i] as number];
    x0 = Math.min(x0, x);
    x1 = Math.max(x1, x);
    z0 = Math.min(z0, z);
    z1 = Math.max(z1, z);
  }
  return { px, pz, x0, x1, z0, z1 };
}

/** A little smaller than it is, towards its middle: what only touches it does not meet it. */
function smaller(shape: Convex): Convex {
  const { x0, x1, z0, z1 } = shapeOf(shape);
  const [cx, cz] = [(x0 + x1) / 2, (z0 + z1) / 2];
  return shape.map(([x, z]) => [x - Math.sign(x - cx) * PLAY, z - Math.sign(z - cz) * PLAY] as const);
}

function turned({ px, pz }: Shape, [ax, az]: Point, c: number, s: number): Shape {
  return boxed(
    px.map((x, i) => c * (x - ax) - s * ((pz[i] as number) - az) + ax),
    px.map((x, i) => s * (x - ax) + c * ((pz[i] as number) - az) + az),
  );
}

/** True when a side of the first polygon, moved, parts the two. */
function parted(a: Shape, dx: number, dz: number, b: Shape): boolean {
  const n = a.px.length;
  for (let i = 0, j = n - 1; i < n; j = i++) {
    const nx = (a.pz[i] as number) - (a.pz[j] as number);
    const nz = (a.px[j] as number) - (a.px[i] as number);
    const edge = nx * ((a.px[j] as number) + dx) + nz * ((a.pz[j] as number) + dz);
    let all = true;
    for (let k = 0; k < b.px.length && all; k++)
      all = nx * (b.px[k] as number) + nz * (b.pz[k] as number) >= edge;
    if (all) return true;
  }
  return false;
}
