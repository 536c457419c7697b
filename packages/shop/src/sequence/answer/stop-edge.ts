import type { Pose, Vec3 } from '@tinwright/core';
import { compose3, homePose, place3 } from '@tinwright/core/internal';
import { type FoldTree, mouldFrame, type TreeBend } from '../part/fold-tree.js';
import { bendsTo, type LineFrame, lineFrame, poseInMachine } from '../part/line.js';
import { type BentLump, lumpsOf } from '../part/lumps.js';
import { stageOf } from '../part/stage.js';
import type { BendProblem, Move } from '../search/states.js';
import type { Touches } from './plan.js';

const LEAST_EDGE = 10; // mm of straight edge a stop needs; judgement
const NEAR = 1e-6;

/** What lies against a stop or gauge, and how far behind the tangent line on the held side. mm */
export interface RearEdge {
  readonly distance: number;
  readonly touches: Touches;
}

/**
 * From the tangent line on the held side back to the furthest edge of the flat sheet that runs along the line, mm: a free
 * edge, or the outside of a wall or fold bent square or further. Null without such an edge in reach.
 * @param reach nearest and furthest place of the stop, mm behind the tangent line
 */
export function rearEdge(
  problem: BendProblem,
  { mounting, done }: Move,
  [nearest, furthest]: readonly [number, number],
): RearEdge | null {
  const { work } = problem;
  const { operation, held } = mounting;
  const frame = lineFrame(work, operation, held);
  const stage = stageOf(work, done);
  const edges = lumpsOf(work.tree).flatMap((lump) => {
    if (lump.kind === 'bend' || frame.moves[lump.panel] === true) return [];
    if (!bendsTo(work, frame, lump).every((p) => stage(p) === 'flat')) return [];
    return edgesOf(problem, frame, lump, stage);
  });
  const tangent = -frame.reach.held; // from the hinge
  const inReach = edges.filter(
    ({ at }) => at < tangent && tangent - at >= nearest - NEAR && tangent - at <= furthest + NEAR,
  );
  const rear = inReach.reduce<Edge | null>((a, b) => (a === null || b.at < a.at - NEAR ? b : a), null);
  if (rear === null) return null;
  const panel = work.tree.panels[rear.panel]?.id ?? '';
  return { distance: tangent - rear.at, touches: { panel, by: rear.by } };
}

type StageOf = ReturnType<typeof stageOf>;

interface Edge {
  readonly at: number;
  readonly panel: number;
  readonly by: Touches['by'];
}

/** Where the edges of a panel that a stop can touch lie in the machine, forward of the line. */
function edgesOf({ work }: BendProblem, frame: LineFrame, lump: BentLump, stage: StageOf): readonly Edge[] {
  const pose = poseInMachine(work, frame, lump, stage);
  const shape = (work.tree.panels[lump.panel]?.panel.shape ?? []).map((e) => place3(pose, [...e.from, 0]));
  const walls = wallsOn(work.tree, lump.panel, stage).flatMap(({ bend, mould, panel }) => {
    const { origin, x } = compose3(pose, mould);
    // a wall stands on an edge along the line only if it runs along it
    return Math.abs(x[0]) < NEAR ? [{ bend, panel, at: origin[0] }] : [];
  });
  const flats = work.tree.panels.flatMap(({ bend, parent }, i): readonly Extent[] => {
    if (bend === null || stage(i) !== 'flat' || ![i, parent].includes(lump.panel)) return [];
    const mould = compose3(pose, i === lump.panel ? homePose() : mouldFrame(bend));
    const ends = bend.ends.map((x) => place3(mould, [x, 0, 0])[1]);
    return [{ x: mould.origin[0], off: bend.setback, y: [Math.min(...ends), Math.max(...ends)] }];
  });
  return shape.flatMap((p, i): readonly Edge[] => {
    const q = shape[(i + 1) % shape.length] as Vec3;
    if (Math.abs(p[0] - q[0]) > NEAR || Math.abs(p[1] - q[1]) <= LEAST_EDGE) return [];
    const wall = walls.find((w) => Math.abs(Math.abs(w.at - p[0]) - w.bend.setback) < 0.01);
    if (wall === undefined) return isFree(p, q, flats) ? [{ at: p[0], panel: lump.panel, by: 'edge' }] : [];
    // bent square or further, the metal reaches as far as the outer tangent
    const out = wall.bend.insideRadius + work.tree.thickness;
    if (Math.abs(wall.bend.angle) < 90 - NEAR) return [];
    return [{ at: p[0] + Math.sign(wall.at - p[0]) * out, panel: wall.panel, by: 'outside' }];
  });
}

/** Flat sheet that goes on over a line: where that lies, how far off the edge, and from where to where along it. */
interface Extent {
  readonly x: number;
  readonly off: number;
  readonly y: readonly [number, number];
}

/** True when enough of an edge is left beside what still goes on flat there for a stop to touch. */
function isFree(p: Vec3, q: Vec3, flats: readonly Extent[]): boolean {
  const [from, to] = [Math.min(p[1], q[1]), Math.max(p[1], q[1])];
  const on = flats.find((f) => Math.abs(f.x - p[0]) < f.off + 0.01 && f.y[1] > from && f.y[0] < to);
  return on === undefined || Math.max(on.y[0] - from, to - on.y[1]) > LEAST_EDGE;
}

/** Bends at a panel that are made already, with their mould lines in its frame: its own, and those of what hangs on it. */
function wallsOn(
  { panels }: FoldTree,
  panel: number,
  stage: StageOf,
): readonly { readonly bend: TreeBend; readonly mould: Pose; readonly panel: number }[] {
  return panels.flatMap(({ bend, parent }, i) => {
    if (bend === null || stage(i) === 'flat') return [];
    if (i === panel) return [{ bend, mould: homePose(), panel: parent }];
    return parent === panel ? [{ bend, mould: mouldFrame(bend), panel: i }] : [];
  });
}
