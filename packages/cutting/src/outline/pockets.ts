import type { Point } from '@tinwright/core';

/**
 * What a polygon lacks of its box: the pockets between its sides and the box's, counter-clockwise.
 * @param outline counter-clockwise
 */
export function pocketsOf(outline: readonly Point[]): readonly (readonly Point[])[] {
  const xs = outline.map((p) => p[0]);
  const ys = outline.map((p) => p[1]);
  const box: Sides = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  const n = outline.length;
  const touches = outline.flatMap((p, i) => (along(box, p) === null ? [] : [i]));
  return touches.flatMap((i, k) => {
    const j = touches[(k + 1) % touches.length] as number;
    const count = (j - i + n) % n || n;
    const chain = Array.from({ length: count + 1 }, (_, s) => outline[(i + s) % n] as Point);
    const [p, q] = [chain[0] as Point, chain.at(-1) as Point];
    const rim = cornersBetween(box, p, q);
    if (count === 1 && rim.length === 0 && (p[0] === q[0] || p[1] === q[1])) return [];
    return [[p, ...rim, q, ...chain.slice(1, -1).reverse()]];
  });
}

type Sides = readonly [x0: number, y0: number, x1: number, y1: number];

/** How far round the box from its lower left corner a point on its rim is, counter-clockwise; null off the rim. */
function along([x0, y0, x1, y1]: Sides, [x, y]: Point): number | null {
  const [w, h] = [x1 - x0, y1 - y0];
  if (y === y0) return x - x0;
  if (x === x1) return w + y - y0;
  if (y === y1) return w + h + x1 - x;
  if (x === x0) return 2 * w + h + y1 - y;
  return null;
}

/** Corners of the box passed on the way round from one point of its rim to another. */
function cornersBetween(box: Sides, p: Point, q: Point): readonly Point[] {
  const [x0, y0, x1, y1] = box;
  const round = 2 * (x1 - x0 + y1 - y0);
  const start = along(box, p) as number;
  const way = ((along(box, q) as number) - start + round) % round;
  const corners: readonly Point[] = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
  return corners
    .map((c): [number, Point] => [((along(box, c) as number) - start + round) % round, c])
    .filter(([at]) => at > 0 && at < way)
    .sort((a, b) => a[0] - b[0])
    .map(([, c]) => c);
}
