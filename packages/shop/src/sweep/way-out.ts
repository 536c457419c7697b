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
    }),
  );
  // tilted about its hindmost corner, which has the least room
  const all = room.body.flatMap((b) => b.piece);
  const about: Point = [Math.min(...all.map((p) => p[0])), Math.min(...all.map((p) => p[1]))];
  return [COARSE, FINE].some((lattice) => over(pieces, room, about, lattice));
}

function over(
  pieces: readonly Piece[],
  { past, down }: SweepRoom,
  about: Point,
  { step, tilt: turn }: Lattice,
): boolean {
  // by how far out the body is, furthest first: a list for each millimetre
  const ranks: number[][] = [];
  let best = 0;
  const lowest = -Math.min(down, FAR);
  const most = Math.ceil(MOST_TILT / turn);
  const seen = new Poses(Math.ceil(FAR / step), most);
  const tilts: (readonly Tilted[] | undefined)[] = [];
  const at = (tilt: number): readonly Tilted[] => {
    tilts[tilt + most] ??= pieces.map((p) => tilted(p, about, (tilt * turn * Math.PI) / 180));
    return tilts[tilt + most] as readonly Tilted[];
  };
  const push = (x: number, z: number, tilt: number): boolean => {
    if (!seen.add(x, z, tilt)) return false;
    const least = freeAt(at(tilt), x * step, z * step);
    if (Number.isNaN(least)) return false;
    if (least > past) return true;
    const rank = Math.max(0, Math.round(least + 1000));
    ranks[rank] ??= [];
    (ranks[rank] as number[]).push(x, z, tilt);
    best = Math.max(best, rank);
    return false;
  };
  if (push(0, 0, 0)) return true;
  for (let looked = 0; looked < MOST_LOOKED; looked++) {
    while (best >= 0 && !ranks[best]?.length) best -= 1;
    const rank = ranks[best];
    if (rank === undefined) return false;
    const tilt = rank.pop() as number;
    const z = rank.pop() as number;
    const x = rank.pop() as number;
    for (let m = 0; m < MOVES.length; m += 3) {
      const nx = x + (MOVES[m] as number);
      const nz = z + (MOVES[m + 1] as number);
      const nt = tilt + (MOVES[m + 2] as number);
      if (nz * step < lowest || nz * step > FAR || Math.abs(nx * step) > FAR) continue;
      if (Math.abs(nt * turn) <= MOST_TILT && push(nx, nz, nt)) return true;
    }
  }
  return false;
}

/** Poses of a lattice that were come to: a bit each, a plane of them for every tilt that is. */
class Poses {
  readonly #planes: (Int32Array | undefined)[] = [];
  readonly #far: number;
  readonly #side: number;
  readonly #tilts: number;

  constructor(far: number, tilts: number) {
    this.#far = far;
    this.#side = 2 * far + 1;
    this.#tilts = tilts;
  }

  /** True for one that was not there before. */
  add(x: number, z: number, tilt: number): boolean {
    const plane = this.#planeOf(tilt);
    const at = (x + this.#far) * this.#side + z + this.#far;
    const word = plane[at >> 5] as number;
    const bit = 1 << (at & 31);
    plane[at >> 5] = word | bit;
    return (word & bit) === 0;
  }

  #planeOf(tilt: number): Int32Array {
    this.#planes[tilt + this.#tilts] ??= new Int32Array((this.#side * this.#side + 31) >> 5);
    return this.#planes[tilt + this.#tilts] as Int32Array;
  }
}

const TURNS = [-1, 0, 1].flatMap((x) => [-1, 0, 1].flatMap((z) => [-1, 1].map((t) => [x, z, t] as const)));
/** Steps along x and z and turns, three numbers each: read some million times. */
const MOVES: readonly number[] = [[1, 0, 0], [-1, 0, 0], [0, -1, 0], [0, 1, 0], ...TURNS].flat();

/** A convex polygon as plain rows of numbers. */
interface Flat {
  readonly px: Float64Array;
  readonly pz: Float64Array;
}

interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly z0: number;
  readonly z1: number;
}

interface Obstacle extends Flat, Box {}

interface Piece extends Flat {
  readonly against: readonly Obstacle[];
}

/** A piece at one tilt, with the box round it. */
interface Tilted extends Box {
  readonly tx: Float64Array;
  readonly tz: Float64Array;
  readonly against: readonly Obstacle[];
  /** Its corners in the pose looked at; written anew for each. */
  readonly x: Float64Array;
  readonly z: Float64Array;
}

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

/** A piece as it is tilted, before it is moved. */
function tilted({ px, pz, against }: Piece, [ax, az]: Point, tilt: number): Tilted {
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
  const [tx, tz] = [new Float64Array(px.length), new Float64Array(px.length)];
  for (let i = 0; i < px.length; i++) {
    const [p, q] = [(px[i] as number) - ax, (pz[i] as number) - az];
    tx[i] = c * p - s * q + ax;
    tz[i] = s * p + c * q + az;
  }
  const box = { x0: Math.min(...tx), x1: Math.max(...tx), z0: Math.min(...tz), z1: Math.max(...tz) };
  return { tx, tz, ...box, against, x: new Float64Array(px.length), z: new Float64Array(px.length) };
}

/** How far out the hindmost corner lies in a pose; NaN where the body runs into something. */
function freeAt(pieces: readonly Tilted[], dx: number, dz: number): number {
  let least = Infinity;
  for (const piece of pieces) {
    const [x0, x1, z0, z1] = [piece.x0 + dx, piece.x1 + dx, piece.z0 + dz, piece.z1 + dz];
    if (x0 < least) least = x0;
    let moved = false;
    for (const o of piece.against) {
      if (x1 <= o.x0 || x0 >= o.x1 || z1 <= o.z0 || z0 >= o.z1) continue;
      if (!moved) move(piece, dx, dz);
      moved = true;
      if (!parted(piece.x, piece.z, o.px, o.pz) && !parted(o.px, o.pz, piece.x, piece.z)) return Number.NaN;
    }
  }
  return least;
}

function move({ tx, tz, x, z }: Tilted, dx: number, dz: number): void {
  for (let i = 0; i < tx.length; i++) {
    x[i] = (tx[i] as number) + dx;
    z[i] = (tz[i] as number) + dz;
  }
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
