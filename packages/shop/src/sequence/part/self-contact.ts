import { convexHull, type Point, place3, radians, type Vec3 } from '@tinwright/core';
import { contactAngle, ring } from '../../sweep/contact.js';
import { overlap } from '../../sweep/polygon.js';
import { lazy } from './lazy.js';
import { bendsTo, type LineFrame, lineFrame, poseInMachine } from './line.js';
import { type Lump, lumpsOf, solidsOf } from './lumps.js';
import { keptBy, keyOf, type Mask, maskOf, union } from './mask.js';
import type { Operation, Work } from './operations.js';
import { stageOf } from './stage.js';

/** Two panels of a part that meet during a stroke. */
export interface SelfContact {
  readonly moving: number;
  readonly held: number;
}

const THIN = 0.2; // mm along the line: what still meets in so thin a slice meets
const RESTS = 0.05; // mm two solids may share before the stroke: they lie on each other

/** A convex solid of a lump under a line: its corners, its extent along the line, its least and greatest reach from it. */
interface Solid {
  readonly corners: readonly Vec3[];
  readonly y: readonly [number, number];
  readonly reach: readonly [number, number];
}

/** A lump as it stands under a line. */
interface Stand {
  readonly flat: boolean;
  readonly solids: readonly Solid[];
}

/**
 * The part against itself in one stroke: what turns against what is held, sliced along the line until slices either
 * pass each other or are thinner than a fifth of a millimetre. Panels that still lie in one plane at the line are left
 * out: they part there. Which side is held makes no difference. Every pair is kept by the stages of the bends that
 * move it.
 */
export function contactBook(work: Work): (operation: Operation, done: Mask) => SelfContact | null {
  const lines = work.operations.map((o) => lazy(() => pairsOf(work, o)));
  const known = lines.map(() => new Map<number | string, SelfContact | null>());
  return (operation, done) => {
    const key = keyOf(done);
    const answers = known[operation.index] as Map<number | string, SelfContact | null>;
    const before = answers.get(key);
    if (before !== undefined) return before;
    const meets = lines[operation.index]?.().find((pair) => pair.at(done)) ?? null;
    answers.set(key, meets);
    return meets;
  };
}

interface Pair extends SelfContact {
  /** Whether they meet, in a state. */
  readonly at: (done: Mask) => boolean;
}

function pairsOf(work: Work, operation: Operation): readonly Pair[] {
  if (operation.action === 'close' || operation.action === 'roll') return [];
  const frame = lineFrame(work, operation, 'parent');
  const turn = radians(operation.action === 'fold' ? work.tree.foldAngle : Math.abs(operation.angle));
  const stands = lumpsOf(work.tree).map((lump) => {
    const bends = bendsTo(work, frame, lump);
    const steps = maskOf(work.steps.filter((s) => bends.includes(s.panel)).map((s) => s.index));
    const at = keptBy(steps, (done) => standing(work, frame, lump, bends, done));
    return { lump, steps, at, moves: frame.moves[lump.panel] === true };
  });
  const still = stands.filter((s) => !s.moves);
  return stands
    .filter((s) => s.moves)
    .flatMap((a) =>
      still
        .filter((b) => !joined(work, a.lump, b.lump))
        .map((b): Pair => {
          const at = keptBy(union(a.steps, b.steps), (done) => touch(a.at(done), b.at(done), turn));
          return { moving: a.lump.panel, held: b.lump.panel, at };
        }),
    );
}

function standing(work: Work, frame: LineFrame, lump: Lump, bends: readonly number[], done: Mask): Stand {
  const stage = stageOf(work, done);
  const pose = poseInMachine(work, frame, lump, stage);
  const solids = solidsOf(work.tree, lump, stage(lump.panel)).map((solid): Solid => {
    const corners = solid.map((p) => place3(pose, p));
    const ys = corners.map((p) => p[1]);
    const seen = convexHull(corners.map(([x, , z]): Point => [x, z]));
    return { corners, y: [Math.min(...ys), Math.max(...ys)], reach: ring(seen) };
  });
  return { flat: bends.every((p) => stage(p) === 'flat'), solids };
}

function touch(a: Stand, b: Stand, turn: number): boolean {
  if (a.flat && b.flat) return false;
  return a.solids.some((p) =>
    b.solids.some((q) => {
      if (p.reach[0] > q.reach[1] || q.reach[0] > p.reach[1]) return false;
      return meet(p.corners, q.corners, turn, [Math.max(p.y[0], q.y[0]), Math.min(p.y[1], q.y[1])]);
    }),
  );
}

/** A bend with one of the panels it joins. */
function joined({ tree }: Work, a: Lump, b: Lump): boolean {
  const ends = ({ kind, panel }: Lump) =>
    kind === 'panel' ? [panel] : [panel, tree.panels[panel]?.parent ?? -1];
  return (a.kind === 'bend' || b.kind === 'bend') && ends(a).some((p) => ends(b).includes(p));
}

function meet(
  moving: readonly Vec3[],
  still: readonly Vec3[],
  turn: number,
  [from, to]: readonly [number, number],
): boolean {
  if (to - from < 1e-6) return false;
  const [a, b] = [slice(moving, from, to), slice(still, from, to)];
  if (a.length < 3 || b.length < 3) return false;
  const rests = overlap(a, b) > 0 && overlap(a, b) < RESTS;
  if (rests || contactAngle(a, b, turn) > turn) return false;
  if (to - from < THIN) return true;
  const middle = (from + to) / 2;
  return meet(moving, still, turn, [from, middle]) || meet(moving, still, turn, [middle, to]);
}

/** Seen along the line, the part of a convex solid between two planes across it. */
function slice(corners: readonly Vec3[], from: number, to: number): readonly Point[] {
  const inside = corners.filter((p) => p[1] >= from - 1e-9 && p[1] <= to + 1e-9);
  const cuts = [from, to].flatMap((y) =>
    corners.flatMap((p, i) =>
      corners.slice(i + 1).flatMap((q): readonly Point[] => {
        if (p[1] < y === q[1] < y) return [];
        const t = (y - p[1]) / (q[1] - p[1]);
        return [[p[0] + (q[0] - p[0]) * t, p[2] + (q[2] - p[2]) * t]];
      }),
    ),
  );
  return convexHull([...inside.map(([x, , z]): Point => [x, z]), ...cuts]);
}
