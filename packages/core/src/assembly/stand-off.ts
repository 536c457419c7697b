import type { FormedBend } from '../fold/formed.js';
import { type Prism, panelPrisms } from '../fold/prism.js';
import { shellDepth } from '../fold/shell.js';
import { HOME, scale3, type Vec3 } from '../fold/space.js';
import { type Standing, stand } from '../fold/stand.js';
import type { Site } from '../fold/tree.js';

/** A part where it stands, and its site of the joint. */
export type AtSite = readonly [part: Standing, site: Site];

/**
 * How far two parts have to stand off each other, mm, because bends that fold the faces of a site of either are in
 * the other's way: 0 when they lie flat. The guest moves along `normal`, off the host. Exact to 1e-9 by bisection
 * between flat and one inside radius.
 */
export function standOff([host, hostSite]: AtSite, [guest, guestSite]: AtSite, normal: Vec3): number {
  const [own, solids] = [siteBends(host, hostSite), solidsOf(host)];
  const most = [...own, ...siteBends(guest, guestSite)].reduce((r, b) => Math.max(r, b.insideRadius), 0);
  const clear = (out: number) => {
    const moved = stand(guest, { ...HOME, origin: scale3(normal, out) });
    return free(solidsOf(moved), own) && free(solids, siteBends(moved, guestSite));
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

function siteBends({ bends }: Standing, { faces }: Site): readonly FormedBend[] {
  return bends.filter((b) => faces.some((f) => f.panel === b.id));
}

const solidsOf = ({ panels, thickness }: Standing) => panels.flatMap((p) => panelPrisms(p, thickness));

/** True when none of the solids reaches into a bend. */
const free = (solids: readonly Prism[], bends: readonly FormedBend[]) =>
  solids.every((solid) => bends.every((b) => shellDepth(solid, b) < TOUCH));

const TOUCH = 1e-7; // mm; touching is clear
