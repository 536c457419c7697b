import type { Box, Point } from '@tinwright/core';
import { spread } from '../figure/spread.js';
import { letter } from '../page/letter.js';
import type { Item } from '../page/page.js';
import type { Typeface } from '../page/typeface.js';
import type { Ordinate } from './ordinates.js';

const OFF = 0.8; // mm from the feature to its extension line
const CLEAR = 2; // mm from the pattern to where lines may turn
const TAIL = 1.5; // mm of straight line before the text
const GAP = 1; // mm between line and text
const PITCH = 1.45; // between texts, over their height: 0.3 below the base line and a little white
const STEEP = 0.7; // rise of a slanted piece over its run, where there is room
const MOST = 14; // mm a slanted piece may take up

/** Ordinate lines with their texts round a box of a pattern drawn at `scale`, its lower left corner at the origin. mm of the page */
export function ordinateLines(
  ordinates: readonly Ordinate[],
  { min, max }: Box,
  scale: number,
  face: Typeface,
  height: number,
): readonly Item[] {
  return ([0, 1] as const).flatMap((axis) =>
    (['low', 'high'] as const).flatMap((side) => {
      const own = ordinates.filter((o) => o.axis === axis && o.side === side);
      const other = axis === 0 ? 1 : 0;
      const far = side === 'low' ? 0 : (max[other] - min[other]) * scale;
      const on = ({ value, from }: Ordinate): Spot => ({
        along: (value - min[axis]) * scale,
        start: (from[other] - min[other]) * scale,
      });
      const length = (max[axis] - min[axis]) * scale;
      return own.length === 0 ? [] : band(own, own.map(on), { axis, side, far, length }, face, height);
    }),
  );
}

/** Where an ordinate's line starts on the page: along its axis, and across it. mm */
interface Spot {
  readonly along: number;
  readonly start: number;
}

/** Where texts stand in a row: beside one side of the pattern, `far` from its datum and as long as it is. mm of the page */
interface Row extends Pick<Ordinate, 'axis' | 'side'> {
  readonly far: number;
  readonly length: number;
}

function band(
  own: readonly Ordinate[],
  spots: readonly Spot[],
  { axis, side, far, length }: Row,
  face: Typeface,
  height: number,
): readonly Item[] {
  const out = side === 'low' ? -1 : 1;
  const wanted = spots.map((s) => s.along);
  // past the end of its side a row would run into the next side's
  const places = spread(wanted, PITCH * height, 0, length);
  const moves = places.map((p, i) => Math.abs(p - (wanted[i] as number)));
  const slant = Math.min(MOST, Math.max(1, STEEP * Math.max(...moves)));
  const at = (along: number, off: number): Point => (axis === 0 ? [along, off] : [off, along]);
  const turn = far + out * CLEAR;
  const straight = turn + out * slant;
  const end = straight + out * TAIL;
  return own.flatMap((o, i): readonly Item[] => {
    const [w, p] = [wanted[i] as number, places[i] as number];
    const start = (spots[i] as Spot).start + out * OFF;
    const points = [at(w, start), at(w, turn), at(p, straight), at(p, end)];
    // the middle of figures without tails lies half a height over the base line
    const base: Point = axis === 0 ? [p + height / 2, end + out * GAP] : [end + out * GAP, p - height / 2];
    const ends = side === 'low' ? 'end' : 'start';
    const words = letter(face, o.text, base, {
      height,
      align: ends,
      turn: axis === 0 ? 90 : 0,
      value: o.value,
    });
    return [{ kind: 'stroke', pen: 'narrow', points: straightened(points) }, words];
  });
}

/** Without points in the middle of a straight line. */
function straightened(points: readonly Point[]): readonly Point[] {
  return points.filter((p, i) => {
    const [a, b] = [points[i - 1], points[i + 1]];
    if (a === undefined || b === undefined) return true;
    return Math.abs((p[0] - a[0]) * (b[1] - p[1]) - (p[1] - a[1]) * (b[0] - p[0])) > 1e-9;
  });
}
