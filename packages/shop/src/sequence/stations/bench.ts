import type { Point, Pose, Vec3 } from '@tinwright/core';
import { convexHull, lazy, place3 } from '@tinwright/core/internal';
import {
  type Keeping,
  keepingOf,
  type LineSection,
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

/** A lump as it stands under a line, and what it does there: of its solids only what is seen along the line is kept. */
export interface StandingLump<Tool extends string = string> extends Omit<LumpStand, 'solids'> {
  readonly solids: readonly LineSection[];
  readonly clauses: readonly Clause<Tool>[];
}

/** Judges one convex solid of a lump. */
export type Judge<Tool extends string> = (solid: LineSolid, moves: boolean, flat: boolean) => Clause<Tool>;

/** All lumps under a line, each kept by the stages of the bends that move it. */
export interface LineBench<Tool extends string> {
  /** Steps that decide anything here, as far as it is known by now: fewer once every state was tried. */
  readonly seen: () => Mask;
  readonly at: (done: Mask) => readonly StandingLump<Tool>[];
  /** Steps that decide what is certain. */
  readonly sure: () => Mask;
  /** What no further step takes away again. */
  readonly certain: (done: Mask) => Certain;
}

/** What stands in the way from a state on, whatever else is done. */
export interface Certain {
  readonly stopped: boolean;
  readonly takes: readonly Interval[];
}

const FEW = 8; // states judged as they come, before it is worth trying them all

/**
 * Set a part under a line. Once more than a few states were asked for, every state of the bends on the way to a lump is tried,
 * unless there are too many: a lump that never matters is not looked at again.
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
  let lumps: readonly JudgedLump<Tool>[] = line.lumps
    .filter((l) => !skip.includes(l.lump.panel))
    .map((l) => judgedLump(l, keeping, judge));
  const tried = lazy(() => {
    const found = lumps.flatMap((l) =>
      l.near && !work.quick ? (triedLump(work, l, matters) ?? []) : { ...l, ...UNSURE },
    );
    // the others are let go
    lumps = found;
    seen = stepsIn(found);
    return found;
  });
  const sure = lazy(() => tried().filter((l) => l.ever));
  let seen = stepsIn(lumps);
  let asked = 0;
  const tryAll = () => {
    if (!work.quick && asked >= FEW) tried();
  };
  return {
    seen: () => {
      tryAll();
      return seen;
    },
    at: (done) => {
      tryAll();
      asked += 1;
      return work.quick ? untilStopped(lumps, done) : standingIn(lumps, done);
    },
    sure: () => stepsIn(sure()),
    certain: (done) => {
      const all = sure().map((l) => l.certain(done));
      return { stopped: all.some((c) => c.stopped), takes: all.flatMap((c) => c.takes) };
    },
  };
}

const stepsIn = (lumps: readonly { readonly steps: Mask }[]): Mask =>
  lumps.reduce((m, l) => union(m, l.steps), NONE);

const standingIn = <Tool extends string>(lumps: readonly JudgedLump<Tool>[], done: Mask) =>
  lumps.flatMap((l) => {
    const s = l.at(done);
    return s === null ? [] : [s];
  });

/** What stops a stroke alone, where only that is asked; else all there is. */
function untilStopped<Tool extends string>(
  lumps: readonly JudgedLump<Tool>[],
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

/** A lump with what it does under a line. Of a long chain there are ten thousands of these: they hold no more than they need. */
interface JudgedLump<Tool extends string> {
  readonly steps: Mask;
  /** Panels whose bends those are. */
  readonly bends: readonly number[];
  readonly at: (done: Mask) => StandingLump<Tool> | null;
  /** The same made anew. */
  readonly standing: (done: Mask) => StandingLump<Tool> | null;
  /** What it does there: of a near one in every state that was asked for. */
  readonly clauses: (done: Mask) => readonly Clause<Tool>[];
  /** True where few enough bends are on the way to it that every state of them is tried. */
  readonly near: boolean;
}

function judgedLump<Tool extends string>(
  { bends, steps, at: stand }: LumpAtLine,
  keeping: Keeping,
  judge: Judge<Tool>,
): JudgedLump<Tool> {
  const judged = (own: Mask): readonly Clause<Tool>[] => {
    const s = stand(own);
    return s === null ? [] : s.solids.map((solid) => judge(solid, s.moves, s.flat));
  };
  const near = bends.length <= keeping.bends;
  const clauses = near ? keptBy(steps, judged) : judged;
  const at = (own: Mask): StandingLump<Tool> | null => {
    const s = stand(own);
    if (s === null) return null;
    const solids = s.solids.map(({ section, y }) => ({ section, y }));
    return { ...s, solids, clauses: clauses(own) };
  };
  // what is only tried is not kept
  return {
    steps,
    bends,
    near,
    at: near ? keptBy(steps, at) : keptBy(steps, at, keeping.states),
    standing: at,
    clauses,
  };
}

interface TriedLump<Tool extends string> extends JudgedLump<Tool> {
  readonly certain: (done: Mask) => Certain;
  /** Whether anything is certain in any state. */
  readonly ever: boolean;
}

/** A lump whose every state is tried; null for what never matters. */
function triedLump<Tool extends string>(
  work: Work,
  lump: JudgedLump<Tool>,
  matters: (standing: StandingLump<Tool>) => boolean,
): TriedLump<Tool> | null {
  const { bends, steps, standing, clauses } = lump;
  const used = (own: Mask) => {
    if (clauses(own).some((c) => c.stops !== null || c.takes !== null)) return true;
    const s = standing(own);
    return s !== null && matters(s);
  };
  const all = states(work, bends);
  const whole = all.at(-1) as Mask;
  if (!used(whole) && !all.some(used)) return null;
  const certain = keptBy(steps, (own) => shared(clauses, all, own));
  // what is certain in any state is so when all is done
  const { stopped, takes } = certain(whole);
  // the states are let go where nothing is
  return stopped || takes.length > 0 ? { ...lump, certain, ever: true } : { ...lump, ...UNSURE };
}

const NOTHING: Certain = { stopped: false, takes: [] };
const UNSURE = { certain: () => NOTHING, ever: false } as const;

/** What all states that hold these steps have in common. */
function shared(clausesAt: (done: Mask) => readonly Clause[], states: readonly Mask[], own: Mask): Certain {
  let stopped = true;
  let [from, to] = [-Infinity, Infinity];
  for (const state of states) {
    if (!within(own, state)) continue;
    const clauses = clausesAt(state);
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
