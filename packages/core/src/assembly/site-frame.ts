import {
  add3,
  compose3,
  cross3,
  dot3,
  type Pose,
  place3,
  scale3,
  sub3,
  turn3,
  unit3,
  type Vec3,
} from '../fold/draft/space.js';
import type { Seat, Site } from '../fold/draft/tree.js';
import type { Formed, FormedPanel } from '../fold/formed/formed.js';

/** A site in space: the seat's point, outward normal of its face, the upright direction on it. */
export interface SiteFrame {
  readonly origin: Vec3;
  readonly normal: Vec3;
  readonly up: Vec3;
}

/** The frame of a site of a formed part standing at `pose`. */
export function siteFrame(formed: Formed, { seat }: Site, pose: Pose): SiteFrame {
  const panel = formed.panels.find((p) => p.id === seat.panel) as FormedPanel;
  const stand = compose3(pose, panel.pose);
  const lift = seat.lift === 'top' ? formed.box.max[2] - formed.thickness : seat.lift;
  const { height, normal } = looking({ looks: seat.looks, lift }, formed.thickness);
  return {
    origin: place3(stand, [seat.at[0], seat.at[1], height]),
    normal: unit3(turn3(stand, normal)),
    up: unit3(turn3(stand, [seat.up[0], seat.up[1], 0])),
  };
}

/** Height over the unmarked face, and outward direction, in the panel's frame. */
function looking(
  { looks, lift }: { readonly looks: Seat['looks']; readonly lift: number },
  thickness: number,
): { readonly height: number; readonly normal: Vec3 } {
  if (looks === 'marked') return { height: thickness + lift, normal: [0, 0, 1] };
  if (looks === 'unmarked') return { height: -lift, normal: [0, 0, -1] };
  return { height: lift, normal: [looks[0], looks[1], 0] };
}

/** To the right of somebody who looks at the face, the upright direction up. */
export const rightOf = ({ normal, up }: SiteFrame): Vec3 => cross3(up, normal);

/**
 * Pose that brings `own` (a frame in the part's own coordinates) onto `host`: faces against each other, upright
 * directions together, moved by `up` and `across` on the host's face and `out` off it. mm
 */
export function mate(
  host: SiteFrame,
  own: SiteFrame,
  move: { readonly up: number; readonly across: number; readonly out: number },
): Pose {
  const [n, u] = [scale3(host.normal, -1), host.up];
  const world = [n, u, cross3(u, n)] as const;
  const local = [own.normal, own.up, cross3(own.up, own.normal)] as const;
  // column k of the turn: where the part's own axis k goes
  const axis = (k: 0 | 1 | 2): Vec3 =>
    world.reduce<Vec3>((sum, w, i) => add3(sum, scale3(w, (local[i] as Vec3)[k])), [0, 0, 0]);
  const [x, y, z] = [axis(0), axis(1), axis(2)];
  const steps = [scale3(host.up, move.up), scale3(rightOf(host), move.across), scale3(host.normal, move.out)];
  const target = steps.reduce(add3, host.origin);
  return { origin: sub3(target, turn3({ x, y, z, origin: [0, 0, 0] }, own.origin)), x, y, z };
}

/** How far a second frame misses the place the first one wants it in: off the face, on it, and in direction. */
export interface Misfit {
  /** Distance off the face, mm; negative when inside. */
  readonly out: number;
  /** Distance on the face, mm. */
  readonly aside: number;
  /** Angle it is turned by: between the faces, and on them. Degrees. */
  readonly tilt: number;
}

export function misfit(
  host: SiteFrame,
  other: SiteFrame,
  move: { readonly up: number; readonly across: number },
): Misfit {
  const d = sub3(other.origin, host.origin);
  const [up, across] = [dot3(d, host.up) - move.up, dot3(d, rightOf(host)) - move.across];
  // a turn by φ leaves 1 + 2 cos φ of the three cosines between what should be the same direction
  const same =
    dot3(host.up, other.up) - dot3(host.normal, other.normal) - dot3(rightOf(host), rightOf(other));
  const turned = Math.min(1, Math.max(-1, (same - 1) / 2));
  return {
    out: dot3(d, host.normal),
    aside: Math.hypot(up, across),
    tilt: (Math.acos(turned) * 180) / Math.PI,
  };
}
