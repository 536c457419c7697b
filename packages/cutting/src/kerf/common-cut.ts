import { type Box, isArc, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import { arcOf, loopBox, segmentDistance } from '@tinwright/core/internal';
import type { CutRun } from './contour.js';
import { heading } from './run.js';
import { cutAt, stretchesOn } from './stretches.js';

/** What is left to cut of an outline's path, and what the cuts of its neighbours spare it. */
export interface RunsLeft {
  readonly runs: readonly CutRun[];
  readonly spared: readonly Segment[];
}

/** The straight cuts made round one piece. */
interface Made {
  readonly box: Box;
  readonly sides: readonly Segment[];
}

/**
 * Cut paths one after the other, each only where no earlier cut has run along the very same line: null for one that is
 * cut whole. What is left of an outline begins and ends in the cut of a neighbour. A round at a corner between two cuts
 * that are there already is left out, since both together have taken the metal (up to 120 degrees); one at the end of a
 * run gives way to the straight on, as far as that keeps half a kerf from every line.
 */
export function runsLeft(
  paths: readonly Loop[],
  drawn: readonly Loop[],
  { kerf, least }: { readonly kerf: number; readonly least: number },
): readonly (RunsLeft | null)[] {
  const made: Made[] = [];
  const lines = drawn.map((loop) => ({ box: loopBox(loop), sides: segments(loop) }));
  const clear = (way: Segment) => {
    const box = grownBox(wayBox(way), kerf);
    return !lines
      .filter((l) => touch(l.box, box))
      .some(({ sides }) => sides.some((s) => segmentDistance(s, way) < kerf / 2 - ROUNDING));
  };
  return paths.map((path) => {
    const box = grownBox(loopBox(path), kerf);
    const near = made.filter((m) => touch(m.box, box)).flatMap((m) => m.sides);
    const pieces = segments(path).flatMap((side) => cutAt(side, stretchesOn(side, near, least)));
    const first = pieces.findIndex((p) => p.on);
    const left = first < 0 ? null : leftOf([...pieces.slice(first), ...pieces.slice(0, first)], kerf, clear);
    const sides = left === null ? segments(path) : left.runs.flat();
    made.push({ box, sides: straight(sides) });
    return left;
  });
}

/** Do two paths run along one line for so long? */
export function inCommon(one: Loop, other: Loop, least: number): boolean {
  if (!touch(grownBox(loopBox(one), ROUNDING), loopBox(other))) return false;
  const sides = segments(other);
  return segments(one).some((side) => stretchesOn(side, sides, least).length > 0);
}

/** Straight ones among sides of the path of that index, without what it has in common with any other path. */
export type OwnSides = (sides: readonly Segment[], path: number) => readonly Segment[];

export function ownSides(paths: readonly Loop[], least: number): OwnSides {
  const all = paths.map((path) => ({
    box: grownBox(loopBox(path), ROUNDING),
    sides: straight(segments(path)),
  }));
  return (sides, path) => {
    const { box } = all[path] as (typeof all)[number];
    const near = all.filter((o, i) => i !== path && touch(o.box, box)).flatMap((o) => o.sides);
    return straight(sides).flatMap((side) =>
      cutAt(side, stretchesOn(side, near, least)).flatMap((p) => (p.on ? [] : [p.side])),
    );
  };
}

const straight = (sides: readonly Segment[]) => sides.filter((s) => !isArc(s));

/** Rounding of distances, mm. */
const ROUNDING = 1e-6;

function leftOf(pieces: ReturnType<typeof cutAt>, kerf: number, clear: (way: Segment) => boolean): RunsLeft {
  const runs: Segment[][] = [];
  pieces.forEach(({ side, on }, i) => {
    if (on) return;
    if (pieces[i - 1]?.on) runs.push([]);
    runs.at(-1)?.push(side);
  });
  const [forth, against] = (['cw', 'ccw'] as const).map(
    (way) => (s: Segment) => isRound(s, kerf / 2, way),
  ) as [IsRound, IsRound];
  const kept = runs.filter((run) => !(run.length === 1 && forth(run[0] as Segment)));
  return {
    runs: kept.map((run) => back(straightened(back(straightened(run, forth, clear)), against, clear))),
    spared: pieces.filter((p) => p.on).map((p) => p.side),
  };
}

/** Turns of corners that the cuts on both sides clear by themselves, radians. */
const MOST_TURN = (2 * Math.PI) / 3;

type IsRound = (s: Segment) => boolean;

/** Is it the way of a torch round a corner of the part, and not along an arc of its own? Outlines are run clockwise. */
function isRound(s: Segment, radius: number, way: 'cw' | 'ccw'): boolean {
  if (!isArc(s) || s.bulge > 0 !== (way === 'ccw')) return false;
  const arc = arcOf(s);
  return arc.radius <= radius + ROUNDING && Math.abs(arc.sweep) <= MOST_TURN + ROUNDING;
}

/** The run begun straight, in or before the cut that it starts from, instead of round the corner. */
function straightened(run: CutRun, round: IsRound, clear: (way: Segment) => boolean): CutRun {
  const [corner, next] = run;
  if (corner === undefined || next === undefined || !round(corner) || isArc(next)) return run;
  const { radius, sweep } = arcOf(corner);
  const over = radius * Math.tan(Math.abs(sweep) / 2);
  const [ux, uy] = heading(next, 'start');
  for (const far of [2 * over, over]) {
    const from: Point = [next.from[0] - ux * far, next.from[1] - uy * far];
    if (clear({ from, to: next.from, bulge: 0 })) return [{ from, to: next.to, bulge: 0 }, ...run.slice(2)];
  }
  return run;
}

const back = (run: CutRun): CutRun =>
  run.map(({ from, to, bulge }) => ({ from: to, to: from, bulge: -bulge })).toReversed();

const wayBox = ({ from, to }: Segment): Box => ({
  min: [Math.min(from[0], to[0]), Math.min(from[1], to[1])],
  max: [Math.max(from[0], to[0]), Math.max(from[1], to[1])],
});

const grownBox = ({ min, max }: Box, by: number): Box => ({
  min: [min[0] - by, min[1] - by],
  max: [max[0] + by, max[1] + by],
});

const touch = (a: Box, b: Box): boolean =>
  a.min[0] <= b.max[0] && b.min[0] <= a.max[0] && a.min[1] <= b.max[1] && b.min[1] <= a.max[1];
