import type { Convex } from './polygon.js';
import { bodyOf, freeAt, type PosedBody, reachOf, turnsOf } from './posed.js';
import { Poses } from './poses.js';

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
const FAR = 500; // mm that any body is moved to every side, if need be
const MOST_LOOKED = 40_000; // poses

/**
 * True when a rigid body can be drawn out, moved and tilted in its plane: some way over a lattice of poses, two
 * millimetres and two degrees apart and then one and one, the ones that are furthest out first. Source of the method:
 * search of the configuration space, Lozano-Pérez 1983. Where it finds none there may still be one between its poses.
 */
export function hasWayOut(room: SweepRoom): boolean {
  const body = bodyOf(room.body);
  return [COARSE, FINE].some((lattice) => over(body, room, lattice));
}

function over(body: PosedBody, room: SweepRoom, { step, tilt: turn }: Lattice): boolean {
  // all of a body is out once it was moved by its own extent, and by how far behind the way out it lies
  const { size, rear } = reachOf(body);
  const far = Math.max(FAR, size + Math.max(0, room.past - rear));
  const seen = new Poses(Math.ceil(far / step), Math.ceil(MOST_TILT / turn));
  const down = Math.min(room.down, far);
  const hindmost = room.past - far - size;
  /** Poses that were come to, in threes, and how many moves each has tried. */
  const poses: number[] = [];
  const tried: number[] = [];
  // by how far out the body is, furthest first: a list for each millimetre
  const ranks: number[][] = [];
  let best = 0;
  const turned = turnsOf(body, (turn * Math.PI) / 180);
  /** How far out a pose is that was not come to before, negative where the body does not go; infinite when it is out. */
  const push = (x: number, z: number, tilt: number): number => {
    if (!seen.add(x, z, tilt)) return -1;
    const least = freeAt(turned(tilt), x * step, z * step);
    if (Number.isNaN(least)) return -1;
    if (least > room.past) return Infinity;
    const rank = Math.max(0, Math.round(least - hindmost));
    ranks[rank] ??= [];
    (ranks[rank] as number[]).push(tried.length);
    poses.push(x, z, tilt);
    tried.push(0);
    best = Math.max(best, rank);
    return rank;
  };
  /** Moves from a pose, until one leads further out or all are tried; true when the body is out. */
  const goOn = (at: number): boolean => {
    const [x, z, tilt] = [poses[3 * at], poses[3 * at + 1], poses[3 * at + 2]] as [number, number, number];
    const rank = best;
    while ((tried[at] as number) < MOVES.length) {
      const [dx, dz, dt] = MOVES[tried[at] as number] as (typeof MOVES)[number];
      tried[at] = (tried[at] as number) + 1;
      const [nx, nz, nt] = [x + dx, z + dz, tilt + dt];
      if (nz * step < -down || nz * step > far || Math.abs(nx * step) > far) continue;
      if (Math.abs(nt * turn) > MOST_TILT) continue;
      const there = push(nx, nz, nt);
      if (there === Infinity) return true;
      if (there > rank) return false;
    }
    return false;
  };
  if (push(0, 0, 0) === Infinity) return true;
  for (let looked = 0; looked < MOST_LOOKED; ) {
    while (best >= 0 && !ranks[best]?.length) best -= 1;
    const list = ranks[best];
    if (list === undefined) return false;
    const at = list.at(-1) as number;
    if (tried[at] === 0) looked += 1;
    if (tried[at] === MOVES.length) list.pop();
    else if (goOn(at)) return true;
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
