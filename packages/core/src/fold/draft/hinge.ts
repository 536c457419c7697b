import type { Frame } from '../../plane/frame.js';
import { add, distance, outward, type Point, scale, sub, unit } from '../../plane/point.js';
import { radians } from '../../units/angle.js';
import { add3, type Pose, scale3, type Vec3 } from './space.js';
import type { Outline } from './tree.js';

/**
 * The edge a flange hangs on, in the parent's frame: the flange's x axis runs along it from `origin`, its y axis
 * points away from the parent. `length` is the edge's length on the mould line.
 */
export interface Hinge {
  readonly frame: Frame;
  readonly length: number;
}

/** Hinge along the edge with index `i`. The flange's x runs against the parent's counter-clockwise sense. */
export function hingeAt(outline: Outline, i: number): Hinge {
  const from = (outline[i] as { from: Point }).from;
  const to = (outline[(i + 1) % outline.length] as { from: Point }).from;
  const along = unit(sub(to, from));
  return { frame: { origin: to, x: scale(along, -1), y: outward(along) }, length: distance(from, to) };
}

/** Frame of the flange on the flat: its mould line lies one deduction inside the parent's. */
export function flatFrame(hinge: Hinge, deduction: number): Frame {
  const { origin, x, y } = hinge.frame;
  return { origin: add(origin, scale(y, -deduction)), x, y };
}

/** A bend as the pose of a flange needs it; mm, degrees, angle signed. */
export interface Turn {
  readonly angle: number;
  readonly insideRadius: number;
  readonly setback: number;
}

/** Height of the bend's axis over the unmarked face: above the marked face for up, below the unmarked for down. */
function axisHeight(turn: Pick<Turn, 'angle' | 'insideRadius'>, thickness: number): number {
  return turn.angle > 0 ? thickness + turn.insideRadius : -turn.insideRadius;
}

/** The hinge's frame in space, its z towards the marked face. */
function edgePose(parent: Pose, { frame: { origin, x, y } }: Hinge): Pose {
  return {
    origin: add3(parent.origin, mixed(parent.x, parent.y, origin[0], origin[1])),
    x: mixed(parent.x, parent.y, x[0], x[1]),
    y: mixed(parent.x, parent.y, y[0], y[1]),
    z: parent.z,
  };
}

/** u·`a` + v·`b` */
const mixed = (a: Vec3, b: Vec3, u: number, v: number): Vec3 => [
  a[0] * u + b[0] * v,
  a[1] * u + b[1] * v,
  a[2] * u + b[2] * v,
];

/** Pose of the flange in space, from the parent's. */
export const bentPose = (parent: Pose, hinge: Hinge, turn: Turn, thickness: number): Pose =>
  bentFrom(edgePose(parent, hinge), turn, thickness);

function bentFrom({ origin, x, y, z }: Pose, turn: Turn, thickness: number): Pose {
  const a = radians(turn.angle);
  const c = Math.cos(a);
  const s = Math.sin(a);
  const h = axisHeight(turn, thickness);
  const sb = turn.setback;
  // slide the flange's tangent line to the axis, turn, slide to the parent's tangent line
  return {
    origin: add3(origin, mixed(y, z, -sb * c + h * s - sb, -sb * s - h * c + h)),
    x,
    y: mixed(y, z, c, s),
    z: mixed(y, z, -s, c),
  };
}

/**
 * Frame of a bend's axis in space: x along it, y towards the parent's tangent line, so that a point at radius r and
 * turn φ (0 on the parent) is (x, r·cos φ, r·sin φ).
 */
export const bendAxis = (parent: Pose, hinge: Hinge, turn: Turn, thickness: number): Pose =>
  axisFrom(edgePose(parent, hinge), turn, thickness);

function axisFrom(edge: Pose, turn: Turn, thickness: number): Pose {
  const over = add3(scale3(edge.y, -turn.setback), scale3(edge.z, axisHeight(turn, thickness)));
  // the parent's tangent line lies straight below the axis of an up bend, straight above that of a down bend
  return {
    origin: add3(edge.origin, over),
    x: edge.x,
    y: turn.angle > 0 ? scale3(edge.z, -1) : edge.z,
    z: edge.y,
  };
}

/** Both: where the flange stands, and the axis of its bend. */
export function bent(
  parent: Pose,
  hinge: Hinge,
  turn: Turn,
  thickness: number,
): { readonly pose: Pose; readonly axis: Pose } {
  const edge = edgePose(parent, hinge);
  return { pose: bentFrom(edge, turn, thickness), axis: axisFrom(edge, turn, thickness) };
}
