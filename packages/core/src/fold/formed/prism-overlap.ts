import { boxesApart, leastAlong, type Prism, type Vectors } from './prism.js';

const PARALLEL = 1e-6;

/** How far two convex solids reach into each other along the axis that parts them soonest, mm; 0 when apart. */
export function overlapDepth(a: Prism, b: Prism): number {
  if (boxesApart(a, b)) return 0;
  const depth = depthAlongAll(a, b, a.normals, Infinity);
  const both = depth <= 0 ? depth : depthAlongAll(a, b, b.normals, depth);
  return both <= 0 ? 0 : Math.max(0, depthAcrossEdges(a, b, both));
}

/** Least depth along these axes, `known` at most; given up once the solids are apart along one. */
function depthAlongAll(a: Prism, b: Prism, axes: Vectors, known: number): number {
  let depth = known;
  for (let i = 0; i < axes.length && depth > 0; i += 3)
    depth = Math.min(
      depth,
      depthAlong(a, b, axes[i] as number, axes[i + 1] as number, axes[i + 2] as number),
    );
  return depth;
}

/** The same along the directions that are square to an edge of either. */
function depthAcrossEdges(a: Prism, b: Prism, known: number): number {
  let depth = known;
  for (let i = 0; i < a.directions.length && depth > 0; i += 3)
    for (let k = 0; k < b.directions.length && depth > 0; k += 3) {
      const ux = a.directions[i] as number;
      const uy = a.directions[i + 1] as number;
      const uz = a.directions[i + 2] as number;
      const vx = b.directions[k] as number;
      const vy = b.directions[k + 1] as number;
      const vz = b.directions[k + 2] as number;
      const x = uy * vz - uz * vy;
      const y = uz * vx - ux * vz;
      const z = ux * vy - uy * vx;
      const size = Math.sqrt(x * x + y * y + z * z);
      if (size > PARALLEL) depth = Math.min(depth, depthAlong(a, b, x / size, y / size, z / size));
    }
  return depth;
}

/** How far the solids reach into each other along an axis of length 1; negative when apart. mm */
function depthAlong(a: Prism, b: Prism, x: number, y: number, z: number): number {
  const a0 = leastAlong(a, x, y, z);
  const b1 = -leastAlong(b, -x, -y, -z);
  if (b1 <= a0) return b1 - a0;
  const a1 = -leastAlong(a, -x, -y, -z);
  const b0 = leastAlong(b, x, y, z);
  return Math.min(a1 - b0, b1 - a0);
}
