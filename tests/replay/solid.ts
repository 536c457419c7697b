// Right prisms and whether two of them share room, at rest or while one moves along a straight line: exact, by the
// theorem of the separating axis (for a straight move its direction joins the edges).
import { along, at, cross, dot, type Move, type V3 } from './rigid.js';

/** A right prism over a convex polygon. mm */
export interface Solid {
  readonly points: readonly V3[];
  /** Normals of its faces and directions of its edges, each once, any length. */
  readonly normals: readonly V3[];
  readonly edges: readonly V3[];
  readonly low: V3;
  readonly high: V3;
}

/** Over a convex ring, `up` high, square to it. */
export function prism(ring: readonly V3[], up: V3): Solid {
  const edges = ring.map((p, i) => {
    const q = ring[(i + 1) % ring.length] as V3;
    return [q[0] - p[0], q[1] - p[1], q[2] - p[2]] as const;
  });
  const points = [...ring, ...ring.map((p): V3 => [p[0] + up[0], p[1] + up[1], p[2] + up[2]])];
  return boxed({
    points,
    normals: [up, ...edges.map((e) => cross(e, up))],
    edges: [up, ...edges],
  });
}

function boxed(s: Omit<Solid, 'low' | 'high'>): Solid {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const p of s.points)
    for (let k = 0; k < 3; k++) {
      const v = p[k] as number;
      if (v < (low[k] as number)) low[k] = v;
      if (v > (high[k] as number)) high[k] = v;
    }
  return { ...s, low, high };
}

export const moved = (s: Solid, m: Move): Solid =>
  boxed({
    points: s.points.map((p) => at(m, p)),
    normals: s.normals.map((n) => along(m, n)),
    edges: s.edges.map((e) => along(m, e)),
  });

const NIL: V3 = [0, 0, 0];
const HAIR = 1e-7;

/** True when the two share room. @param by the way that `a` goes in a straight line */
export function meets(a: Solid, b: Solid, by: V3 = NIL): boolean {
  if (boxesApart(a, b, by)) return false;
  const still = by === NIL;
  for (const n of a.normals) if (apart(a, b, n, by)) return false;
  for (const n of b.normals) if (apart(a, b, n, by)) return false;
  for (const e of a.edges) for (const f of b.edges) if (apart(a, b, cross(e, f), by)) return false;
  if (!still) for (const e of [...a.edges, ...b.edges]) if (apart(a, b, cross(by, e), by)) return false;
  return true;
}

function boxesApart(a: Solid, b: Solid, by: V3): boolean {
  return [0, 1, 2].some((k) => {
    const d = by[k] as number;
    const over = (a.high[k] as number) + Math.max(0, d) <= (b.low[k] as number) + HAIR;
    return over || (a.low[k] as number) + Math.min(0, d) >= (b.high[k] as number) - HAIR;
  });
}

function apart(a: Solid, b: Solid, n: V3, by: V3): boolean {
  const size = Math.abs(n[0]) + Math.abs(n[1]) + Math.abs(n[2]);
  if (size < 1e-9) return false;
  let [a0, a1, b0, b1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const p of a.points) {
    const v = dot(n, p);
    if (v < a0) a0 = v;
    if (v > a1) a1 = v;
  }
  for (const p of b.points) {
    const v = dot(n, p);
    if (v < b0) b0 = v;
    if (v > b1) b1 = v;
  }
  const way = dot(n, by);
  if (way > 0) a1 += way;
  else a0 += way;
  return a1 <= b0 + HAIR * size || b1 <= a0 + HAIR * size;
}
