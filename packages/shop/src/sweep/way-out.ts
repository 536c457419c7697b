import type { Point } from '@tinwright/core';
import type { Convex } from './polygon.js';

/** A body that moves in its section among still ones. mm */
export interface SweepRoom {
  /** Convex pieces of the body, each with the obstacles it may run into. */
  readonly body: readonly { readonly piece: Convex; readonly against: readonly Convex[] }[];
  /** The body is out once all of it lies past this. */
  readonly past: number;
  /** How far it may be lowered. */
  readonly down: number;
}

/** A lattice of poses: millimetres and degrees apart. */
const COARSE = { step: 2, tilt: 2 } as const;
const FINE = { step: 1, tilt: 1 } as const;
type Lattice = typeof COARSE | typeof FINE;

const MOST_TILT = 100; // degrees either way
const FAR = 500; // mm
const MOST_LOOKED = 40_000; // poses
const PLAY = 0.3; // mm two pieces may share: they lie on each other

/**
 * True when a rigid body can be drawn out, moved and tilted in its plane: some way over a lattice of poses, two
 * millimetres and two degrees apart and then one and one, the ones that are furthest out first. Source of the method:
 * search of the configuration space, Lozano-Pérez 1983. Where it finds none there may still be one between its poses.
 */
export function hasWayOut(room: SweepRoom): boolean {
  const obstacles = [...new Set(room.body.flatMap((b) => b.against))].map(obstacleOf);
  const shapes = [...new Set(room.body.flatMap((b) => b.against))];
  const pieces = room.body.map(
    ({ piece, against }): Piece => ({
      ...flat(piece),
      against: against.map((o) => obstacles[shapes.indexOf(o)] as Obstacle),
      x: new Float64Array(piece.length),
      z: new Float64Array(piece.length),
    }),
  );
  // tilted about its hindmost corner, which has the least room
  const all = room.body.flatMap((b) => b.piece);
  const about: Point = [Math.min(...all.map((p) => p[0])), Math.min(...all.map((p) => p[1]))];
  return [COARSE, FINE].some((lattice) => over(pieces, room, about, lattice));
}

function over(
  pieces: readonly Piece[],
  room: SweepRoom,
  about: Point,
  { step, tilt: turn }: Lattice,
): boolean {
  const seen = new Set<number>();
  // by how far out the body is, furthest first: a list for each millimetre
  const ranks: number[][] = [];
  let best = 0;
  const push = (x: number, z: number, tilt: number): boolean => {
    const key = ((x + 1024) * 2048 + (z + 1024)) * 256 + tilt + 128;
    if (seen.has(key)) return false;
    seen.add(key);
    const least = freeAt(pieces, about, [x * step, z * step], (tilt * turn * Math.PI) / 180);
    if (Number.isNaN(least)) return false;
    if (least > room.past) return true;
    const rank = Math.max(0, Math.round(least + 1000));
    ranks[rank] ??= [];
    (ranks[rank] as number[]).push(x, z, tilt);
    best = Math.max(best, rank);
    return false;
  };
  if (push(0, 0, 0)) return true;
  for (let looked = 0; looked < MOST_LOOKED; looked++) {
    while (best >= 0 && !ranks[best]?.length) best -= 1;
    const at = ranks[best];
    if (at === undefined) return false;
    const [tilt, z, x] = [at.pop(), at.pop(), at.pop()] as [number, number, number];
    for (const [dx, dz, dt] of MOVES) {
      const [nx, nz, nt] = [x + dx, z + dz, tilt + dt];
      if (nz * step < -room.down || nz * step > FAR || Math.abs(nx * step) > FAR) continue;
      if (Math.abs(nt * turn) <= MOST_TILT && push(nx, nz, nt)) return true;
    }
  }
  return false;
}

const TURNS = [-1, 0, 1].flatMap((x) => [-1, 0, 1].flatMap((z) => [-1, 1].map((t) => [x, z, t] as const)));
const MOVES: readonly (readonly [number, number, number])[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, -1, 0],
  [0, 1, 0],
  ...TURNS,
];

/** A convex polygon as plain rows of numbers. */
interface Flat {
  readonly px: Float64Array;
  readonly pz: Float64Array;
}

interface Piece extends Flat {
  readonly against: readonly Obstacle[];
  /** Its corners in the pose looked at; written anew for each. */
  readonly x: Float64Array;
  readonly z: Float64Array;
}

interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly z0: number;
  readonly z1: number;
}

interface Obstacle extends Flat, Box {}

const flat = (shape: Convex): Flat => ({
  px: Float64Array.from(shape, (p) => p[0]),
  pz: Float64Array.from(shape, (p) => p[1]),
});

/** A little smaller than it is, towards its middle: what only touches it does not meet it. */
function obstacleOf(shape: Convex): Obstacle {
  const xs = shape.map((p) => p[0]);
  const zs = shape.map((p) => p[1]);
  const [x0, x1, z0, z1] = [Math.min(...xs), Math.max(...xs), Math.min(...zs), Math.max(...zs)];
  const [cx, cz] = [(x0 + x1) / 2, (z0 + z1) / 2];
  const smaller = shape.map(
    ([x, z]) => [x - Math.sign(x - cx) * PLAY, z - Math.sign(z - cz) * PLAY] as const,
  );
  return { ...flat(smaller), x0: x0 + PLAY, x1: x1 - PLAY, z0: z0 + PLAY, z1: z1 - PLAY };
}

/** How far out the hindmost corner lies in a pose; NaN where the body runs into something. */
function freeAt(pieces: readonly Piece[], about: Point, by: Point, tilt: number): number {
  let least = Infinity;
  for (const piece of pieces) {
    const box = place(piece, about, by, tilt);
    if (box.x0 < least) least = box.x0;
    for (const o of piece.against) {
      if (box.x1 <= o.x0 || box.x0 >= o.x1 || box.z1 <= o.z0 || box.z0 >= o.z1) continue;
      if (!parted(piece.x, piece.z, o.px, o.pz) && !parted(o.px, o.pz, piece.x, piece.z)) return Number.NaN;
    }
  }
  return least;
}

/** Corners of a piece in a pose, and the box round them. */
function place({ px, pz, x, z }: Piece, [ax, az]: Point, [dx, dz]: Point, tilt: number): Box {
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
  let [x0, x1, z0, z1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < px.length; i++) {
    const [p, q] = [(px[i] as number) - ax, (pz[i] as number) - az];
    const u = c * p - s * q + ax + dx;
    const v = s * p + c * q + az + dz;
    x[i] = u;
    z[i] = v;
    x0 = Math.min(x0, u);
    x1 = Math.max(x1, u);
    z0 = Math.min(z0, v);
    z1 = Math.max(z1, v);
  }
  return { x0, x1, z0, z1 };
}

/** True when a side of the first polygon parts the two. */
function parted(ax: Float64Array, az: Float64Array, bx: Float64Array, bz: Float64Array): boolean {
  const n = ax.length;
  for (let i = 0, j = n - 1; i < n; j = i++) {
    const nx = (az[i] as number) - (az[j] as number);
    const nz = (ax[j] as number) - (ax[i] as number);
    const edge = nx * (ax[j] as number) + nz * (az[j] as number);
    let all = true;
    for (let k = 0; k < bx.length && all; k++) all = nx * (bx[k] as number) + nz * (bz[k] as number) >= edge;
    if (all) return true;
  }
  return false;
}
