import type { Point, Vec3 } from '@tinwright/core';
import { convexHull, lazy, radians } from '@tinwright/core/internal';
import { contactAngle, passes } from '../../sweep/contact.js';
import { overlap } from '../../sweep/polygon.js';
import type { LineBook, LumpAtLine, LumpStand, PartAtLine } from './line-stands.js';
import type { BentLump } from './lumps.js';
import { keptBy, type Mask, union } from './mask.js';
import type { LineStroke, Work } from './operations.js';

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
 * out: they part there. Which side is held makes no difference. Pairs that few bends move are kept.
 */
export function contactBook(
  work: Work,
  lineAt: LineBook,
): (operation: LineStroke, done: Mask) => SelfContact | null {
  const lines = work.operations.map((o) =>
    lazy(() => keptBy(work.all, meetingAt(work, o, lineAt(o, 'parent')))),
  );
  return (operation, done) => (lines[operation.index] as (typeof lines)[number])()(done);
}

const MOST_KEPT = 7; // bends that move a pair which is kept

/** A pair of lumps that few bends move: the number of the one that is held, and whether they meet in a state. */
interface KeptPair {
  readonly at: number;
  readonly meets: (done: Mask) => boolean;
}

/** A lump that is held, by its number alone where the pair is asked anew each time: far from each other they are seldom as before. */
type OtherLump = number | KeptPair;

function meetingAt(
  work: Work,
  operation: LineStroke,
  { lumps }: PartAtLine,
): (done: Mask) => SelfContact | null {
  if (operation.action === 'close' || operation.action === 'roll') return () => null;
  const turn = radians(operation.action === 'fold' ? work.tree.fold.angle : Math.abs(operation.angle));
  const still = lumps.filter((l) => !l.moves);
  const rows = lumps
    .filter((l) => l.moves)
    .map((a) => ({
      a,
      others: still.flatMap((b, at): readonly OtherLump[] =>
        joined(work, a.lump, b.lump) ? [] : [pairOf(a, b, at, turn)],
      ),
    }));
  return (done) => {
    const stands = still.map((b) => b.at(done));
    for (const { a, others } of rows) {
      const moving = a.at(done);
      const met = moving === null ? null : firstMet(moving, others, stands, turn, done);
      if (met !== null) return { moving: a.lump.panel, held: met };
    }
    return null;
  };
}

/** The panel that a lump meets first; null when it meets none. */
function firstMet(
  moving: LumpStand,
  others: readonly OtherLump[],
  stands: readonly (LumpStand | null)[],
  turn: number,
  done: Mask,
): number | null {
  for (const other of others) {
    const pair = typeof other === 'number' ? null : other;
    const held = stands[pair?.at ?? (other as number)] ?? null;
    if (held === null) continue;
    if (pair === null ? touch(moving, held, turn) : pair.meets(done)) return held.lump.panel;
  }
  return null;
}

function pairOf(a: LumpAtLine, b: LumpAtLine, at: number, turn: number): OtherLump {
  if (a.bends.length + b.bends.length > MOST_KEPT) return at;
  const meets = keptBy(union(a.steps, b.steps), (own) => {
    const [moving, held] = [a.at(own), b.at(own)];
    return moving !== null && held !== null && touch(moving, held, turn);
  });
  return { at, meets };
}

function touch(a: LumpStand, b: LumpStand, turn: number): boolean {
  if (a.flat && b.flat) return false;
  return a.solids.some((p) =>
    b.solids.some((q) => {
      if (p.reach[0] > q.reach[1] || q.reach[0] > p.reach[1] || passes(p.sector, q.sector, turn))
        return false;
      return meet(p.corners, q.corners, turn, [Math.max(p.y[0], q.y[0]), Math.min(p.y[1], q.y[1])]);
    }),
  );
}

/** A bend with one of the panels it joins. */
function joined({ tree }: Work, a: BentLump, b: BentLump): boolean {
  const ends = ({ kind, panel }: BentLump) =>
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
