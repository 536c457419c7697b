import type { Formed } from '@tinwright/core';
import { partSurface, type View, type VisibleLine, visibleLines } from '@tinwright/files/internal';

/** The visible lines of a part from one side, without holes too small to see at a scale. mm, true size */
export type FormedViews = (view: View, scale: number) => readonly VisibleLine[];

const LEAST_HOLE = 0.8; // mm on the page

/** Views of a part, each made once for all scales that show the same holes. */
export function formedViews(formed: Formed): FormedViews {
  const known = new Map<View, Map<number, readonly VisibleLine[]>>();
  return (view, scale) => {
    const panels = formed.panels.map((p) => ({
      ...p,
      holes: p.holes.filter((h) => h.diameter * scale >= LEAST_HOLE),
    }));
    const count = panels.reduce((sum, p) => sum + p.holes.length, 0); // larger ones first: as many are the same ones
    const kept = known.get(view) ?? new Map<number, readonly VisibleLine[]>();
    const lines = kept.get(count) ?? visibleLines(partSurface({ ...formed, panels }, view), view);
    known.set(view, kept.set(count, lines));
    return lines;
  };
}
