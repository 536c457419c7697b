import { compose3, dot3, length3, type Pose, sub3, type Vec3 } from '../fold/draft/space.js';
import { contains } from '../plane/inside.js';
import { boxOf, type Loop } from '../plane/loop.js';
import { distance, type Point } from '../plane/point.js';
import type { Placed } from './types.js';

const NEAR = 0.6; // mm between sheets that still count as one stack

/** A panel where it stands in the assembly, its outline in its own frame. */
export interface StandingSheet {
  readonly pose: Pose;
  readonly thickness: number;
  readonly outline: Loop;
  /** A circle it lies in. */
  readonly middle: Point;
  readonly radius: number;
}

/** Every panel of every piece. */
export function standingSheets(pieces: readonly Placed[]): readonly StandingSheet[] {
  return pieces.flatMap(({ part: { formed }, pose }) =>
    formed.panels.map((panel) => {
      const { min, max } = boxOf(panel.shape);
      return {
        pose: compose3(pose, panel.pose),
        thickness: formed.thickness,
        outline: panel.shape.map((at) => ({ at, bulge: 0 })),
        middle: [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2] as const,
        radius: distance(min, max) / 2,
      };
    }),
  );
}

/**
 * The sheets that `layersAt` may count at some of these points: the others lie aside of all of them, or away along the
 * normal with a gap between.
 */
export function sheetsBeside(
  points: readonly Vec3[],
  normal: Vec3,
  sheets: readonly StandingSheet[],
): readonly StandingSheet[] {
  const [first] = points;
  if (first === undefined) return [];
  const reach = Math.max(...points.map((p) => length3(sub3(p, first)))) + NEAR;
  const across: { readonly sheet: StandingSheet; readonly from: number; readonly to: number }[] = [];
  for (const sheet of sheets) {
    const { pose, thickness, middle, radius } = sheet;
    if (!alike(normal, pose)) continue;
    const d = sub3(first, pose.origin);
    if (distance([dot3(d, pose.x), dot3(d, pose.y)], middle) > radius + reach) continue;
    const height = -dot3(d, pose.z) / dot3(normal, pose.z);
    const room = thickness + reach; // more than its other face and any tilt within reach come to
    across.push({ sheet, from: height - room, to: height + room });
  }
  let [low, high] = [-reach, reach];
  const found: StandingSheet[] = [];
  for (let rest = across; ; ) {
    const met = rest.filter((s) => s.from <= high && s.to >= low);
    if (met.length === 0) return found;
    found.push(...met.map((s) => s.sheet));
    low = Math.min(low, ...met.map((s) => s.from));
    high = Math.max(high, ...met.map((s) => s.to));
    const left = new Set(met);
    rest = rest.filter((s) => !left.has(s));
  }
}

/** True for a sheet that lies across a line. */
const alike = (normal: Vec3, pose: Pose) => Math.abs(dot3(normal, pose.z)) >= 0.99;

/**
 * Sheets that lie on each other at a point: those a line along `normal` goes through, counted from the point outwards
 * as long as no gap is wider than 0.6 mm.
 */
export function layersAt(at: Vec3, normal: Vec3, sheets: readonly StandingSheet[]): number {
  const spans: (readonly [number, number])[] = [];
  for (const { pose, thickness, outline } of sheets) {
    if (!alike(normal, pose)) continue;
    const slope = dot3(normal, pose.z);
    const d = sub3(at, pose.origin);
    if (!contains(outline, [dot3(d, pose.x), dot3(d, pose.y)])) continue;
    const height = -dot3(d, pose.z) / slope; // of the unmarked face, along the normal
    const other = height + thickness / slope;
    spans.push([Math.min(height, other), Math.max(height, other)]);
  }
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
