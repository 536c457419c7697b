import type { Frame } from '../plane/frame.js';
import { add, distance, outward, type Point, scale, sub, unit } from '../plane/point.js';
import { radians } from '../units/angle.js';
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
export function axisHeight(turn: Pick<Turn, 'angle' | 'insideRadius'>, thickness: number): number {
  return turn.angle > 0 ? thickness + turn.insideRadius : -turn.insideRadius;
}

/** The hinge's frame in space, its z towards the marked face. */
function edgePose(parent: Pose, { frame: { origin, x, y } }: Hinge): Pose {
  const turned = ([u, v]: Point): Vec3 => [
    parent.x[0] * u + parent.y[0] * v,
    parent.x[1] * u + parent.y[1] * v,
    parent.x[2] * u + parent.y[2] * v,
  ];
  return { origin: add3(parent.origin, turned(origin)), x: turned(x), y: turned(y), z: parent.z };
}

/** Pose of the flange in space, from the parent's. */
export function bentPose(parent: Pose, hinge: Hinge, turn: Turn, thickness: number): Pose {
  const a = radians(turn.angle);
  const [c, s] = [Math.cos(a), Math.sin(a)];
  const [h, sb] = [axisHeight(turn, thickness), turn.setback];
  const { origin, x, y, z } = edgePose(parent, hinge);
  const mixed = (u: number, v: number): Vec3 => [
    y[0] * u + z[0] * v,
    y[1] * u + z[1] * v,
    y[2] * u + z[2] * v,
  ];
  // slide the flange's tangent line to the axis, turn, slide to the parent's tangent line
  return {
    origin: add3(origin, mixed(-sb * c + h * s - sb, -sb * s - h * c + h)),
    x,
    y: mixed(c, s),
    z: mixed(-s, c),
  };
}

/**
 * Frame of a bend's axis in space: x along it, y towards the parent's tangent line, so that a point at radius r and
 * turn φ (0 on the parent) is (x, r·cos φ, r·sin φ).
 */
export function bendAxis(parent: Pose, hinge: Hinge, turn: Turn, thickness: number): Pose {
  const edge = edgePose(parent, hinge);
  const over = add3(scale3(edge.y, -turn.setback), scale3(edge.z, axisHeight(turn, thickness)));
  // the parent's tangent line lies straight below the axis of an up bend, straight above that of a down bend
  return {
    origin: add3(edge.origin, over),
    x: edge.x,
    y: turn.angle > 0 ? scale3(edge.z, -1) : edge.z,
    z: edge.y,
  };
}
