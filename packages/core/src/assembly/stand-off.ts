import { add3, scale3, type Vec3 } from '../fold/draft/space.js';
import type { Site } from '../fold/draft/tree.js';
import { boxOfPieces } from '../fold/formed/extent.js';
import type { FormedBend } from '../fold/formed/formed.js';
import { boxDistance, type Prism, panelPrisms } from '../fold/formed/prism.js';
import { shellDepth } from '../fold/formed/shell.js';
import type { Standing } from '../fold/formed/stand.js';

/** A part where it stands, and its site of the joint. */
export type AtSite = readonly [part: Standing, site: Site];

/**
 * How far two parts have to stand off each other, mm, because bends that fold the faces of a site of either are in
 * the other's way: 0 when they lie flat. The guest moves along `normal`, off the host. Exact to 1e-9 by bisection
 * between flat and one inside radius.
 */
export function standOff([host, hostSite]: AtSite, [guest, guestSite]: AtSite, normal: Vec3): number {
  const [own, theirs] = [siteBends(host, hostSite), siteBends(guest, guestSite)];
  const most = [...own, ...theirs].reduce((r, b) => Math.max(r, b.insideRadius), 0);
  if (most === 0) return 0;
  const [solids, guests] = [solidsNear(host, theirs, most), solidsNear(guest, own, most)];
  // the guest moves out: its bends do, and seen from it the host's go the other way
  const clear = (out: number) =>
    free(solids, moved(theirs, scale3(normal, out))) && free(guests, moved(own, scale3(normal, -out)));
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

/** The flat pieces of a part that one of these bends can come near, moved by `most`. */
function solidsNear(
  { panels, thickness }: Standing,
  bends: readonly FormedBend[],
  most: number,
): readonly Prism[] {
  const boxes = bends.map((b) => boxOfPieces([], [b], thickness));
  return panels
    .filter((p) => {
      const box = boxOfPieces([p], [], thickness);
      return boxes.some((b) => boxDistance(b, box) <= most);
    })
    .flatMap((p) => panelPrisms(p, thickness));
}

const moved = (bends: readonly FormedBend[], by: Vec3): readonly FormedBend[] =>
  bends.map((b) => ({ ...b, frame: { ...b.frame, origin: add3(b.frame.origin, by) } }));

/** True when none of the solids reaches into a bend. */
const free = (solids: readonly Prism[], bends: readonly FormedBend[]) =>
  solids.every((solid) => bends.every((b) => shellDepth(solid, b) < TOUCH));

const TOUCH = 1e-7; // mm; touching is clear
