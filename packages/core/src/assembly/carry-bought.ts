import { distance } from '../plane/point.js';
import { doubtRemark } from './doubt.js';
import type { Fastened } from './fasten.js';
import { type Fastener, MEET } from './fastener.js';
import type { Placed } from './types.js';

/**
 * Bought parts with their holes in parts that are made where they were cut. A hinge stands where edges meet, so that it
 * may lie off holes of a part that was measured: told by how much.
 * @param cut fasteners as they were when the made parts were cut
 */
export function asCut(
  fitted: readonly Fastened[],
  cut: readonly Fastener[],
  placed: readonly Placed[],
): readonly Fastened[] {
  const made = new Set(placed.filter((p) => p.part.made).map((p) => p.piece));
  if (made.size === 0) return fitted;
  return fitted.map((row) => {
    const was = cut.filter((f) => f.joint === row.joint);
    const held = new Map<string, number>(); // pieces, and how far off their holes lie
    const fasteners = row.fasteners.map((f, i): Fastener => {
      const on = f.on.map((end, k) => {
        const own = was[i]?.on[k];
        if (own?.piece !== end.piece || own.panel !== end.panel || !made.has(end.piece)) return end;
        held.set(end.piece, Math.max(held.get(end.piece) ?? 0, distance(own.at, end.at)));
        return own;
      });
      return { ...f, on };
    });
    const off = [...held].filter(([, doubt]) => doubt > MEET);
    const doubt = Math.max(0, ...off.map(([, d]) => d));
    const told =
      off.length === 0
        ? []
        : [
            doubtRemark(
              off.map(([piece]) => piece),
              doubt,
            ),
          ];
    return { ...row, fasteners, remarks: [...row.remarks, ...told] };
  });
}
