import { isArc, type Loop, type Point, type Segment } from '@tinwright/core';
import { meetings } from '@tinwright/core/internal';
import { between, shareAt } from './run.js';
import { roundOf, type Shifted } from './shifted.js';

/**
 * The moved sides joined in their order: by rounds where corners open, cut back to where they cross where corners close.
 * Null where some side is used up, so that its neighbours have to meet.
 */
export function trimmed(shifts: readonly Shifted[], by: number): Loop | null {
  const moved = shifts.map((s) => s.moved);
  if (moved.includes(null)) return null;
  const sides = moved as readonly Segment[];
  const crossings = shifts.map(({ corner }, i) =>
    corner === 'closes' ? crossing(sides[i] as Segment, sides[(i + 1) % sides.length] as Segment) : undefined,
  );
  const loop: { at: Point; bulge: number }[] = [];
  for (const [i, side] of sides.entries()) {
    const before = crossings[(i + sides.length - 1) % sides.length];
    const after = crossings[i];
    if (before === null || after === null) return null;
    const [from, to] = [before ?? side.from, after ?? side.to];
    if (shareAt(side, to) - shareAt(side, from) <= 1e-12) return null;
    loop.push({
      at: from,
      bulge: before === undefined && after === undefined ? side.bulge : between(side, from, to).bulge,
    });
    if (shifts[i]?.corner !== 'opens') continue;
    const next = sides[(i + 1) % sides.length] as Segment;
    loop.push({ at: to, bulge: roundOf((shifts[i] as Shifted).side.to, to, next.from, by).bulge });
  }
  return loop;
}

/** Where two neighbours cross, as near to their common corner as may be; null where they do not. */
function crossing(a: Segment, b: Segment): Point | null {
  if (!isArc(a) && !isArc(b)) return lines(a, b);
  const points = meetings(a, b);
  return points.reduce<Point | null>(
    (best, p) => (best === null || shareAt(a, p) > shareAt(a, best) ? p : best),
    null,
  );
}

function lines(a: Segment, b: Segment): Point | null {
  const [ux, uy] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
  const [vx, vy] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
  const det = ux * vy - uy * vx;
  if (det === 0) return null;
  const [wx, wy] = [b.from[0] - a.from[0], b.from[1] - a.from[1]];
  const [s, t] = [(wx * vy - wy * vx) / det, (wx * uy - wy * ux) / det];
  return s > 0 && s <= 1 && t >= 0 && t < 1 ? [a.from[0] + s * ux, a.from[1] + s * uy] : null;
}
