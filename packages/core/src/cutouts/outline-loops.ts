import { fail } from '../errors/problem.js';
import { contains } from '../plane/inside.js';
import {
  type Box,
  boxOf,
  type Loop,
  loopArea,
  loopBox,
  reach,
  type Segment,
  segmentLength,
  segments,
  tidy,
} from '../plane/loop.js';
import { meetings } from '../plane/meet.js';
import { eachNearPair } from '../plane/near-pairs.js';
import { distance, type Point, SAME } from '../plane/point.js';

/** A corner of an outline of one's own: x, y and, for an arc to the next corner, its bulge. mm */
export type OutlinePoint = readonly number[];

/**
 * Closed outlines of one's own about the middle of the box round them, counter-clockwise, scaled to `length` along x
 * where it is given. About n log n in the number of segments.
 * @throws JobError for outlines without area or narrower than 0.01 mm, that cross themselves or each other, or lie in one another
 */
export function outlineLoops(
  given: readonly (readonly OutlinePoint[])[],
  length: number | null,
): readonly Loop[] {
  const loops = given.map((points, i) => asLoop(points, i));
  const box = boxOf(loops.flatMap((l) => [loopBox(l).min, loopBox(l).max]));
  const size = box.max[0] - box.min[0];
  if (size < SAME) flat(0);
  const scale = length === null ? 1 : length / size;
  const [x, y] = [(box.min[0] + box.max[0]) / 2, (box.min[1] + box.max[1]) / 2];
  const placed = loops.map((loop) =>
    loop.map(({ at, bulge }) => ({ at: [(at[0] - x) * scale, (at[1] - y) * scale] as Point, bulge })),
  );
  crossings(placed);
  placed.forEach((loop, i) => {
    const { min, max } = loopBox(loop);
    if (Math.abs(loopArea(loop)) < NARROWEST * Math.max(max[0] - min[0], max[1] - min[1])) flat(i);
  });
  islands(placed);
  return placed;
}

function asLoop(points: readonly OutlinePoint[], i: number): Loop {
  const corners = points.map(([x = 0, y = 0, bulge = 0]) => ({ at: [x, y] as Point, bulge }));
  const loop = tidy(corners);
  if (loop.length < 2) flat(i);
  if (loopArea(loop) >= 0) return loop;
  const n = loop.length;
  return loop.map((_, k) => ({
    at: (loop[n - 1 - k] as Loop[number]).at,
    bulge: -(loop[(2 * n - 2 - k) % n] as Loop[number]).bulge,
  }));
}

/** Width of an outline, taken over its length, mm: a size of less is no size anywhere else. */
const NARROWEST = 0.01;

const flat = (i: number): never =>
  fail(
    'outline-flat',
    ['loops', i],
    'an outline without area, or narrower than 0.01 mm',
    'Draw a closed outline',
  );

/** Where a segment stands among all. */
interface Cut {
  readonly segment: Segment;
  readonly box: Box;
  readonly loop: number;
}

/** Of lines that come near each other: 1,400 long slanting ones side by side have as many, a usual drawing a few a corner. */
const MOST_PAIRS = 1_000_000;

function crossings(loops: readonly Loop[]): void {
  const cuts = loops.flatMap((loop, i) =>
    segments(loop).map((segment): Cut => ({ segment, box: boxOf(reach(segment)), loop: i })),
  );
  let looked = 0;
  const boxes = cuts.map((c) => c.box);
  eachNearPair(boxes, SAME, (i, j) => {
    looked += 1;
    if (looked > MOST_PAIRS) dense();
    const [a, b] = [cuts[i] as Cut, cuts[j] as Cut];
    const at = crossing(a, b);
    if (at !== undefined)
      fail(
        'outline-crosses',
        ['loops', b.loop],
        (say) => `lines cross ${say.size(at[0])}, ${say.size(at[1])} from the middle of the drawing`,
        'Draw outlines that do not cross themselves or each other',
      );
  });
}

const dense = (): never =>
  fail(
    'outline-dense',
    ['loops'],
    'long lines lie over each other too often to be looked through',
    'Draw it with fewer or shorter lines',
  );

/** Where two segments meet, but for the corner between two that follow each other: a corner passed twice is no such. */
function crossing({ segment: a }: Cut, { segment: b }: Cut): Point | undefined {
  const shared = [a.from, a.to].filter((p) => p === b.to || p === b.from);
  if (shared.length > 0 && Math.min(segmentLength(a), segmentLength(b)) < 10 * SAME) return undefined;
  return meetings(a, b).find((p) => shared.every((q) => distance(p, q) > 1e-5));
}

function islands(loops: readonly Loop[]): void {
  const start = (l: Loop) => (l[0] as Loop[number]).at;
  eachNearPair(loops.map(loopBox), 0, (i, j) => {
    const [a, b] = [loops[i] as Loop, loops[j] as Loop];
    if (!contains(a, start(b)) && !contains(b, start(a))) return;
    fail(
      'outline-island',
      ['loops', j],
      `outline ${j + 1} lies in or round outline ${i + 1}: what is between them would fall out`,
      'Join them by bridges, or leave one of them out',
    );
  });
}
