import type { Point } from '@tinwright/core';

const TWINS = 1e-9; // mm

/**
 * What of a closed outline lies where n·p ≥ c; empty when that has no area. Pieces of one that falls apart stay joined
 * along the cut.
 */
export function cutOff(outline: readonly Point[], n: Point, c: number): readonly Point[] {
  const depth = outline.map((p) => n[0] * p[0] + n[1] * p[1] - c);
  const kept = outline.flatMap((p, i): readonly Point[] => {
    const j = (i + 1) % outline.length;
    const [a, b] = [depth[i] as number, depth[j] as number];
    const q = outline[j] as Point;
    const t = a / (a - b);
    const crossing: readonly Point[] =
      a < 0 !== b < 0 ? [[p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t]] : [];
    return a >= 0 ? [p, ...crossing] : crossing;
  });
  const distinct = kept.filter((p, i) => {
    const q = kept[(i + 1) % kept.length] as Point;
    return Math.hypot(p[0] - q[0], p[1] - q[1]) > TWINS;
  });
  return distinct.length < 3 ? [] : distinct;
}
