import type { Box, Point } from '@tinwright/core';

/** The pieces of a run of straight lines inside a box. */
export function clipped(points: readonly Point[], closed: boolean, box: Box): readonly (readonly Point[])[] {
  const found: Point[][] = [];
  const count = closed ? points.length : points.length - 1;
  for (let i = 0; i < count; i++) {
    const piece = clippedLine(points[i] as Point, points[(i + 1) % points.length] as Point, box);
    if (piece === null) continue;
    const last = found.at(-1);
    const end = last?.at(-1);
    if (end !== undefined && same(end, piece[0])) last?.push(piece[1]);
    else found.push([...piece]);
  }
  // a closed run that starts inside comes back to where it started
  const [first, last] = [found[0], found.at(-1)];
  if (
    closed &&
    found.length > 1 &&
    first !== undefined &&
    last !== undefined &&
    same(last.at(-1) as Point, first[0] as Point)
  )
    return [[...last, ...first.slice(1)], ...found.slice(1, -1)];
  return found;
}

const same = (a: Point, b: Point) => Math.abs(a[0] - b[0]) < 1e-9 && Math.abs(a[1] - b[1]) < 1e-9;

/** What of a straight line lies inside a box; null for nothing. */
export function clippedLine(a: Point, b: Point, { min, max }: Box): readonly [Point, Point] | null {
  let [from, to] = [0, 1];
  for (const k of [0, 1] as const) {
    const d = b[k] - a[k];
    if (Math.abs(d) < 1e-12) {
      if (a[k] < min[k] || a[k] > max[k]) return null;
      continue;
    }
    const [s, t] = [(min[k] - a[k]) / d, (max[k] - a[k]) / d];
    from = Math.max(from, Math.min(s, t));
    to = Math.min(to, Math.max(s, t));
    if (to - from < 1e-12) return null;
  }
  const at = (t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
  return [from === 0 ? a : at(from), to === 1 ? b : at(to)];
}
