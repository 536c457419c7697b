import type { Wording } from '../../errors/problem.js';
import { contains, distanceToSegment } from '../../plane/inside.js';
import {
  type Box,
  boxOf,
  isArc,
  type Loop,
  loopArea,
  loopBox,
  reach,
  type Segment,
  segmentLength,
  segments,
} from '../../plane/loop.js';
import { meetings } from '../../plane/meet.js';
import { nearPairs } from '../../plane/near-pairs.js';
import { cross, distance, mix, type Point, SAME, size, sub } from '../../plane/point.js';
import type { FlatBend, FlatPattern, Line } from './flat.js';

/** Something wrong with a result: a bug or sizes that cannot be. */
export interface Flaw {
  readonly code: string;
  readonly message: Wording;
  /** The size asked for that is not there, by its name. */
  readonly size?: string;
}

const NEAR = 1e-6; // mm
const BESIDE = 1e-3 + NEAR; // mm: edges under a thousandth are left out, and what ended on one ends beside it

/**
 * Check a flat pattern without knowing how it was made: outline closed, simple, counter-clockwise; holes inside
 * and apart; every bend on material, as wide as its allowance, from edge to edge; panels and bend zones together
 * as large as the outline; each deduction two setbacks less the allowance. Empty when all holds.
 */
export function verifyFlat(flat: FlatPattern): readonly Flaw[] {
  return checked(flat, sums);
}

/** The same, but for what panels and bend zones are together: of a pattern that is cut back at its corners. */
export function verifyCut(flat: FlatPattern): readonly Flaw[] {
  return checked(flat, () => []);
}

function checked(flat: FlatPattern, more: (flat: FlatPattern) => readonly Flaw[]): readonly Flaw[] {
  const cuts = cutsOf(flat.outline);
  const shape = [...numbers(flat), ...simple(cuts)];
  if (shape.length > 0) return shape; // the rest would only repeat it
  return [...turns(flat), ...holes(flat), ...flat.bends.flatMap((b) => bend(flat, cuts, b)), ...more(flat)];
}

const text = (p: Point) => `(${p[0].toFixed(3)}, ${p[1].toFixed(3)})`;

function numbers(flat: FlatPattern): readonly Flaw[] {
  const bad = flat.outline.find(
    (v) => !(Number.isFinite(v.at[0]) && Number.isFinite(v.at[1]) && Number.isFinite(v.bulge)),
  );
  return bad === undefined
    ? []
    : [{ code: 'flat-number', message: 'the outline holds something that is not a number' }];
}

/** A cut of the outline with the box round it. */
interface Cut {
  readonly segment: Segment;
  readonly box: Box;
}

const cutsOf = (loop: Loop): readonly Cut[] =>
  segments(loop).map((segment) => ({ segment, box: boxOf(reach(segment)) }));

/** No crossing, touching or repeated stretch: only neighbours meet, in their shared end. */
function simple(cuts: readonly Cut[]): readonly Flaw[] {
  if (cuts.length < 2) return [{ code: 'flat-open', message: 'the outline has fewer than two segments' }];
  const short = cuts.find(({ segment }) => segmentLength(segment) < SAME);
  if (short !== undefined)
    return [{ code: 'flat-zero', message: `a cut of no length at ${text(short.segment.from)}` }];
  const flaws: Flaw[] = [];
  for (let i = 0; i < cuts.length; i++)
    for (let j = i + 1; j < cuts.length; j++) {
      const [a, b] = [cuts[i] as Cut, cuts[j] as Cut];
      if (apart(a.box, b.box)) continue;
      const shared = sharedEnds(a.segment, b.segment);
      if (shared.length === 1 && areApartBeyond(a.segment, b.segment)) continue;
      const wrong = isSame(a.segment, b.segment)
        ? mix(a.segment.from, a.segment.to, 0.5)
        : meetings(a.segment, b.segment).find((p) => shared.every((q) => distance(p, q) > 1e-5));
      if (wrong !== undefined)
        flaws.push({ code: 'flat-crosses', message: `the outline meets itself at ${text(wrong)}` });
    }
  return flaws;
}

const apart = (a: Box, b: Box) =>
  a.min[0] > b.max[0] + SAME ||
  b.min[0] > a.max[0] + SAME ||
  a.min[1] > b.max[1] + SAME ||
  b.min[1] > a.max[1] + SAME;

function sharedEnds(a: Segment, b: Segment): readonly Point[] {
  return [a.from, a.to].filter((p) => distance(p, b.from) < SAME || distance(p, b.to) < SAME);
}

/** True for one stretch there and back, as of a slit without width: its ends are the only points that crossings give. */
function isSame(a: Segment, b: Segment): boolean {
  if (distance(a.from, b.to) > SAME || distance(a.to, b.from) > SAME) return false;
  return Math.abs(a.bulge + b.bulge) < SAME;
}

/** True for straight segments with a common end whose other ends lie off each other's line: they meet nowhere else. */
function areApartBeyond(a: Segment, b: Segment): boolean {
  if (isArc(a) || isArc(b)) return false;
  const [u, v] = [sub(a.to, a.from), sub(b.to, b.from)];
  return Math.abs(cross(u, v)) > 2 * SAME * Math.max(size(u), size(v));
}

function turns(flat: FlatPattern): readonly Flaw[] {
  const area = loopArea(flat.outline);
  return area > 0
    ? []
    : [{ code: 'flat-turn', message: `the outline runs clockwise (area ${area.toFixed(3)} mm²)` }];
}

/** Holes inside the outline, none over it, over or in another. */
function holes({ outline, holes: list }: FlatPattern): readonly Flaw[] {
  const cuts = list.map(cutsOf);
  const start = (i: number) => ((list[i] as Loop)[0] as { at: Point }).at;
  const meet = (a: readonly Cut[], b: readonly Cut[]) =>
    nearPairs(boxesOf(a), SAME, boxesOf(b)).some(
      ([i, j]) => meetings((a[i] as Cut).segment, (b[j] as Cut).segment).length > 0,
    );
  const edge = cutsOf(outline);
  const over = list.flatMap((_, i) => {
    if (contains(outline, start(i)) && !meet(edge, cuts[i] as readonly Cut[])) return [];
    return [{ code: 'flat-hole', message: `the hole near ${text(start(i))} reaches over the outline` }];
  });
  const both = nearPairs(list.map(loopBox), SAME).flatMap(([i, j]) => {
    const [a, b] = [list[i] as Loop, list[j] as Loop];
    const apart = !contains(a, start(j)) && !contains(b, start(i));
    if (apart && !meet(cuts[i] as readonly Cut[], cuts[j] as readonly Cut[])) return [];
    return [{ code: 'flat-holes', message: `two holes overlap near ${text(start(i))}` }];
  });
  return [...over, ...both];
}

const boxesOf = (cuts: readonly Cut[]) => cuts.map((c) => c.box);

function bend(flat: FlatPattern, cuts: readonly Cut[], b: FlatBend): readonly Flaw[] {
  const flaws: Flaw[] = [];
  const say = (code: string, message: string) => flaws.push({ code, message: `bend ${b.id}: ${message}` });
  const { setback, allowance, deduction } = b.terms;
  if (Math.abs(2 * setback - allowance - deduction) > NEAR)
    say('bend-terms', 'deduction is not two setbacks less allowance');
  const [p, q] = b.line;
  for (const end of b.line)
    if (!cuts.some((c) => isOn(end, c))) say('bend-end', `the line ends at ${text(end)}, not on an edge`);
  if (![0.02, 0.5, 0.98].every((t) => contains(flat.outline, mix(p, q, t))))
    say('bend-off', 'the line leaves the material');
  const [near, far] = b.tangents.map((t) => offset(t, p, q));
  if (near === undefined || far === undefined || Math.abs(Math.abs(far - near) - b.zone) > NEAR)
    say(
      'bend-zone',
      `tangent lines lie ${Math.abs((far ?? 0) - (near ?? 0)).toFixed(4)} mm apart, the zone says ${b.zone.toFixed(4)}`,
    );
  return flaws;
}

const isOn = (p: Point, { segment, box: { min, max } }: Cut) =>
  p[0] >= min[0] - BESIDE &&
  p[0] <= max[0] + BESIDE &&
  p[1] >= min[1] - BESIDE &&
  p[1] <= max[1] + BESIDE &&
  distanceToSegment(p, segment) <= BESIDE;

/** Signed distance of a parallel line from the line p q; NaN when it is not parallel. */
function offset([a, b]: Line, p: Point, q: Point): number {
  const d = sub(q, p);
  const l = Math.hypot(d[0], d[1]);
  const [u, v] = [cross(d, sub(a, p)) / l, cross(d, sub(b, p)) / l];
  return Math.abs(u - v) < NEAR ? u : Number.NaN;
}

const CORNERS = 4; // of a bend's width squared, two at either end

/** Panels and bend zones fill the outline, but for holes at the roots of notches; the blank is its box. */
function sums(flat: FlatPattern): readonly Flaw[] {
  const polygon = (points: readonly Point[]) => loopArea(points.map((at) => ({ at, bulge: 0 })));
  const panels = flat.panels.reduce((s, p) => s + polygon(p.shape), 0);
  const zones = flat.bends.reduce((s, b) => {
    const [[a0, a1], [b0, b1]] = b.tangents;
    return s + Math.abs(polygon([a0, a1, b1, b0]));
  }, 0);
  const area = loopArea(flat.outline);
  const missing = panels + zones - area;
  // laid out without what the metal takes, its tangent lines leave strips beside the bends and cut corners of its own
  const loose = flat.bends.filter((b) => Math.abs(b.zone - b.terms.allowance) > NEAR).map((b) => b.zone);
  const [width, height] = flat.blank.max;
  const beside = loose.reduce((sum, zone) => sum + zone * (width + height), 0);
  const corners = loose.reduce((sum, zone) => sum + CORNERS * zone ** 2, 0);
  const round = segments(flat.outline).some((s) => s.bulge !== 0);
  const { min, max } = loopBox(flat.outline);
  const flaws: Flaw[] = [];
  if (missing < -NEAR * area - beside || (!round && missing > NEAR * area + corners))
    flaws.push({
      code: 'flat-sum',
      message: `panels and bends make ${(panels + zones).toFixed(3)} mm², the outline ${area.toFixed(3)}`,
    });
  if (distance(max, flat.blank.max) > NEAR || distance(min, [0, 0]) > NEAR)
    flaws.push({ code: 'flat-blank', message: 'the blank is not the box of the outline' });
  return flaws;
}
