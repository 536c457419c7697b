import type { Point } from '@tinwright/core';
import type { Share } from './hides.js';
import { pierced } from './pierced.js';
import { screens } from './screens.js';
import { anew, type Facet, type Surface, type SurfaceLine } from './surface.js';
import { faces, type Seen, see, type View } from './view.js';

/** A stretch of a line that nothing stands in front of, on the page. */
export interface VisibleLine {
  readonly from: Point;
  readonly to: Point;
  readonly kind: SurfaceLine['kind'];
}

const SHORT = 1e-4; // mm; shorter stretches are rounding

/**
 * Lines of a surface less what its facets hide, each drawn once. Exact: every line is cut by every facet's outline on
 * the page and by where it dips behind the facet's plane; nothing is painted over.
 */
export function visibleLines({ facets, lines }: Surface, view: View): readonly VisibleLine[] {
  return visibleBehind(facets, view)(lines);
}

/** The same for any lines behind the same facets, which are made ready once. */
export function visibleBehind(
  facets: Iterable<Facet>,
  view: View,
): (lines: Iterable<SurfaceLine>) => readonly VisibleLine[] {
  const facing = (holed: boolean) =>
    anew(function* () {
      for (const f of facets) if ((f.holes !== undefined) === holed && faces(view, f.normal)) yield f;
    });
  const hides = [screens(facing(false), view), ...[...facing(true)].map((f) => pierced(f, view))];
  return (lines) => {
    const drawn = new Set<string>();
    const found: VisibleLine[] = [];
    for (const { from, to, kind } of lines) {
      const [p, q] = [see(view, from), see(view, to)];
      const length = Math.hypot(q.at[0] - p.at[0], q.at[1] - p.at[1]);
      if (length < SHORT) continue;
      const hidden: Share[] = [];
      for (const hide of hides) hide(p, q, (span) => void hidden.push(span));
      for (const [s, t] of gaps(hidden)) {
        if ((t - s) * length <= SHORT) continue;
        const line = { from: along(p, q, s), to: along(p, q, t), kind };
        const name = nameOf(line);
        if (drawn.has(name)) continue;
        drawn.add(name);
        found.push(line);
      }
    }
    return found;
  };
}

/** The same for lines that are seen as one, such as the upper and the lower rim of a hole from above. */
function nameOf({ from, to, kind }: VisibleLine): string {
  const ends = [from, to].map((p) => p.map((v) => Math.round(v / SHORT)).join(' '));
  return `${kind} ${ends.toSorted().join(' ')}`;
}

const along = (p: Seen, q: Seen, t: number): Point => [
  p.at[0] + (q.at[0] - p.at[0]) * t,
  p.at[1] + (q.at[1] - p.at[1]) * t,
];

function gaps(hidden: readonly Share[]): readonly Share[] {
  const found: Share[] = [];
  let from = 0;
  for (const [a, b] of hidden.toSorted((u, v) => u[0] - v[0])) {
    if (a > from) found.push([from, a]);
    from = Math.max(from, b);
  }
  if (from < 1) found.push([from, 1]);
  return found;
}
