import type { Point } from '@tinwright/core';
import type { EdgePair } from './facing.js';

/** Moves of a body across an edge, mm, that are tried in one direction. */
const MOST = 10;

/** A line that a body has to be moved onto: by so much along a direction of length 1. */
interface Wanted {
  readonly towards: Point;
  readonly by: number;
}

/**
 * Moves that bring an edge of a body a kerf from one that faces it: straight across, with the ends of both level, or so
 * that a second pair of edges, of another direction, meets as well. @param far the longest move, mm
 */
export function movesTo(pairs: readonly EdgePair[], kerf: number, far: number): readonly Point[] {
  const wanted = pairs
    .filter(
      ({ gap, begin, end, own }) => Math.abs(gap - kerf) <= far && end > -far && begin < own.length + far,
    )
    .map(
      ({
        own: {
          along: [ux, uy],
        },
        gap,
      }): Wanted => ({ towards: [uy, -ux], by: gap - kerf }),
    );
  const across = nearest(wanted);
  const level = pairs
    .filter(({ gap }) => Math.abs(gap - kerf) <= far)
    .flatMap(({ own, gap, begin, end }) =>
      [begin, end - own.length]
        .filter((by) => Math.abs(by) <= far)
        .map((by) =>
          both({ towards: [own.along[1], -own.along[0]], by: gap - kerf }, { towards: own.along, by }),
        ),
    );
  const twice = across.flatMap((a, i) => across.slice(i + 1).map((b) => both(a, b)));
  const straight = across.map(({ towards: [x, y], by }): Point => [x * by, y * by]);
  return shortest(
    [...straight, ...level, ...twice].filter(
      (m): m is Point => m !== undefined && Math.abs(m[0]) <= far && Math.abs(m[1]) <= far,
    ),
  );
}

/** Moves that are tried at all. */
const MOST_MOVES = 200;

/** The shortest moves, none twice. */
function shortest(moves: readonly Point[]): readonly Point[] {
  const far = ([x, y]: Point) => x * x + y * y;
  const known = new Map(moves.map((m) => [`${Math.round(m[0] * 1e6)} ${Math.round(m[1] * 1e6)}`, m]));
  return [...known.values()].sort((a, b) => far(a) - far(b)).slice(0, MOST_MOVES);
}

/** The shortest ones of each direction, none twice. */
function nearest(wanted: readonly Wanted[]): readonly Wanted[] {
  const known = new Map<string, Map<number, Wanted>>();
  for (const w of wanted) {
    const key = w.towards.map((v) => Math.round(v * 1e6)).join(' ');
    const same = known.get(key) ?? new Map<number, Wanted>();
    known.set(key, same.set(Math.round(w.by * 1e6), w));
  }
  return [...known.values()].flatMap((same) =>
    [...same.values()].sort((a, b) => Math.abs(a.by) - Math.abs(b.by)).slice(0, MOST),
  );
}

/** The move that does both; undefined for parallel directions. */
function both(a: Wanted, b: Wanted): Point | undefined {
  const det = a.towards[0] * b.towards[1] - a.towards[1] * b.towards[0];
  if (Math.abs(det) < 1e-6) return undefined;
  return [
    (a.by * b.towards[1] - b.by * a.towards[1]) / det,
    (b.by * a.towards[0] - a.by * b.towards[0]) / det,
  ];
}
