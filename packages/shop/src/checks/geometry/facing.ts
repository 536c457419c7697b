import { isArc, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import { arcOf, closest, distance } from '@tinwright/core/internal';

/** Two lines or arcs that face each other. mm */
export interface FacingFace {
  /** With metal between them, or with nothing. */
  readonly across: 'metal' | 'gap';
  readonly width: number;
  /** How far they run beside each other. */
  readonly length: number;
  /** Middle of the narrowest place. */
  readonly at: Point;
}

/** Two edges of an outline that face each other. mm */
export interface Facing extends FacingFace {
  /** Length of the outline from the one to the other, either way round. */
  readonly round: readonly [number, number];
}

const SQUARE = Math.cos((15 * Math.PI) / 180); // sides that open by more than 15° each make a V, not a slot

/**
 * Pairs of edges of a counter-clockwise outline that face each other less than `within` apart, or less than `ratio`
 * of the length they run beside each other. Edges that share a corner do not count. Exact for lines and arcs.
 */
export function facing(outline: Loop, within: number, ratio: number): readonly Facing[] {
  const all = segments(outline).map(boxed);
  return all.flatMap((a, i) =>
    all.slice(i + 2).flatMap((b, k): readonly Facing[] => {
      const j = i + 2 + k;
      if (i === 0 && j === all.length - 1) return [];
      const reach = Math.max(within, ratio * Math.min(a.length, b.length));
      if (apart(a, b) >= reach) return [];
      const found = faceToFace(a.segment, b.segment);
      if (found === null || found.width >= Math.max(within, ratio * found.length)) return [];
      const round = [way(all.slice(i + 1, j)), way([...all.slice(j + 1), ...all.slice(0, i)])] as const;
      return [{ ...found, round }];
    }),
  );
}

const way = (list: readonly Boxed[]): number => list.reduce((s, b) => s + b.length, 0);

interface Boxed {
  readonly segment: Segment;
  readonly length: number;
  readonly min: Point;
  readonly max: Point;
}

function boxed(segment: Segment): Boxed {
  const { from, to } = segment;
  // an arc stays within its chord and half its chord times its bulge
  const room = (Math.abs(segment.bulge) * distance(from, to)) / 2;
  return {
    segment,
    length: distance(from, to),
    min: [Math.min(from[0], to[0]) - room, Math.min(from[1], to[1]) - room],
    max: [Math.max(from[0], to[0]) + room, Math.max(from[1], to[1]) + room],
  };
}

/** At most the distance between two lines or arcs: a quick look before the exact one. mm */
export const boxesApart = (a: Segment, b: Segment): number => apart(boxed(a), boxed(b));

/** At most the distance between what two boxes hold. */
const apart = (a: Boxed, b: Boxed): number =>
  Math.max(a.min[0] - b.max[0], b.min[0] - a.max[0], a.min[1] - b.max[1], b.min[1] - a.max[1]);

/** How two edges of counter-clockwise outlines face each other; null where they do not. */
export function faceToFace(a: Segment, b: Segment): FacingFace | null {
  const { from, to, distance: width } = besideEachOther(a, b) ?? closest(a, b);
  if (width < 1e-9) return null;
  const way: Point = [(to[0] - from[0]) / width, (to[1] - from[1]) / width];
  const [out, back] = [dot(outward(a, from), way), -dot(outward(b, to), way)];
  const across = out > SQUARE && back > SQUARE ? 'gap' : out < -SQUARE && back < -SQUARE ? 'metal' : null;
  if (across === null) return null;
  const [low, high] = overlap(a, b, [-way[1], way[0]]);
  const at: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  return { across, width, length: Math.max(0, high - low), at };
}

/** Parallel lines are as near all along: the middle of where they lie beside each other. */
function besideEachOther(a: Segment, b: Segment) {
  if (isArc(a) || isArc(b)) return null;
  const along = unit([a.to[0] - a.from[0], a.to[1] - a.from[1]]);
  const other = unit([b.to[0] - b.from[0], b.to[1] - b.from[1]]);
  const across: Point = [-along[1], along[0]];
  if (Math.abs(dot(across, other)) > 1e-9) return null;
  const [low, high] = overlap(a, b, along);
  if (high <= low) return null;
  const middle = (low + high) / 2;
  const on = (s: Segment): Point => {
    const h = dot(s.from, across);
    return [along[0] * middle + across[0] * h, along[1] * middle + across[1] * h];
  };
  const [from, to] = [on(a), on(b)];
  return { from, to, distance: distance(from, to) };
}

/** The stretch that both cover along a direction. */
function overlap(a: Segment, b: Segment, along: Point): readonly [number, number] {
  const span = ({ from, to }: Segment) => [dot(from, along), dot(to, along)] as const;
  const [[a0, a1], [b0, b1]] = [span(a), span(b)];
  return [Math.max(Math.min(a0, a1), Math.min(b0, b1)), Math.min(Math.max(a0, a1), Math.max(b0, b1))];
}

/** Away from the metal, at a point of a counter-clockwise outline. */
function outward(s: Segment, p: Point): Point {
  if (!isArc(s)) return unit([s.to[1] - s.from[1], s.from[0] - s.to[0]]);
  const { centre, sweep } = arcOf(s);
  const ray = unit([p[0] - centre[0], p[1] - centre[1]]);
  return sweep > 0 ? ray : [-ray[0], -ray[1]];
}

const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1];

function unit(a: Point): Point {
  const l = Math.hypot(a[0], a[1]);
  return [a[0] / l, a[1] / l];
}
