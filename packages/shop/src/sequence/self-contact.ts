import { convexHull, type Point, place3, radians, type Vec3 } from '@tinwright/core';
import { contactAngle } from '../sweep/contact.js';
import { overlap } from '../sweep/polygon.js';
import { stageOf } from './bench.js';
import { bendsTo, lineFrame, poseInMachine } from './line.js';
import { type Lump, lumpsOf, solidsOf } from './lumps.js';
import type { Work } from './operations.js';
import type { Move } from './states.js';

/** Two panels of a part that meet during a stroke. */
export interface SelfContact {
  readonly moving: number;
  readonly held: number;
}

const THIN = 0.2; // mm along the line: what still meets in so thin a slice meets
const RESTS = 0.05; // mm two solids may share before the stroke: they lie on each other

/**
 * The part against itself in one stroke: what turns against what is held, sliced along the line until slices either
 * pass each other or are thinner than a fifth of a millimetre. Panels that still lie in one plane at the line are left
 * out: they part there.
 */
export function selfContact(work: Work, { mounting, done }: Move): SelfContact | null {
  const { operation, held } = mounting;
  if (operation.action === 'close' || operation.action === 'roll') return null;
  const frame = lineFrame(work, operation, held);
  const stage = stageOf(work, done);
  const through = operation.action === 'fold' ? work.tree.foldAngle : Math.abs(operation.angle);
  const standing = lumpsOf(work.tree).flatMap((lump) => {
    const pose = poseInMachine(work, frame, lump, stage);
    const flat = bendsTo(work, frame, lump).every((p) => stage(p) === 'flat');
    return solidsOf(work.tree, lump, stage(lump.panel)).map((solid) => ({
      lump,
      flat,
      moves: frame.moves[lump.panel] === true,
      corners: solid.map((p) => place3(pose, p)),
    }));
  });
  const moving = standing.filter((s) => s.moves);
  const still = standing.filter((s) => !s.moves);
  for (const a of moving)
    for (const b of still) {
      if ((a.flat && b.flat) || joined(work, a.lump, b.lump)) continue;
      if (meet(a.corners, b.corners, radians(through), extentOf(a.corners, b.corners)))
        return { moving: a.lump.panel, held: b.lump.panel };
    }
  return null;
}

/** A bend with one of the panels it joins. */
function joined({ tree }: Work, a: Lump, b: Lump): boolean {
  const ends = ({ kind, panel }: Lump) =>
    kind === 'panel' ? [panel] : [panel, tree.panels[panel]?.parent ?? -1];
  return (a.kind === 'bend' || b.kind === 'bend') && ends(a).some((p) => ends(b).includes(p));
}

/** Where along the line both have material. */
function extentOf(a: readonly Vec3[], b: readonly Vec3[]): readonly [number, number] {
  const low = (list: readonly Vec3[]) => Math.min(...list.map((p) => p[1]));
  const high = (list: readonly Vec3[]) => Math.max(...list.map((p) => p[1]));
  return [Math.max(low(a), low(b)), Math.min(high(a), high(b))];
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
