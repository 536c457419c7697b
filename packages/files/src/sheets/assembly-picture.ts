import type { Assembly, Placed, Point, Vec3 } from '@tinwright/core';
import { add3, boxOf, distance, distanceToSegment } from '@tinwright/core/internal';
import type { Drawing, Shape } from '../drawing.js';
import { letterOf } from '../letter-of.js';
import { boxesNear } from '../picture/boxes-near.js';
import { explode } from '../picture/explode.js';
import { letters } from '../picture/letters.js';
import { lineLayers, pageOf, scaledTo } from '../picture/page.js';
import { partSurface } from '../picture/part-surface.js';
import { anew } from '../picture/surface.js';
import { ISOMETRIC } from '../picture/view.js';
import { type VisibleLine, visibleBehind } from '../picture/visible.js';
import { marksByPanel } from './picture.js';

const PAGE = 150; // mm, the longer side of the object
const EXPLODED = 0.3; // of the object's size, how far pieces move apart
const MOST_TRIED = 30; // lines of a piece, the longest first
const CLEAR = 2; // mm between the end of a leader and what is another piece's
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
  const seen = seenOf(placed);
  const { lines } = scaledTo(seen.flat(), PAGE);
  let start = 0;
  const own = seen.map((s) => {
    start += s.length;
    return lines.slice(start - s.length, start);
  });
  const points = lines.flatMap((l) => [l.from, l.to]);
  const box = boxOf(points);
  const clear = clearOf(own);
  const things = own.flatMap((drawn, i) => {
    const anchor = anchorOf(drawn, (at) => clear(at, i));
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

/** What shows of each piece, drawn by itself and hidden by all; what hides is let go before they are lettered. */
function seenOf(placed: readonly Placed[]): readonly (readonly VisibleLine[])[] {
  // made twice rather than kept: of hundreds of pieces they take more room than all else
  const surfaceOf = ({ part, pose }: Placed) => partSurface(part.formed, ISOMETRIC, pose, marksByPanel(part));
  const facets = anew(function* () {
    for (const p of placed) yield* surfaceOf(p).facets;
  });
  const visible = visibleBehind(facets, ISOMETRIC);
  return placed.map((p) => visible(surfaceOf(p).lines));
}

/**
 * Middle of the longest line that shows and lies clear of other pieces, of the clearest where none does: where two meet
 * it could be either's. Null for a piece that is hidden altogether.
 */
function anchorOf(lines: readonly VisibleLine[], clear: (at: Point) => number): Point | null {
  const length = (l: VisibleLine) => distance(l.from, l.to);
  const longest = lines.toSorted((a, b) => length(b) - length(a)).slice(0, MOST_TRIED);
  const seen = longest.map(({ from, to }) => {
    const at: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    return { at, clear: clear(at) };
  });
  const best = seen.toSorted((a, b) => b.clear - a.clear)[0]; // the longest of equals
  return best?.at ?? null;
}

/** How far a point lies from what is drawn of other pieces than its own, mm; further than needed counts as that. */
function clearOf(drawn: readonly (readonly VisibleLine[])[]): (at: Point, own: number) => number {
  const lines = drawn.flat();
  const owners = drawn.flatMap((of, piece) => of.map(() => piece));
  const boxes = new Float64Array(4 * lines.length);
  for (const [i, { from, to }] of lines.entries()) {
    const { min, max } = boxOf([from, to]);
    boxes.set([...min, ...max], 4 * i);
  }
  const near = boxesNear(boxes);
  return (at, own) => {
    let least = CLEAR;
    near([at[0] - CLEAR, at[1] - CLEAR, at[0] + CLEAR, at[1] + CLEAR], (i) => {
      const { from, to } = lines[i] as VisibleLine;
      if (owners[i] !== own) least = Math.min(least, distanceToSegment(at, { from, to, bulge: 0 }));
    });
    return least;
  };
}
