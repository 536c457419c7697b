import type { Loop } from '../../plane/loop.js';
import type { Point } from '../../plane/point.js';
import type { Pose, Vec3 } from '../draft/space.js';
import type { Hole } from '../draft/tree.js';

/** A panel of the formed part: its flat shape and where it stands. */
export interface FormedPanel {
  readonly id: string;
  readonly pose: Pose;
  /** Corners in the panel's own frame, counter-clockwise from the marked face; between z = 0 and z = T. */
  readonly shape: readonly Point[];
  /** `edges[i]` names the edge from corner i to the next. */
  readonly edges: readonly string[];
  readonly holes: readonly Hole[];
  /** Openings that are no round holes. */
  readonly cutouts: readonly Loop[];
  /** Its own thickness: the solids of a bought part differ; that of the sheet where it is left out. */
  readonly thickness?: number;
}

/**
 * The bent material of one bend: a piece of a hollow cylinder. Its frame stands on the axis: x along it, y
 * towards the parent's tangent line seen from the axis at turn 0; a point at radius r and turn φ is
 * (s, r·cos φ, r·sin φ). Turn runs from 0 on the parent to `sweep` (radians) on the flange.
 */
export interface FormedBend {
  readonly id: string;
  readonly parent: string;
  readonly frame: Pose;
  readonly sweep: number;
  readonly insideRadius: number;
  readonly outsideRadius: number;
  /** x of the low and the high end at turn 0 and at turn `sweep`; straight in between. */
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
}

/** A box in space, mm. */
export interface Box3 {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** The part after all bends, in the frame of its first panel: unmarked face at z = 0. mm */
export interface Formed {
  readonly thickness: number;
  readonly panels: readonly FormedPanel[];
  readonly bends: readonly FormedBend[];
  readonly box: Box3;
  /** Extent along x, y and z. */
  readonly size: Vec3;
  /** mm³ of the formed shape, reliefs at the roots of notches filled; the metal's own volume is flat area × thickness. */
  readonly volume: number;
}
