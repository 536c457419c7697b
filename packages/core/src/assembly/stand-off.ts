import { panelPrisms } from '../fold/prism.js';
import { shellDepth } from '../fold/shell.js';
import { HOME, scale3, type Vec3 } from '../fold/space.js';
import { type Standing, stand } from '../fold/stand.js';
import type { Site } from '../fold/tree.js';

/**
 * How far a part has to stand off a host's site, mm, because the bends that fold the site's faces are in its way:
 * 0 when it lies flat. `normal` points off the host. Exact to 1e-9 by bisection between flat and one inside radius.
 */
export function standOff(host: Standing, site: Site, guest: Standing, normal: Vec3): number {
  const faces = site.faces.map((f) => f.panel);
  const bends = host.bends.filter((b) => faces.includes(b.id));
  const most = bends.reduce((r, b) => Math.max(r, b.insideRadius), 0);
  const clear = (out: number) => {
    const { panels, thickness } = stand(guest, { ...HOME, origin: scale3(normal, out) });
    const solids = panels.flatMap((p) => panelPrisms(p, thickness));
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
