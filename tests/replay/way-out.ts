// A rigid body drawn out of a section, moved and tilted: best first over a lattice of poses, every step between two of
// them looked at in its middle too.
import type { V2 } from './rigid.js';

/** A convex piece of the body, with what it may run into. */
export interface Piece {
  readonly section: readonly V2[];
  readonly against: readonly { readonly own: readonly V2[]; readonly other: readonly V2[] }[];
}

const GRIDS = [
  { step: 3, turn: 3, most: 15_000 },
  { step: 1, turn: 1, most: 50_000 },
] as const;

const [BACK, FRONT, RISE, TILT] = [60, 500, 350, 105]; // mm and degrees; a longer part goes as far as it is long
const MOST = 1000; // steps

/** @param past the body is out once all of it lies further out in x than this */
export function wayOut(pieces: readonly Piece[], { past }: { readonly past: number }): boolean {
  const all = pieces.flatMap((p) => p.section);
  const pivot: V2 = [Math.min(...all.map((p) => p[0])), Math.min(...all.map((p) => p[1]))];
  const [wide, high] = [0, 1].map((k) => Math.max(...all.map((p) => p[k] as number)) - (pivot[k] as number));
  const size = Math.hypot(wide as number, high as number);
  const front = Math.max(FRONT, size + past - pivot[0]);
  const body = { pairs: pairsOf(pieces), pivot, all, front };
  return GRIDS.some((grid) => search(body, grid, past));
}

interface Pair {
  readonly own: readonly V2[];
  readonly other: readonly V2[];
  readonly box: readonly [number, number, number, number];
}

interface Moving {
  readonly pairs: readonly Pair[];
  readonly pivot: V2;
  readonly all: readonly V2[];
  /** How far it may go, mm. */
  readonly front: number;
}

/** Each once: pieces that look the same along the line are one. */
function pairsOf(pieces: readonly Piece[]): readonly Pair[] {
  const pairs = new Map<string, Pair>();
  for (const { own, other } of pieces.flatMap((p) => p.against)) {
    const [xs, zs] = [other.map((p) => p[0]), other.map((p) => p[1])];
    const box = [Math.min(...xs), Math.max(...xs), Math.min(...zs), Math.max(...zs)] as const;
    pairs.set(JSON.stringify([own, other].map((s) => s.map((p) => p.map((v) => v.toFixed(2))))), {
      own,
      other,
      box,
    });
  }
  return [...pairs.values()];
}

type Pose = readonly [number, number, number];

function search(body: Moving, { step, turn, most }: (typeof GRIDS)[number], past: number): boolean {
  const free = new Map<number, boolean>();
  const seen = new Set<number>();
  const rows = rowsByRear();
  // poses and the middles between them have numbers in half steps
  const clearAt = (x: number, z: number, t: number): boolean => {
    const key = ((x + 2048) * 4096 + z + 2048) * 1024 + t + 512;
    const known = free.get(key);
    if (known !== undefined) return known;
    const found = clear(body, [(x * step) / 2, (z * step) / 2, (t * turn * Math.PI) / 360]);
    free.set(key, found);
    return found;
  };
  const far = (x: number, z: number, t: number) =>
    Math.abs(t * turn) > TILT ||
    x * step < -BACK ||
    x * step > body.front ||
    x > MOST ||
    Math.abs(z * step) > RISE;
  rows.add([0, 0, 0], 0);
  for (let n = 0; n < most; n++) {
    const pose = rows.furthest();
    if (pose === undefined) return false;
    for (const [dx, dz, dt] of STEPS) {
      const [x, z, t] = [pose[0] + dx, pose[1] + dz, pose[2] + dt];
      const key = ((x + 1024) * 2048 + z + 1024) * 512 + t + 256;
      if (seen.has(key) || far(x, z, t)) continue;
      if (!clearAt(2 * x, 2 * z, 2 * t) || !clearAt(2 * x - dx, 2 * z - dz, 2 * t - dt)) continue;
      seen.add(key);
      const rear = rearOf(body, [x * step, z * step, (t * turn * Math.PI) / 180]);
      if (rear > past) return true;
      rows.add([x, z, t], rear);
    }
  }
  return false;
}

/** Poses by how far out they are, a row for each millimetre. */
function rowsByRear() {
  const rows: Pose[][] = [];
  let top = 0;
  return {
    add: (pose: Pose, rear: number) => {
      const row = Math.max(0, Math.min(4000, Math.round(rear + 2000)));
      rows[row] ??= [];
      (rows[row] as Pose[]).push(pose);
      top = Math.max(top, row);
    },
    furthest: (): Pose | undefined => {
      while (top > 0 && !rows[top]?.length) top -= 1;
      return rows[top]?.pop();
    },
  };
}

const AXIS = [-1, 0, 1] as const;
const STEPS: readonly Pose[] = AXIS.flatMap((x) =>
  AXIS.flatMap((z) => AXIS.map((t): Pose => [x, z, t])),
).filter((s) => s.some((v) => v !== 0));

function rearOf({ all, pivot: [px, pz] }: Moving, [dx, , t]: Pose): number {
  const [c, s] = [Math.cos(t), Math.sin(t)];
  return all.reduce((least, [x, z]) => Math.min(least, c * (x - px) - s * (z - pz) + px + dx), Infinity);
}

function clear({ pairs, pivot: [px, pz] }: Moving, [dx, dz, t]: Pose): boolean {
  const [c, s] = [Math.cos(t), Math.sin(t)];
  return pairs.every(({ own, other, box }) => {
    let [x0, x1, z0, z1] = [Infinity, -Infinity, Infinity, -Infinity];
    const here = own.map(([x, z]): V2 => {
      const u = c * (x - px) - s * (z - pz) + px + dx;
      const v = s * (x - px) + c * (z - pz) + pz + dz;
      [x0, x1, z0, z1] = [Math.min(x0, u), Math.max(x1, u), Math.min(z0, v), Math.max(z1, v)];
      return [u, v];
    });
    if (x1 <= box[0] || x0 >= box[1] || z1 <= box[2] || z0 >= box[3]) return true;
    return parts(here, other) || parts(other, here);
  });
}

/** True when a side of the first convex polygon parts the two. */
function parts(a: readonly V2[], b: readonly V2[]): boolean {
  return a.some((p, i) => {
    const q = a[(i + 1) % a.length] as V2;
    const [nx, nz] = [q[1] - p[1], p[0] - q[0]];
    return b.every((r) => nx * (r[0] - p[0]) + nz * (r[1] - p[1]) >= 0);
  });
}
