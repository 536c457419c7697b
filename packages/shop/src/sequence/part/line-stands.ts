import type { Point, Pose, Vec3 } from '@tinwright/core';
import { convexHull, lazy } from '@tinwright/core/internal';
import { ring, type Sector, sectorOf } from '../../sweep/contact.js';
import { bySide } from './by-side.js';
import { ancestors, type Stage } from './fold-tree.js';
import { type HeldSide, type LineFrame, lineFrame } from './line.js';
import { type HingeBook, hingeBook, linePoses } from './line-poses.js';
import { type BentLump, type Corners, homeOf, lumpsOf, solidsOf } from './lumps.js';
import { has, keptBy, type Mask, maskOf } from './mask.js';
import type { LineStroke, Work } from './operations.js';
import { stageOf } from './stage.js';

/** A stretch along an axis of the machine. mm */
export type Extent = readonly [from: number, to: number];

/** A convex solid as it is seen along the line, and where along it. mm */
export interface LineSection {
  readonly section: readonly Point[];
  readonly y: Extent;
}

/** A convex solid in the machine, with its least and greatest distance from the line, and where it lies round it. */
export interface LineSolid extends LineSection {
  readonly corners: readonly Vec3[];
  readonly reach: Extent;
  readonly sector: Sector;
}

/** A lump as it stands under a line in one state. mm */
export interface LumpStand {
  readonly lump: BentLump;
  readonly moves: boolean;
  /** True while it lies in the plane of the sheet at the line. */
  readonly flat: boolean;
  readonly solids: readonly LineSolid[];
  /** Extents in the machine: away from the line, along it, and up. */
  readonly x: Extent;
  readonly y: Extent;
  readonly bottom: number;
  readonly top: number;
}

/** A lump of a part under a line, whatever is done. */
export interface LumpAtLine {
  readonly lump: BentLump;
  readonly moves: boolean;
  /** Panels whose bends decide where it stands, as far as they are made at all, and their steps. */
  readonly bends: readonly number[];
  readonly steps: Mask;
  /** How it stands in a state; null for a bend not yet made. */
  readonly at: (done: Mask) => LumpStand | null;
}

/** A part under a line: what every machine and the part itself are held against. */
export interface PartAtLine {
  readonly frame: LineFrame;
  readonly lumps: readonly LumpAtLine[];
}

/** Lines of a part with either side held, each computed when it is first asked for. */
export type LineBook = (operation: LineStroke, held: HeldSide) => PartAtLine;

/** Every line of a part, once for all machines. */
export function lineBook(work: Work): LineBook {
  const shape = shapeOf(work);
  return bySide(work.operations, (operation, held) => partAtLine(work, shape, operation, held));
}

/** What is kept of the lumps of a part: of long chains, which have many and in many states, less. */
export interface Keeping {
  /** Bends on the way to a lump whose every state is tried and kept. */
  readonly bends: number;
  /** States kept of a lump further away. */
  readonly states: number;
  /** Of a nearer one, as it stands: of parts with many steps stands take more room than it takes time to make them again. */
  readonly near: number;
}

/** By bends one behind the other, up to so many. */
const KEEPING: readonly (readonly [chain: number, keeping: Omit<Keeping, 'near'>])[] = [
  [8, { bends: 7, states: 1 }],
  [20, { bends: 4, states: 32 }],
  [Infinity, { bends: 2, states: 1 }],
];

/** Where few states are looked at: of a lump on the line alone there is one. */
const QUICK: Keeping = { bends: 0, states: 32, near: 32 };

/** What is worth keeping of a part. */
export function keepingOf({ tree, steps, quick }: Work): Keeping {
  if (quick) return QUICK;
  const longest = Math.max(...tree.panels.map((_, i) => ancestors(tree, i).length));
  const [, keeping] = KEEPING.find(([chain]) => longest <= chain) as (typeof KEEPING)[number];
  return { ...keeping, near: steps.length > MANY ? NEAR_STATES : Infinity };
}

const MANY = 30; // steps
const NEAR_STATES = 4;

/** What of a part is the same under every line. */
interface Shape {
  readonly hinges: HingeBook;
  readonly lumps: readonly ShapeLump[];
}

/** A lump, the panel in whose frame it is told, and its solids there, each made once. */
interface ShapeLump {
  readonly lump: BentLump;
  readonly home: number;
  readonly solids: Readonly<Record<Stage, () => readonly Corners[]>>;
}

function shapeOf({ tree }: Work): Shape {
  const lumps = lumpsOf(tree).map((lump): ShapeLump => {
    const made = (stage: Stage) => lazy(() => solidsOf(tree, lump, stage));
    const flat = made('flat');
    // a panel is one shape at every stage
    const solids =
      lump.kind === 'panel'
        ? { flat, folded: flat, done: flat }
        : { flat, folded: made('folded'), done: made('done') };
    return { lump, home: homeOf(tree, lump), solids };
  });
  return { hinges: hingeBook(tree), lumps };
}

function partAtLine(work: Work, shape: Shape, operation: LineStroke, held: HeldSide): PartAtLine {
  const frame = lineFrame(work, operation, held);
  const poses = linePoses(work, frame, shape.hinges);
  const keeping = keepingOf(work);
  const lumps = shape.lumps.map(({ lump, home, solids: own }): LumpAtLine => {
    const way = poses.bends(home);
    const all = lump.kind === 'bend' && !way.includes(lump.panel) ? [...way, lump.panel] : way;
    const moves = frame.moves[lump.panel] === true;
    const stages = work.steps.filter((s) => all.includes(s.panel) && has(work.all, s.index));
    const bends = all.filter((p) => stages.some((s) => s.panel === p));
    const steps = maskOf(stages.map((s) => s.index));
    const standing = (done: Mask): LumpStand | null => {
      const stage = stageOf(work, done);
      const solids = own[stage(lump.panel)]();
      if (solids.length === 0) return null;
      const pose = poses.at(home, done);
      const flat = bends.every((p) => stage(p) === 'flat');
      return standOf(
        { lump, moves, flat },
        solids.map((s) => placed(pose, s)),
      );
    };
    return {
      lump,
      moves,
      bends,
      steps,
      at: keptBy(steps, standing, bends.length > keeping.bends ? keeping.states : keeping.near),
    };
  });
  return { frame, lumps };
}

function standOf(
  of: Pick<LumpStand, 'lump' | 'moves' | 'flat'>,
  shapes: readonly (readonly Vec3[])[],
): LumpStand {
  const solids = shapes.map((corners): LineSolid => {
    const section = convexHull(corners.map(([x, , z]): Point => [x, z]));
    return { corners, section, y: extent(corners, 1), reach: ring(section), sector: sectorOf(section) };
  });
  const all = shapes.length === 1 ? (shapes[0] as readonly Vec3[]) : shapes.flat();
  const [bottom, top] = extent(all, 2);
  return { ...of, solids, x: extent(all, 0), y: extent(all, 1), bottom, top };
}

/** Corners in the machine; written out, for it is done more often than anything else. */
const placed = ({ origin: o, x, y, z }: Pose, corners: Corners): Corners =>
  corners.map(
    ([u, v, w]): Vec3 => [
      o[0] + x[0] * u + y[0] * v + z[0] * w,
      o[1] + x[1] * u + y[1] * v + z[1] * w,
      o[2] + x[2] * u + y[2] * v + z[2] * w,
    ],
  );

function extent(points: readonly Vec3[], axis: 0 | 1 | 2): Extent {
  let [least, most] = [Infinity, -Infinity];
  for (const p of points) {
    least = Math.min(least, p[axis]);
    most = Math.max(most, p[axis]);
  }
  return [least, most];
}
