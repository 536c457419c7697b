import type { Point } from '@tinwright/core';
import { linesCross } from '@tinwright/core/internal';
import type { Shape } from '../drawing.js';

/** Something to letter: a point on it, on the page. */
export interface Lettered {
  readonly letter: string;
  readonly anchor: Point;
}

const TEXT = 3; // mm, height of the letters
const OUT = 12; // mm from the picture to the letters

/**
 * Letters round a picture with leader lines to their anchors. No two leaders cross: two that do exchange their
 * places, which makes both shorter, until none does.
 */
export function letters(
  things: readonly Lettered[],
  box: { readonly min: Point; readonly max: Point },
): { readonly leaders: readonly Shape[]; readonly texts: readonly Shape[] } {
  const places = [...placesFor(things, box)];
  for (let again = true; again; ) {
    again = false;
    for (let i = 0; i < things.length; i++)
      for (let j = i + 1; j < things.length; j++) {
        const [a, b] = [(things[i] as Lettered).anchor, (things[j] as Lettered).anchor];
        const [p, q] = [places[i] as Point, places[j] as Point];
        if (!linesCross(a, p, b, q)) continue;
        [places[i], places[j]] = [q, p];
        again = true;
      }
  }
  return {
    leaders: things.map(({ anchor }, i): Shape => ({ kind: 'line', from: anchor, to: places[i] as Point })),
    texts: things.map(({ letter }, i): Shape => {
      const [x, y] = places[i] as Point;
      const left = x < (box.min[0] + box.max[0]) / 2;
      return {
        kind: 'text',
        at: [x + (left ? -TEXT : TEXT), y - TEXT / 2],
        height: TEXT,
        text: letter,
        centred: true,
      };
    }),
  };
}

/** Left and right of the picture, half the things each by where they lie, evenly from bottom to top. */
function placesFor(
  things: readonly Lettered[],
  { min, max }: { readonly min: Point; readonly max: Point },
): readonly Point[] {
  const byX = things
    .map((_, i) => i)
    .toSorted((a, b) => anchorOf(things, a)[0] - anchorOf(things, b)[0] || a - b);
  const places: Point[] = [];
  const half = Math.ceil(things.length / 2);
  [byX.slice(0, half), byX.slice(half)].forEach((side, k) => {
    const x = k === 0 ? min[0] - OUT : max[0] + OUT;
    const sorted = side.toSorted((a, b) => anchorOf(things, a)[1] - anchorOf(things, b)[1] || a - b);
    sorted.forEach((thing, i) => {
      places[thing] = [x, min[1] + ((max[1] - min[1]) * (i + 0.5)) / sorted.length];
    });
  });
  return places;
}

const anchorOf = (things: readonly Lettered[], i: number): Point => (things[i] as Lettered).anchor;
