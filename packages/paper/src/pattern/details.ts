import type { Box, FlatPattern, Point } from '@tinwright/core';
import { boxOf, distance } from '@tinwright/core/internal';
import { letterOf } from '@tinwright/files/internal';
import { type Features, groupsOf } from './features.js';

/** A crowded place of a pattern that is drawn again, larger. mm of the pattern */
export interface Detail {
  readonly letter: string;
  readonly region: Box;
  /** How many places of the pattern look like it, itself among them, mirrored ones too. */
  readonly alike: number;
}

const CROWDED = 2.5; // mm on the page between points that belong together
const HARD = 1.2; // mm on the page: nearer ones are hard to tell apart
const LEAST = 4; // points of a place worth drawing again
const LARGEST = 30; // mm on the page; a larger place is no detail
const WHITE = 0.35; // of its size, shown round it
const LEAST_WHITE = 2; // mm of the pattern

/** Places where a pattern drawn at this scale is too crowded to read; of those alike the one nearest the datum. */
export function detailsOf({ bends }: FlatPattern, { sides }: Features, scale: number): readonly Detail[] {
  const points = distinct([...sides.flatMap((s) => [s.from, s.to]), ...bends.flatMap((b) => b.line)]);
  const crowded = clusters(points, CROWDED / scale).filter(
    (c) => c.length >= LEAST && nearest(c) * scale < HARD && sizeOf(boxOf(c)) * scale <= LARGEST,
  );
  return groupsOf(crowded, signature)
    .map(([, alike]) => ({
      cluster: alike.toSorted((a, b) => fromDatum(a) - fromDatum(b))[0] as readonly Point[],
      alike: alike.length,
    }))
    .toSorted((a, b) => fromDatum(a.cluster) - fromDatum(b.cluster))
    .map(
      ({ cluster, alike }, i): Detail => ({
        letter: letterOf(i),
        region: regionOf(boxOf(cluster)),
        alike,
      }),
    );
}

function distinct(points: readonly Point[]): readonly Point[] {
  return [...new Map(points.map((p) => [`${p[0].toFixed(6)} ${p[1].toFixed(6)}`, p])).values()];
}

/** Points joined by steps of at most `reach`. */
function clusters(points: readonly Point[], reach: number): readonly (readonly Point[])[] {
  const found: Point[][] = [];
  for (const p of points) {
    const touching = found.filter((c) => c.some((q) => distance(p, q) <= reach));
    for (const c of touching) found.splice(found.indexOf(c), 1);
    found.push([...touching.flat(), p]);
  }
  return found;
}

const nearest = (c: readonly Point[]): number =>
  Math.min(...c.flatMap((p, i) => c.slice(i + 1).map((q) => distance(p, q))));

const sizeOf = ({ min, max }: Box): number => Math.max(max[0] - min[0], max[1] - min[1]);

const fromDatum = (c: readonly Point[]): number => Math.hypot(...boxOf(c).min);

function regionOf({ min, max }: Box): Box {
  const white = Math.max(LEAST_WHITE, WHITE * sizeOf({ min, max }));
  return { min: [min[0] - white, min[1] - white], max: [max[0] + white, max[1] + white] };
}

/** The same for places that can be laid on each other, mirrored or turned. */
function signature(c: readonly Point[]): string {
  const n = c.length;
  const middle: Point = [c.reduce((s, p) => s + p[0], 0) / n, c.reduce((s, p) => s + p[1], 0) / n];
  return c
    .map((p) => distance(p, middle).toFixed(2))
    .toSorted()
    .join();
}
