import { lazy } from '../../units/lazy.js';
import { boxOfPieces } from './extent.js';
import type { Box3, FormedBend } from './formed.js';
import { boxDistance, type Prism, panelPrisms } from './prism.js';
import { overlapDepth } from './prism-overlap.js';
import { shellDepth, shellStrips } from './shell.js';
import type { Standing } from './stand.js';

/** A panel, or the bent material of a bend, with the box round it. mm */
export interface Lump extends Box3 {
  /** Of the panel; of the panel it folds for a bend. */
  readonly id: string;
  /** Set for a bend, whose true shape is round. */
  readonly bend: FormedBend | null;
  /** In flat-faced pieces; made when first asked for, since most lumps lie far from everything. */
  readonly prisms: () => readonly Prism[];
}

/** Panels, then bends, of a formed part. */
export function lumpsOf({ panels, bends, thickness }: Standing): readonly Lump[] {
  const flat = panels.map((panel): Lump => {
    const prisms = lazy(() => panelPrisms(panel, thickness));
    const { min, max } = boxOfPieces([panel], [], thickness);
    return { id: panel.id, bend: null, prisms, min, max };
  });
  const round = bends.map((bend): Lump => {
    const prisms = lazy(() => shellStrips(bend));
    const { min, max } = boxOfPieces([], [bend], thickness);
    return { id: bend.id, bend, prisms, min, max };
  });
  return [...flat, ...round];
}

/** How deep two lumps reach into each other, 0 when apart; a bend by its true round shape against a panel. mm */
export function lumpDepth(p: Lump, q: Lump): number {
  if (boxDistance(p, q) >= 0) return 0;
  if (p.bend !== null && q.bend === null) return ringDepth(q.prisms(), p.bend);
  if (q.bend !== null && p.bend === null) return ringDepth(p.prisms(), q.bend);
  let depth = 0;
  for (const u of p.prisms()) for (const v of q.prisms()) depth = Math.max(depth, overlapDepth(u, v));
  return depth;
}

const ringDepth = (solids: readonly Prism[], bend: FormedBend) =>
  solids.reduce((depth, solid) => Math.max(depth, shellDepth(solid, bend)), 0);
