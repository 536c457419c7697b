import type { Point, Pose, Vec3 } from '@tinwright/core';
import { convexHull, place3 } from '@tinwright/core/internal';
import {
  type Keeping,
  keepingOf,
  type LineSolid,
  type LumpAtLine,
  type LumpStand,
  type PartAtLine,
} from '../part/line-stands.js';
import { keptBy, type Mask, maskOf, NONE, union, within } from '../part/mask.js';
import type { Work } from '../part/operations.js';
import type { Interval } from './stretches.js';

/** What a solid does to a stroke: stops it by running into a part of the machine, takes room from the tools, or neither. */
export interface Clause<Tool extends string = string> {
  readonly stops: Tool | null;
  readonly takes: Interval | null;
  /** The tool whose room it takes. */
  readonly by?: Tool;
}

/** A lump as it stands under a line, and what it does there. */
export interface StandingLump<Tool extends string = string> extends LumpStand {
  readonly clauses: readonly Clause<Tool>[];
}

/** Judges one convex solid of a lump. */
export type Judge<Tool extends string> = (solid: LineSolid, moves: boolean, flat: boolean) => Clause<Tool>;

/** All lumps under a line, each kept by the stages of the bends that move it. */
export interface LineBench<Tool extends string> {
  /** Steps that decide anything here. */
  readonly seen: Mask;
  /** Steps that decide what is certain. */
  readonly sure: Mask;
  readonly at: (done: Mask) => readonly StandingLump<Tool>[];
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
  line: PartAtLine,
  skip: readonly number[],
  judge: Judge<Tool>,
  matters: (standing: StandingLump<Tool>) => boolean,
): LineBench<Tool> {
  const keeping = keepingOf(work);
  const lumps = line.lumps
    .filter((l) => !skip.includes(l.lump.panel))
    .map((l) => watched(work, keeping, l, judge, matters))
    .filter((l) => l !== null);
  const sure = lumps.filter((l) => l.ever);
  return {
    seen: lumps.reduce((m, l) => union(m, l.steps), NONE),
    sure: sure.reduce((m, l) => union(m, l.steps), NONE),
    at: work.quick ? (done) => untilStopped(lumps, done) : (done) => standingIn(lumps, done),
    certain: (done) => {
      const all = sure.map((l) => l.certain(done));
      return { stopped: all.some((c) => c.stopped), takes: all.flatMap((c) => c.takes) };
    },
  };
}

const standingIn = <Tool extends string>(lumps: readonly Watched<Tool>[], done: Mask) =>
  lumps.flatMap((l) => {
    const s = l.at(done);
    return s === null ? [] : [s];
  });

/** What stops a stroke alone, where only that is asked; else all there is. */
function untilStopped<Tool extends string>(
  lumps: readonly Watched<Tool>[],
  done: Mask,
): readonly StandingLump<Tool>[] {
  const all: StandingLump<Tool>[] = [];
  for (const { at } of lumps) {
    const s = at(done);
    if (s === null) continue;
    if (s.clauses.some((c) => c.stops !== null)) return [s];
    all.push(s);
  }
  return all;
}

/** A convex solid in the frame of its panel, as it is seen along the line. */
export const sectionOf = (corners: readonly Vec3[], pose: Pose): readonly Point[] =>
  convexHull(corners.map((p) => place3(pose, p)).map(([x, , z]): Point => [x, z]));

interface Watched<Tool extends string> {
  readonly steps: Mask;
  readonly at: (done: Mask) => StandingLump<Tool> | null;
  readonly certain: (done: Mask) => Certain;
  /** Whether anything is certain in any state. */
  readonly ever: boolean;
}

/** A lump with what it does there. Of a long chain there are ten thousands of these: they hold no more than they need. */
const judgedBy =
  <Tool extends string>(stand: LumpAtLine['at'], judge: Judge<Tool>) =>
  (own: Mask): StandingLump<Tool> | null => {
    const s = stand(own);
    return s === null ? null : { ...s, clauses: s.solids.map((solid) => judge(solid, s.moves, s.flat)) };
  };

/** Null for what never matters, where every state is tried. */
function watched<Tool extends string>(
  work: Work,
  keeping: Keeping,
  lump: LumpAtLine,
  judge: Judge<Tool>,
  matters: (standing: StandingLump<Tool>) => boolean,
): Watched<Tool> | null {
  const judged = judgedBy(lump.at, judge);
  if (lump.bends.length > keeping.bends)
    return {
      steps: lump.steps,
      at: keptBy(lump.steps, judged, keeping.states),
      certain: nothing,
      ever: false,
    };
  return tried(work, lump, keptBy(lump.steps, judged), matters);
}

/** A lump whose every state is tried beforehand. */
function tried<Tool extends string>(
  work: Work,
  { bends, steps }: LumpAtLine,
  at: Watched<Tool>['at'],
  matters: (standing: StandingLump<Tool>) => boolean,
): Watched<Tool> | null {
  const used = (s: StandingLump<Tool> | null) =>
    s !== null && (matters(s) || s.clauses.some((c) => c.stops !== null || c.takes !== null));
  const all = states(work, bends);
  const whole = all.at(-1) as Mask;
  if (!used(at(whole)) && !all.some((m) => used(at(m)))) return null;
  const certain = keptBy(steps, (own) => shared(at, all, own));
  // what is certain in any state is so when all is done
  const { stopped, takes } = certain(whole);
  const ever = stopped || takes.length > 0;
  // the states are let go where nothing is
  return { steps, at, certain: ever ? certain : nothing, ever };
}

const NOTHING: Certain = { stopped: false, takes: [] };
const nothing = () => NOTHING;

/** What all states that hold these steps have in common. */
function shared(at: (done: Mask) => StandingLump | null, states: readonly Mask[], own: Mask): Certain {
  let stopped = true;
  let [from, to] = [-Infinity, Infinity];
  for (const state of states) {
    if (!within(own, state)) continue;
    const clauses = at(state)?.clauses ?? [];
    stopped &&= clauses.some((c) => c.stops !== null);
    const takes = clauses.flatMap((c) => (c.takes === null ? [] : [c.takes]));
    // several solids of a lump lie side by side, or on each other
    const [a, b] = takes.length === 1 ? (takes[0] as Interval) : [Infinity, -Infinity];
    [from, to] = [Math.max(from, a), Math.min(to, b)];
    if (!stopped && from >= to) return NOTHING;
  }
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
