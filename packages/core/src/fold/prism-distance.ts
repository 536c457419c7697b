import { boxDistance, overlapDepth, type Prism } from './prism.js';
import { add3, cross3, dot3, length3, scale3, sub3, type Vec3 } from './space.js';

/** Distance between two convex solids, mm; where they overlap, how deep, negative. */
export function prismDistance(a: Prism, b: Prism): number {
  const depth = overlapDepth(a, b);
  if (depth > 0) return -depth;
  return Math.min(edgeDistance(a, b), cornerDistance(a, b), cornerDistance(b, a));
}

/** The same, given up as soon as it is known to be `enough` or more. */
export function prismDistanceUpTo(a: Prism, b: Prism, enough: number): number {
  return boxDistance(a, b) >= enough ? enough : Math.min(enough, prismDistance(a, b));
}

function edgeDistance(a: Prism, b: Prism): number {
  let best = Infinity;
  for (const [p, q] of a.edges)
    for (const [r, s] of b.edges) best = Math.min(best, segmentDistance(p, q, r, s));
  return best;
}

/** Least distance of a corner of `a` that lies straight over a face of `b`; the edges cover every other case. */
function cornerDistance(a: Prism, b: Prism): number {
  let best = Infinity;
  b.faces.forEach((face, i) => {
    const n = b.normals[i] as Vec3;
    for (const c of a.corners) {
      const h = dot3(n, sub3(c, face[0] as Vec3));
      if (Math.abs(h) < best && over(face, n, c)) best = Math.abs(h);
    }
  });
  return best;
}

function over(face: readonly Vec3[], n: Vec3, p: Vec3): boolean {
  return face.every((a, i) => {
    const b = face[(i + 1) % face.length] as Vec3;
    return dot3(cross3(sub3(b, a), sub3(p, a)), n) >= 0;
  });
}

/** Least distance between two segments in space, mm. */
export function segmentDistance(p: Vec3, q: Vec3, r: Vec3, s: Vec3): number {
  const [u, v, w] = [sub3(q, p), sub3(s, r), sub3(p, r)];
  const [a, b, c, d, e] = [dot3(u, u), dot3(u, v), dot3(v, v), dot3(u, w), dot3(v, w)];
  const det = a * c - b * b;
  const clamp = (x: number) => Math.max(0, Math.min(1, x));
  let t = det > 1e-12 * a * c ? clamp((b * e - c * d) / det) : 0;
  let k = c === 0 ? 0 : (b * t + e) / c;
  if (k < 0 || k > 1) {
    k = clamp(k);
    t = a === 0 ? 0 : clamp((b * k - d) / a);
  }
  return length3(sub3(add3(p, scale3(u, t)), add3(r, scale3(v, k))));
}
