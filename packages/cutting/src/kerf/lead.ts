import { isArc, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import { bulgeAround, segmentLength } from '@tinwright/core/internal';
import type { CutStyle } from './contour.js';
import { heading, middleOf } from './run.js';

/** A place to begin a cut. */
export interface Start {
  readonly loop: Loop;
  readonly leadIn: Segment | null;
  readonly leadOut: Segment | null;
  /** Length of the way in, mm; 0 without. */
  readonly length: number;
}

/** Shares of the length that are tried. */
const SHARES = [1, 0.6, 0.35] as const;

/** Parts of the length a way out has: too long, it drops the part and stretches the arc (a course's slides). */
const OUT = 1 / 3;

/**
 * Begin a directed cut in the middle of its longest straight side where a way in has room on the scrap, which lies to
 * the left of an outline run clockwise and of a hole run counter-clockwise. @param free may the torch pass there?
 */
export function startOf(loop: Loop, style: CutStyle, free: (p: Point) => boolean): Start {
  const plain: Start = { loop, leadIn: null, leadOut: null, length: 0 };
  if (style.lead === 'none') return plain;
  const sides = segments(loop).map((side, i) => ({ side, i, length: segmentLength(side) }));
  const order = sides.toSorted(
    (a, b) => Number(isArc(a.side)) - Number(isArc(b.side)) || b.length - a.length,
  );
  for (const share of SHARES)
    for (const { side, i } of order) {
      const length = style.leadLength * share;
      const at = middleOf(side);
      const way = wayAt(side, at);
      const into = way && leadIn(at, way, length, style.lead);
      if (into === null || ![into.from, middleOf(into)].every(free)) continue;
      const out = leadOut(at, way, length * OUT);
      return { loop: begunAt(loop, i, at), leadIn: into, leadOut: free(out.to) ? out : null, length };
    }
  return plain;
}

interface Way {
  /** Direction of travel, length 1, and to its left. */
  readonly along: Point;
  readonly left: Point;
}

function wayAt(side: Segment, at: Point): Way {
  const [x, y] = isArc(side)
    ? heading({ ...side, from: at, bulge: Math.tan(Math.atan(side.bulge) / 2) }, 'start')
    : heading(side, 'start');
  return { along: [x, y], left: [-y, x] };
}

function leadIn([x, y]: Point, { along, left }: Way, length: number, kind: 'line' | 'arc'): Segment {
  const on = (u: number, v: number): Point => [
    x + u * along[0] + v * left[0],
    y + u * along[1] + v * left[1],
  ];
  if (kind === 'line') return { from: on(0, length), to: [x, y], bulge: 0 };
  const radius = (2 * length) / Math.PI; // a quarter round as long as the line
  const from = on(-radius, radius);
  return { from, to: [x, y], bulge: bulgeAround(on(0, radius), from, [x, y], 'ccw') };
}

function leadOut([x, y]: Point, { along, left }: Way, length: number): Segment {
  const k = length / Math.SQRT2;
  return { from: [x, y], to: [x + k * (along[0] + left[0]), y + k * (along[1] + left[1])], bulge: 0 };
}

/** The same loop begun at a point of one of its sides. */
function begunAt(loop: Loop, side: number, at: Point): Loop {
  const n = loop.length;
  const bulge = loop[side]?.bulge ?? 0;
  const half = bulge === 0 ? 0 : Math.tan(Math.atan(bulge) / 2);
  const rest = Array.from({ length: n - 1 }, (_, k) => loop[(side + 1 + k) % n] as Loop[number]);
  return [{ at, bulge: half }, ...rest, { at: (loop[side] as Loop[number]).at, bulge: half }];
}
