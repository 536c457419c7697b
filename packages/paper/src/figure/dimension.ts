import type { Point } from '@tinwright/core';
import { BELOW } from '../page/box.js';
import { letter } from '../page/letter.js';
import type { Item } from '../page/page.js';
import type { Typeface } from '../page/typeface.js';

const ARROW = 1.8; // mm
const PAST = 1; // mm an extension line goes past its dimension line
const GAP = 0.8; // mm between the object and an extension line
const OFF = 0.6; // mm from the dimension line to its text

/** A distance to dimension on a page: along x (axis 0) or y (axis 1), its line `off` mm beyond `edge`. */
export interface Span {
  readonly axis: 0 | 1;
  readonly from: number;
  readonly to: number;
  readonly edge: number;
  /** Below or left of the object where negative. mm */
  readonly off: number;
  readonly text: string;
  readonly value: number;
  /** Where the text goes that does not fit between the arrows: before `from` or after `to`. */
  readonly beside?: 'before' | 'after';
}

/** A dimension line with arrowheads, extension lines and its text above it (ISO 129-1); a short one has both outside. */
export function dimension(span: Span, face: Typeface, height: number): readonly Item[] {
  const { axis, from, to, edge, off, text, value, beside = 'after' } = span;
  const at = (along: number, across: number): Point => (axis === 0 ? [along, across] : [across, along]);
  const out = Math.sign(off);
  const line = edge + off;
  const extension = (v: number): Item => ({
    kind: 'stroke',
    pen: 'narrow',
    points: [at(v, edge + out * GAP), at(v, line + out * PAST)],
  });
  const width = height * face.width(text, 'regular');
  const room = to - from;
  const short = room < Math.max(width, 3 * ARROW) + 1;
  const arrow = (tip: number, heading: 1 | -1): Item => ({
    kind: 'fill',
    points: [at(tip, line), at(tip + heading * ARROW, line + 0.3), at(tip + heading * ARROW, line - 0.3)],
  });
  const tail = (side: 'before' | 'after') => (short ? 2 * ARROW + (beside === side ? width : 0) : 0);
  const ends = [at(from - tail('before'), line), at(to + tail('after'), line)];
  const aside = 1.5 * ARROW + width / 2;
  const middle = !short ? (from + to) / 2 : beside === 'after' ? to + aside : from - aside;
  // above a level line, left of an upright one
  const base = axis === 0 ? line + OFF + BELOW * height : line - OFF - BELOW * height;
  return [
    extension(from),
    extension(to),
    { kind: 'stroke', pen: 'narrow', points: ends },
    arrow(from, short ? -1 : 1),
    arrow(to, short ? 1 : -1),
    letter(face, text, at(middle, base), { height, align: 'middle', turn: axis === 0 ? 0 : 90, value }),
  ];
}
