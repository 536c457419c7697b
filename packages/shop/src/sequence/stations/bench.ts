import { convexHull, type Point, type Pose, place3, type Vec3 } from '@tinwright/core';
import { ancestors, type Stage } from '../part/fold-tree.js';
import { bendsTo, type LineFrame, poseInMachine } from '../part/line.js';
import { type Lump, lumpsOf, solidsOf } from '../part/lumps.js';
import { keptBy, type Mask, maskOf, NONE, union, within } from '../part/mask.js';
import type { Work } from '../part/operations.js';
import { stageOf } from '../part/stage.js';
import type { Interval } from './stretches.js';

/** What a solid does to a stroke: stops it by running into a part of the machine, takes room from the tools, or neither. */
export interface Clause<Tool extends string = string> {
  readonly stops: Tool | null;
  readonly takes: Interval | null;
  /** The tool whose room it takes. */
  readonly by?: Tool;
}

/** A convex solid as it is seen along the line, and where along it. mm */
export interface Section {
  readonly section: readonly Point[];
  readonly y: Interval;
}

/** A convex solid in the machine. */
export interface Solid extends Section {
  readonly corners: readonly Vec3[];
}

/** A lump as it stands under a line in one state. mm */
export interface Standing<Tool extends string = string> {
  readonly lump: Lump;
  readonly moves: boolean;
  /** True while it lies in the plane of the sheet at the line. */
  readonly flat: boolean;
  readonly clauses: readonly Clause<Tool>[];
  readonly solids: readonly Solid[];
  /** Extents in the machine: away from the line, along it, and up. */
  readonly x: Interval;
  readonly y: Interval;
  readonly bottom: number;
  readonly top: number;
}

/** Judges one convex solid of a lump. */
export type Judge<Tool extends string> = (solid: Solid, moves: boolean, flat: boolean) => Clause<Tool>;

/** All lumps under a line, each kept by the stages of the bends that move it. */
export interface Bench<Tool extends string> {
  /** Steps that decide anything here. */
  readonly seen: Mask;
  /** Steps that decide what is certain. */
  readonly sure: Mask;
  readonly at: (done: Mask) => readonly Standing<Tool>[];
  /** What no further step takes away again. */
  readonly certain: (done: Mask) => Certain;
}

/** What stands in the way from a state on, whatever else is done. */
export interface Certain {
  readonly stopped: boolean;
  readonly takes: readonly Interval[];
}

/**
 * Set a part under a line. Every state of the bends on the way to a lump is tried beforehand, unless there are too
 * many: a lump that never matters is not looked at again.
 * @param skip panels that are meant to be under the tool
 * @param matters true for a standing lump that has to be known besides its clauses
 */
export function benchOf<Tool extends string>(
  work: Work,
  frame: LineFrame,
  skip: readonly number[],
  judge: Judge<Tool>,
  matters: (standing: Standing<Tool>) => boolean,
): Bench<Tool> {
  const standing = (lump: Lump, stage: (p: number) => Stage): Standing<Tool> | null => {
    const pose = poseInMachine(work, frame, lump, stage);
    const solids = solidsOf(work.tree, lump, stage(lump.panel)).map((s) =>
      solidOf(s.map((p) => place3(pose, p))),
    );
    if (solids.length === 0) return null;
    const moves = frame.moves[lump.panel] === true;
    const flat = bendsTo(work, frame, lump).every((p) => stage(p) === 'flat');
    const all = solids.flatMap((s) => s.corners);
    const extent = (k: 0 | 1 | 2): Interval => [
      Math.min(...all.map((p) => p[k])),
      Math.max(...all.map((p) => p[k])),
    ];
    const clauses = solids.map((s) => judge(s, moves, flat));
    const [bottom, top] = extent(2);
    return { lump, moves, flat, clauses, solids, x: extent(0), y: extent(1), bottom, top };
  };
  const lumps = lumpsOf(work.tree)
    .filter((l) => !skip.includes(l.panel))
    .map((lump) => watched(work, bendsTo(work, frame, lump), (stage) => standing(lump, stage), matters))
    .filter((l) => l !== null);
  const sure = lumps.filter((l) => l.ever);
  return {
    seen: lumps.reduce((m, l) => union(m, l.steps), NONE),
    sure: sure.reduce((m, l) => union(m, l.steps), NONE),
    at: (done) =>
      lumps.flatMap((l) => {
        const s = l.at(done);
        return s === null ? [] : [s];
      }),
    certain: (done) => {
      const all = sure.map((l) => l.certain(done));
      return { stopped: all.some((c) => c.stopped), takes: all.flatMap((c) => c.takes) };
    },
  };
}

/** A convex solid in the frame of its panel, as it is seen along the line. */
export const sectionOf = (corners: readonly Vec3[], pose: Pose): readonly Point[] =>
  convexHull(corners.map((p) => place3(pose, p)).map(([x, , z]): Point => [x, z]));

function solidOf(corners: readonly Vec3[]): Solid {
  const ys = corners.map((p) => p[1]);
  return {
    corners,
    section: convexHull(corners.map(([x, , z]): Point => [x, z])),
    y: [Math.min(...ys), Math.max(...ys)],
  };
}

interface Watched<Tool extends string> {
  readonly steps: Mask;
  readonly at: (done: Mask) => Standing<Tool> | null;
  readonly certain: (done: Mask) => Certain;
  /** Whether anything is certain in any state. */
  readonly ever: boolean;
}

const MOST_TRIED = 7; // bends on the way to a lump whose every state is tried beforehand
const CHAIN = 8; // bends one behind the other from which far fewer are
const FEW_TRIED = 2;

/** Null for what never matters. */
function watched<Tool extends string>(
  work: Work,
  bends: readonly number[],
  standing: (stage: (p: number) => Stage) => Standing<Tool> | null,
  matters: (standing: Standing<Tool>) => boolean,
): Watched<Tool> | null {
  const steps = maskOf(work.steps.filter((s) => bends.includes(s.panel)).map((s) => s.index));
  const at = keptBy(steps, (own) => standing(stageOf(work, own)));
  const deep = work.tree.panels.some((_, i) => ancestors(work.tree, i).length > CHAIN);
  if (bends.length > (deep ? FEW_TRIED : MOST_TRIED))
    return { steps, at, certain: () => NOTHING, ever: false };
  const used = (s: Standing<Tool> | null) =>
    s !== null && (matters(s) || s.clauses.some((c) => c.stops !== null || c.takes !== null));
  const all = states(work, bends);
  if (!all.some((m) => used(at(m)))) return null;
  const certain = keptBy(steps, (own) => shared(all.filter((m) => within(own, m)).map(at)));
  const ever = all.some((m) => certain(m).stopped || certain(m).takes.length > 0);
  return { steps, at, certain, ever };
}

const NOTHING: Certain = { stopped: false, takes: [] };

/** What all of these have in common. */
function shared(standings: readonly (Standing | null)[]): Certain {
  const stopped = standings.every((s) => s?.clauses.some((c) => c.stops !== null) === true);
  const spans = standings.map((s): Interval => {
    const takes = s?.clauses.flatMap((c) => (c.takes === null ? [] : [c.takes])) ?? [];
    // several solids of a lump lie side by side, or on each other
    return takes.length === 1 ? (takes[0] as Interval) : [Infinity, -Infinity];
  });
  const [from, to] = [Math.max(...spans.map((s) => s[0])), Math.min(...spans.map((s) => s[1]))];
  return { stopped, takes: from < to ? [[from, to]] : [] };
}

/** Every state of some bends. */
function states(work: Work, bends: readonly number[]): readonly Mask[] {
  return bends.reduce<readonly Mask[]>(
    (list, p) => {
      const [first, last] = [work.first[p] as number, work.last[p] as number];
      const own = first === last ? [NONE, maskOf([last])] : [NONE, maskOf([first]), maskOf([first, last])];
      return list.flatMap((m) => own.map((o) => union(m, o)));
    },
    [NONE],
  );
}
