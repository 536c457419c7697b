import { compose3, dot3, type Pose, sub3, type Vec3 } from '../fold/space.js';
import { contains } from '../plane/inside.js';
import type { Loop } from '../plane/loop.js';
import type { Placed } from './types.js';

const NEAR = 0.6; // mm between sheets that still count as one stack

/** A panel where it stands in the assembly, its outline in its own frame. */
export interface StandingSheet {
  readonly pose: Pose;
  readonly thickness: number;
  readonly outline: Loop;
}

/** Every panel of every piece. */
export function standingSheets(pieces: readonly Placed[]): readonly StandingSheet[] {
  return pieces.flatMap(({ part: { formed }, pose }) =>
    formed.panels.map((panel) => ({
      pose: compose3(pose, panel.pose),
      thickness: formed.thickness,
      outline: panel.shape.map((at) => ({ at, bulge: 0 })),
    })),
  );
}

/**
 * Sheets that lie on each other at a point: those a line along `normal` goes through, counted from the point outwards
 * as long as no gap is wider than 0.6 mm.
 */
export function layersAt(at: Vec3, normal: Vec3, sheets: readonly StandingSheet[]): number {
  const spans = sheets.flatMap(({ pose, thickness, outline }) => {
    const slope = dot3(normal, pose.z);
    if (Math.abs(slope) < 0.99) return [];
    const d = sub3(at, pose.origin);
    if (!contains(outline, [dot3(d, pose.x), dot3(d, pose.y)])) return [];
    const height = -dot3(d, pose.z) / slope; // of the unmarked face, along the normal
    const other = height + thickness / slope;
    return [[Math.min(height, other), Math.max(height, other)] as const];
  });
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
