/**
 * A corner of a closed outline as a file holds it: `bulge` of the side that starts here is the tangent of a quarter
 * of the arc's angle, counter-clockwise positive, 0 for a straight side (DXF reference, group 42, from memory).
 */
export interface Bulged {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

interface Side {
  readonly from: Bulged;
  readonly to: Bulged;
}

const sides = (corners: readonly Bulged[]): readonly Side[] =>
  corners.map((from, i) => ({ from, to: corners[(i + 1) % corners.length] ?? from }));

/** Radius and angle from chord and bulge: sagitta s = b·c/2, r = (s² + c²/4) / 2s. */
function arc({ from, to }: Side): { readonly radius: number; readonly angle: number } {
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const sagitta = (Math.abs(from.bulge) * chord) / 2;
  return {
    radius: (sagitta ** 2 + chord ** 2 / 4) / (2 * sagitta),
    angle: 4 * Math.atan(from.bulge),
  };
}

/** Length of a closed outline of lines and arcs. */
export function lengthOf(corners: readonly Bulged[]): number {
  return sides(corners).reduce((sum, side) => {
    if (side.from.bulge === 0) return sum + Math.hypot(side.to.x - side.from.x, side.to.y - side.from.y);
    const { radius, angle } = arc(side);
    return sum + radius * Math.abs(angle);
  }, 0);
}

/** Signed area of a closed outline: the polygon of its corners, and the circular segments on its arcs. */
export function areaOf(corners: readonly Bulged[]): number {
  return sides(corners).reduce((sum, side) => {
    const { from, to } = side;
    const triangle = (from.x * to.y - to.x * from.y) / 2;
    if (from.bulge === 0) return sum + triangle;
    const { radius, angle } = arc(side);
    return sum + triangle + (radius ** 2 / 2) * (angle - Math.sin(angle));
  }, 0);
}
