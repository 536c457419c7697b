import type { FlatBend, FlatPattern, Point } from '@tinwright/core';
import type { BendStep } from '../sequence/answer/plan.js';
import type { Rigid } from './rigid.js';
import type { ReplaySolid } from './solids.js';

/** A machine at one moment of a stroke: its solids, and those a panel that lies at the line may touch. */
export interface Setup {
  readonly tools: readonly ReplayTool[];
  /** Moves the held panel's flat coordinates into the machine. */
  readonly place: Rigid;
}

/** A solid of the machine. */
export interface ReplayTool extends ReplaySolid {
  /** The sheet beside the line may be in it: it lies between the tools. */
  readonly clamps: boolean;
  /** Turns with the free side: looked at before it moves. */
  readonly turns: boolean;
}

/** A machine during a step, at a share of the stroke from 0 to 1. */
export type ReplayMachine = (
  flat: FlatPattern,
  step: BendStep,
  bends: readonly FlatBend[],
  share: number,
) => Setup;

/** Axes of a line as it lies in a machine: forward away from the held side, right as the operator sees it. */
export function lineAxes(
  step: BendStep,
  bend: FlatBend,
): { readonly at: Point; readonly out: Point; readonly right: Point } {
  const [near, far] = step.heldSide === 'parent' ? bend.tangents : [bend.tangents[1], bend.tangents[0]];
  const [a, b] = near;
  const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along: Point = [(b[0] - a[0]) / l, (b[1] - a[1]) / l];
  const side = Math.sign(along[0] * (far[0][1] - a[1]) - along[1] * (far[0][0] - a[0]));
  const out: Point = [-along[1] * side, along[0] * side];
  // z × x, seen from the side that is up: he stands in front and looks back along x
  const right: Point = step.faceUp === 'marked' ? [-out[1], out[0]] : [out[1], -out[0]];
  return { at: a, out, right };
}

/** From the flat coordinates of the held panel to a machine whose origin lies `forward` of its tangent line. */
export function placed(step: BendStep, bend: FlatBend, thickness: number, forward: number): Rigid {
  const { at, out, right } = lineAxes(step, bend);
  const up = step.faceUp === 'marked';
  const dot = (u: Point, v: Point) => u[0] * v[0] + u[1] * v[1];
  return {
    m: [
      [out[0], out[1], 0],
      [right[0], right[1], 0],
      [0, 0, up ? 1 : -1],
    ],
    t: [-dot(out, at) - forward, -dot(right, at), up ? 0 : thickness],
  };
}
