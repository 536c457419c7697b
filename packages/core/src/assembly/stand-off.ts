import type { Formed, FormedBend } from '../fold/formed.js';
import { type Prism, panelPrisms } from '../fold/prism.js';
import { shellDepth } from '../fold/shell.js';
import { add3, compose3, type Pose, scale3, type Vec3 } from '../fold/space.js';
import type { Site } from '../fold/tree.js';

/** A formed part where it stands. */
export interface Standing {
  readonly formed: Formed;
  readonly pose: Pose;
}

/** Bends of a formed part where it stands. */
export function bendsAt({ formed, pose }: Standing): readonly FormedBend[] {
  return formed.bends.map((b) => ({ ...b, frame: compose3(pose, b.frame) }));
}

/** Panels of a formed part where it stands, as convex solids by panel. */
export function solidsAt({
  formed,
  pose,
}: Standing): readonly { readonly id: string; readonly prisms: readonly Prism[] }[] {
  return formed.panels.map((p) => ({
    id: p.id,
    prisms: panelPrisms({ ...p, pose: compose3(pose, p.pose) }, formed.thickness),
  }));
}

/**
 * How far a part has to stand off a host's site, mm, because the bends that fold the site's faces are in its way:
 * 0 when it lies flat. `normal` points off the host. Exact to 1e-9 by bisection between flat and one inside radius.
 */
export function standOff(host: Standing, site: Site, guest: Standing, normal: Vec3): number {
  const faces = site.faces.map((f) => f.panel);
  const bends = bendsAt(host).filter((b) => faces.includes(b.id));
  const most = bends.reduce((r, b) => Math.max(r, b.insideRadius), 0);
  const clear = (out: number) => {
    const moved = { ...guest, pose: { ...guest.pose, origin: add3(guest.pose.origin, scale3(normal, out)) } };
    const solids = solidsAt(moved).flatMap((s) => s.prisms);
    return solids.every((solid) => bends.every((b) => shellDepth(solid, b) < TOUCH));
  };
  if (clear(0)) return 0;
  if (!clear(most)) return 0; // something else is wrong; the clash is reported
  let [low, high] = [0, most];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (clear(middle)) high = middle;
    else low = middle;
  }
  return high;
}

const TOUCH = 1e-7; // mm; touching is clear
