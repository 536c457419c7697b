import { compose3, dot3, sub3, type Vec3 } from '../fold/space.js';
import { contains } from '../plane/inside.js';
import type { Placed } from './types.js';

const NEAR = 0.6; // mm between sheets that still count as one stack

/**
 * Sheets that lie on each other at a point, of all pieces: those a line along `normal` goes through, counted from the
 * point outwards as long as no gap is wider than 0.6 mm.
 */
export function layersAt(at: Vec3, normal: Vec3, pieces: readonly Placed[]): number {
  const spans = pieces.flatMap(({ part, pose }) =>
    part.formed.panels.flatMap((panel) => {
      const stand = compose3(pose, panel.pose);
      const slope = dot3(normal, stand.z);
      if (Math.abs(slope) < 0.99) return [];
      const d = sub3(at, stand.origin);
      const shape = panel.shape.map((p) => ({ at: p, bulge: 0 }));
      if (!contains(shape, [dot3(d, stand.x), dot3(d, stand.y)])) return [];
      const height = -dot3(d, stand.z) / slope; // of the unmarked face, along the normal
      const other = height + part.formed.thickness / slope;
      return [[Math.min(height, other), Math.max(height, other)] as const];
    }),
  );
  const sorted = spans.toSorted((a, b) => a[0] - b[0]);
  const stacks: (readonly [number, number])[][] = [];
  for (const span of sorted) {
    const last = stacks.at(-1);
    if (last !== undefined && span[0] - Math.max(...last.map((s) => s[1])) <= NEAR) last.push(span);
    else stacks.push([span]);
  }
  const here = stacks.find((s) => s.some(([a, b]) => a <= 1e-3 && b >= -1e-3));
  return here?.length ?? 0;
}
