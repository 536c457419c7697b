import type { Assembly, Placed, Point, Vec3 } from '@tinwright/core';
import { add3 } from '@tinwright/core/internal';
import type { Drawing, Shape } from '../drawing.js';
import { letterOf } from '../letter-of.js';
import { explode } from '../picture/explode.js';
import { letters } from '../picture/letters.js';
import { lineLayers, pageOf, scaledTo } from '../picture/page.js';
import { partSurface } from '../picture/part-surface.js';
import { join } from '../picture/surface.js';
import { ISOMETRIC } from '../picture/view.js';
import { type VisibleLine, visibleLines } from '../picture/visible.js';
import { marksByPanel } from './picture.js';

const PAGE = 150; // mm, the longer side of the object
const EXPLODED = 0.3; // of the object's size, how far pieces move apart
const LEGEND = 2.8; // mm, height of the legend's letters

/** Whether what the letters stand for is written under a picture. */
export type Legend = 'with legend' | 'letters only';

/** Isometric picture of the assembled object, hidden lines removed, every piece lettered. */
export function assemblyPicture(title: string, assembly: Assembly, legend: Legend = 'with legend'): Drawing {
  return lettered(title, [...assembly.placed, ...assembly.bought], legend);
}

/** The same taken apart along the joints. */
export function explodedPicture(title: string, assembly: Assembly, legend: Legend = 'with legend'): Drawing {
  const size = Math.max(...assembly.placed.flatMap(({ part }) => part.formed.size));
  const moves = explode(assembly, EXPLODED * size);
  const moved = (p: Placed, host: Placed): Placed => {
    const by = moves.get(host.piece) ?? ([0, 0, 0] as Vec3);
    return { ...p, pose: { ...p.pose, origin: add3(p.pose.origin, by) } };
  };
  const bought = assembly.bought.map((b) => moved(b, b.holds[0] ?? b));
  return lettered(title, [...assembly.placed.map((p) => moved(p, p)), ...bought], legend);
}

function lettered(title: string, placed: readonly Placed[], asked: Legend): Drawing {
  const surfaces = placed.map(({ part, pose }) =>
    partSurface(part.formed, ISOMETRIC, pose, marksByPanel(part)),
  );
  const { facets } = join(surfaces);
  // each piece is drawn by itself, hidden by all, so that its own lines are known
  const seen = surfaces.map((s) => visibleLines({ facets, lines: s.lines }, ISOMETRIC));
  const { lines } = scaledTo(seen.flat(), PAGE);
  let start = 0;
  const own = seen.map((s) => {
    start += s.length;
    return lines.slice(start - s.length, start);
  });
  const points = lines.flatMap((l) => [l.from, l.to]);
  const box = boxOf(points);
  const things = placed.flatMap((_, i) => {
    const anchor = anchorOf(own[i] ?? []);
    return anchor === null ? [] : [{ letter: letterOf(i), anchor }];
  });
  const { leaders, texts } = letters(things, box);
  const legend = (asked === 'with legend' ? placed : []).map(
    ({ piece }, i): Shape => ({
      kind: 'text',
      at: [box.min[0], box.min[1] - 8 - 1.8 * LEGEND * (i + 1)],
      height: LEGEND,
      text: `${letterOf(i)}  ${piece}`,
    }),
  );
  return pageOf(title, [
    ...lineLayers(lines),
    { name: 'LEADER', shapes: leaders },
    { name: 'LABEL', shapes: [...texts, ...legend] },
  ]);
}

function boxOf(points: readonly Point[]): { readonly min: Point; readonly max: Point } {
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return { min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] };
}

/** Middle of the longest line that shows; null for a piece that is hidden altogether. */
function anchorOf(lines: readonly VisibleLine[]): Point | null {
  const length = (l: VisibleLine) => Math.hypot(l.to[0] - l.from[0], l.to[1] - l.from[1]);
  const longest = lines.reduce<VisibleLine | null>(
    (a, b) => (a === null || length(b) > length(a) + 1e-6 ? b : a),
    null,
  );
  return longest === null
    ? null
    : [(longest.from[0] + longest.to[0]) / 2, (longest.from[1] + longest.to[1]) / 2];
}
