import type { Point } from '@tinwright/core';
import { convexHull } from '@tinwright/core/internal';
import { borderOf } from './boundary.js';
import { chained } from './chain.js';
import { convolve } from './convolve.js';
import { type NoFitRing, onGrid, type Region, ringArea, STEP } from './ring.js';
import { bandsOf } from './winding.js';

/** Corners of the round that a region is grown by: level and upright sides grow by the distance itself. */
const CORNERS = 12;

/**
 * A region with everything nearer than `by` mm around it, and at most 4 % more at its corners: its sum with a round.
 * Notches and holes too narrow for a gap close.
 */
export function grown(region: Region, by: number): Region {
  const round = disc(by);
  const outer = onGrid(region.outer);
  const sums = convolve(outer, round);
  const rings = chained(borderOf(bandsOf(sums), 0));
  const holes = region.holes.map(onGrid).flatMap((h) => {
    const [x0, x1, y0, y1] = [0, 1].flatMap((axis) => [
      Math.min(...h.map((p) => p[axis as 0 | 1])),
      Math.max(...h.map((p) => p[axis as 0 | 1])),
    ]) as [number, number, number, number];
    if (Math.min(x1 - x0, y1 - y0) <= 2 * by + 2 * STEP) return [];
    return chained(borderOf(bandsOf(convolve(h, round)), -1));
  });
  const inner = [...rings.slice(1), ...holes].map(onGrid).filter((r) => r.length > 2);
  const around = rings[0];
  if (around !== undefined && ringArea(around) > ringArea(outer))
    return { outer: onGrid(around), holes: inner };
  // a border that did not close: the hull is larger, never smaller
  const points = Array.from(
    { length: sums.length / 2 },
    (_, k): Point => [sums[2 * k] as number, sums[2 * k + 1] as number],
  );
  return { outer: onGrid(convexHull(points)), holes: [] };
}

/** A polygon round a disc, every side touching it, rounded outwards to the grid. */
function disc(radius: number): NoFitRing {
  const far = radius / Math.cos(Math.PI / CORNERS) + STEP;
  return onGrid(
    Array.from({ length: CORNERS }, (_, k): Point => {
      const angle = ((2 * k + 1) * Math.PI) / CORNERS;
      return [far * Math.cos(angle), far * Math.sin(angle)];
    }),
  );
}

/** The ring with fewer corners and no less material: those left out stand at most `stray` mm inside what stays. */
export function simplified(ring: NoFitRing, stray: number): NoFitRing {
  let kept = ring;
  for (;;) {
    const at = kept.findIndex((p, i) => {
      const [a, b] = [
        kept[(i + kept.length - 1) % kept.length] as Point,
        kept[(i + 1) % kept.length] as Point,
      ];
      const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
      const side = dx * (p[1] - a[1]) - dy * (p[0] - a[0]);
      return side >= 0 && side <= stray * Math.sqrt(dx * dx + dy * dy) && kept.length > 4;
    });
    if (at < 0) return kept;
    kept = kept.filter((_, i) => i !== at);
  }
}
