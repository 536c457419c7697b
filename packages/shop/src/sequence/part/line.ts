import type { Pose } from '@tinwright/core';
import { compose3, homePose, place3, polygonArea } from '@tinwright/core/internal';
import {
  bendsBetween,
  type FoldTree,
  mouldFrame,
  poseFrom,
  type Stage,
  subtree,
  type TreeBend,
  type TreePanel,
} from './fold-tree.js';
import { type HingeReach, hingeReach } from './hinge-reach.js';
import { type BentLump, homeOf } from './lumps.js';
import type { LineStroke, Work } from './operations.js';

/** Which side of a line is held: the panel the bend hangs on, or the one that hangs by it. */
export type HeldSide = 'parent' | 'child';

/**
 * A line under the tool: poses bring a panel's frame into the machine's, x from the held side to the free one, z up,
 * y along the line. The hinge of a leaf lies at the origin, where the outer faces of both sides meet once it is bent; the
 * sheet between z = 0 and T with the side it bends to on top.
 */
export interface LineFrame {
  readonly held: HeldSide;
  /** Panels the line's bends hang on, first one first, and those that turn. */
  readonly parents: readonly number[];
  readonly children: readonly number[];
  /** Panels that move with the free side, by index. */
  readonly moves: readonly boolean[];
  /** Tangent lines of both sides behind and in front of the hinge, mm. */
  readonly reach: HingeReach;
  /** From the first parent's frame to the machine. */
  readonly pose: Pose;
  /** True when the side that turns has more sheet than the one that is held. */
  readonly swings: boolean;
  /** Ends of the bent material along y, one pair a bend. */
  readonly spans: readonly (readonly [number, number])[];
}

export function lineFrame(work: Work, operation: LineStroke, held: HeldSide): LineFrame {
  const { tree } = work;
  const children = operation.panels;
  const bends = children.map((c) => (tree.panels[c] as TreePanel & { bend: TreeBend }).bend);
  const parents = children.map((c) => (tree.panels[c] as TreePanel).parent);
  const [bend] = bends as [TreeBend];
  const turned = new Set(children.flatMap((c) => subtree(tree, c)));
  const reach = hingeReach(tree, bend, operation.action);
  const mould = machinePose(bend, held, operation.angle > 0 ? 'up' : 'down', tree.thickness);
  // the side the line hangs on lies with its tangent line where the hinge asks for it
  const [x, y, z] = mould.origin;
  const off = held === 'parent' ? bend.setback - reach.held : reach.free - bend.setback;
  const pose: Pose = { ...mould, origin: [x + off, y, z] };
  const spans = bends.map((b, i): readonly [number, number] => {
    const at = compose3(
      pose,
      compose3(poseFrom(tree, parents[0] as number, parents[i] as number, FLAT), mouldFrame(b)),
    );
    const ends = b.ends.map((x) => place3(at, [x, 0, 0])[1]);
    return [Math.min(...ends), Math.max(...ends)];
  });
  const moves = tree.panels.map((_, i) => turned.has(i) === (held === 'parent'));
  const area = (side: boolean) => tree.panels.reduce((s, p, i) => s + (moves[i] === side ? areaOf(p) : 0), 0);
  return { held, reach, parents, children, moves, swings: area(true) > 1.01 * area(false), pose, spans };
}

/** Length of a line from end to end, mm. */
export function lineLength({ spans }: Pick<LineFrame, 'spans'>): number {
  const [from, to] = spanOf(spans);
  return to - from;
}

/** From the first end of intervals to the last. */
export const spanOf = (intervals: LineFrame['spans']): readonly [from: number, to: number] => [
  Math.min(...intervals.map(([from]) => from)),
  Math.max(...intervals.map(([, to]) => to)),
];

/**
 * From the tangent line on the held side to the edge of the nose, towards the bend, mm: the hinge lies so far in front of
 * that line, the nose stands a set-back behind the hinge. With a set-back of T at 90°, where the nose gives the radius,
 * that is one inside radius (FAA-H-8083-31: sight line one radius from the bend tangent line that goes under the nose);
 * with a set-back of tan(A/2) (R + T), where the room before a sharp nose does, it is nothing.
 * @param setBack of the fingers, mm
 */
export const sightOffset = ({ reach }: Pick<LineFrame, 'reach'>, setBack: number): number =>
  reach.held - setBack;

const areaOf = ({ pieces }: TreePanel) => pieces.reduce((s, p) => s + polygonArea(p), 0);

const FLAT = (): Stage => 'flat';

/** Face up is the one the bend turns to; forward is away from the held side. */
function machinePose({ hinge }: TreeBend, held: HeldSide, turn: 'up' | 'down', thickness: number): Pose {
  const { origin, x, y } = hinge.frame;
  const [sx, sy] = held === 'parent' ? [turn === 'up' ? -1 : 1, 1] : [turn === 'up' ? 1 : -1, -1];
  const sz = turn === 'up' ? 1 : -1;
  // rows: forward = sy·v, along = sx·u, up = sz·z with u along the hinge and v away from the parent
  const along: Pose = {
    origin: [0, 0, turn === 'up' ? 0 : thickness],
    x: [sy * y[0], sx * x[0], 0],
    y: [sy * y[1], sx * x[1], 0],
    z: [0, 0, sz],
  };
  const [ox, oy] = origin;
  const at = place3(along, [ox, oy, 0]);
  return { ...along, origin: [along.origin[0] - at[0], along.origin[1] - at[1], along.origin[2]] };
}

/**
 * Pose of a lump's home panel in the machine before the stroke, bends at their stages. The free side stands as far out as
 * it is in the end: it turns rigidly about the hinge.
 */
export function poseInMachine(
  { tree }: Work,
  frame: LineFrame,
  lump: BentLump,
  stage: (panel: number) => Stage,
): Pose {
  const home = homeOf(tree, lump);
  const [first] = frame.parents as [number];
  const branch = frame.children.findIndex((c) => subtreeHolds(tree, c, home));
  if (branch < 0) return compose3(frame.pose, poseFrom(tree, first, home, stage));
  const child = frame.children[branch] as number;
  const { bend } = tree.panels[child] as TreePanel & { bend: TreeBend };
  const parent = poseFrom(tree, first, frame.parents[branch] as number, stage);
  return compose3(
    frame.pose,
    compose3(parent, compose3(acrossFrame(frame, bend), poseFrom(tree, child, home, stage))),
  );
}

/** The side that hangs by a line in the frame of the other one, as both lie before the stroke. */
export function acrossFrame({ reach }: Pick<LineFrame, 'reach'>, bend: TreeBend): Pose {
  return compose3(mouldFrame(bend), homePose([0, reach.held + reach.free - 2 * bend.setback, 0]));
}

function subtreeHolds(tree: FoldTree, root: number, panel: number): boolean {
  for (let p = panel; p >= 0; p = (tree.panels[p] as TreePanel).parent) if (p === root) return true;
  return false;
}

/** Bends (by the panel that turns) whose stage decides where a lump stands before a stroke on a line. */
export function bendsTo({ tree }: Work, { parents, children }: LineFrame, lump: BentLump): readonly number[] {
  const home = homeOf(tree, lump);
  const branch = children.findIndex((c) => subtreeHolds(tree, c, home));
  const from = branch < 0 ? (parents[0] as number) : (children[branch] as number);
  const chain = bendsBetween(tree, from, home);
  return lump.kind === 'bend' && !chain.includes(lump.panel) ? [...chain, lump.panel] : chain;
}
