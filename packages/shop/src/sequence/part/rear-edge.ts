import type { Pose, Vec3 } from '@tinwright/core';
import { compose3, homePose, lazy, place3 } from '@tinwright/core/internal';
import { type FoldTree, mouldFrame, type TreeBend, type TreePanel } from './fold-tree.js';
import { bendsTo, type HeldSide, type LineFrame, lineFrame, poseInMachine } from './line.js';
import { lumpsOf } from './lumps.js';
import { both, isEmpty, type Mask, maskOf, NONE, union, within } from './mask.js';
import type { LineStroke, Work } from './operations.js';

/** Of straight edge that a stop needs, mm; judgement. */
export const LEAST_EDGE = 10;
const NEAR = 1e-6;

/** A panel that lies against a stop: by its edge, or by its outside where it is bent up. */
export interface Touches {
  readonly panel: string;
  readonly by: 'edge' | 'outside';
  /** Where along the line the middle of a stop can stand, from the left end of the bent material as the operator sees it. mm */
  readonly at: number;
}

/** What lies against a stop or gauge, and how far behind the tangent line on the held side. mm */
export interface RearEdge {
  readonly distance: number;
  readonly touches: Omit<Touches, 'at'>;
}

/** The same, and the states in which it is there. */
export interface PossibleEdge extends RearEdge {
  /** From where to where along the line in the machine, mm. */
  readonly along: readonly [number, number];
  /** Steps that are done by then, and steps that are not. */
  readonly bent: Mask;
  readonly flat: Mask;
}

/** Edges behind every line of a part with either side held, the furthest first. */
export type RearEdges = (operation: LineStroke, held: HeldSide) => readonly PossibleEdge[];

/**
 * Edges that run along a line and can lie against a stop behind it, on what is flat on the held side: free ones, or the
 * outside of a wall or fold bent square or further.
 */
export function rearEdges(work: Work): RearEdges {
  const of = (o: LineStroke, held: HeldSide) => lazy(() => edgesBehind(work, lineFrame(work, o, held)));
  const lines = work.operations.map((o) => ({ parent: of(o, 'parent'), child: of(o, 'child') }));
  return ({ index }, held) => (lines[index] as (typeof lines)[number])[held]();
}

/** True for an edge that is there in a state. */
export const isThere = ({ bent, flat }: PossibleEdge, done: Mask): boolean =>
  within(bent, done) && isEmpty(both(flat, done));

/** Settings of a stop that are one, mm: to a twentieth of a millimetre; judgement. */
export const equalSetting = (distance: number): number => Math.round(distance * 20 + 1e-6) / 20;

export type Reach = readonly [nearest: number, furthest: number];

/** True for an edge that a stop comes to at all. */
export const isWithin = ({ distance }: RearEdge, [nearest, furthest]: Reach): boolean =>
  distance > 0 && distance >= nearest - NEAR && distance <= furthest + NEAR;

function edgesBehind(work: Work, frame: LineFrame): readonly PossibleEdge[] {
  const edges = lumpsOf(work.tree).flatMap((lump) => {
    if (lump.kind === 'bend' || frame.moves[lump.panel] === true) return [];
    const flat = bendsTo(work, frame, lump)
      .map((p) => begun(work, p))
      .reduce(union, NONE);
    const pose = poseInMachine(work, frame, lump, () => 'flat');
    return edgesOf(work, pose, lump.panel).map((e) => ({ ...e, flat: union(e.flat, flat) }));
  });
  const tangent = -frame.reach.held; // from the hinge
  return edges
    .map(
      ({ at, along, panel, by, bent, flat }): PossibleEdge => ({
        along,
        distance: tangent - at,
        touches: { panel: work.tree.panels[panel]?.id ?? '', by },
        bent,
        flat,
      }),
    )
    .toSorted((a, b) => Math.round(b.distance / NEAR) - Math.round(a.distance / NEAR));
}

/** The first step of a panel's bend: until it is done the bend is flat. */
const begun = ({ first }: Work, panel: number): Mask => {
  const step = first[panel] as number;
  return step < 0 ? NONE : maskOf([step]);
};

interface Edge {
  readonly at: number;
  readonly along: readonly [number, number];
  readonly panel: number;
  readonly by: Touches['by'];
  readonly bent: Mask;
  readonly flat: Mask;
}

/** A bend at a panel: where its mould line lies, what hangs over it, and from where to where along it. */
interface Beside {
  readonly bend: TreeBend;
  readonly panel: number;
  readonly begun: Mask;
  readonly mould: Pose;
  readonly along: readonly [number, number];
}

/** Where the edges of a panel that a stop can touch lie in the machine, forward of the line, and when. */
function edgesOf(work: Work, pose: Pose, panel: number): readonly Edge[] {
  const shape = (work.tree.panels[panel]?.panel.shape ?? []).map((e) => place3(pose, [...e.from, 0]));
  const bends = bendsAt(work, pose, panel);
  return shape.flatMap((p, i): readonly Edge[] => {
    const q = shape[(i + 1) % shape.length] as Vec3;
    if (Math.abs(p[0] - q[0]) > NEAR || Math.abs(p[1] - q[1]) <= LEAST_EDGE) return [];
    // a wall stands on an edge along the line only if it runs along it
    const walls = bends.filter(
      ({ bend, mould }) =>
        Math.abs(mould.x[0]) < NEAR && Math.abs(Math.abs(mould.origin[0] - p[0]) - bend.setback) < 0.01,
    );
    return [...free(p, q, panel, { walls, bends }), ...outsides(work.tree, p, walls)].filter((e) =>
      isEmpty(both(e.bent, e.flat)),
    );
  });
}

/** An edge that is free: no wall on it is bent, and enough of it is left beside what still goes on flat there. */
function free(
  p: Vec3,
  q: Vec3,
  panel: number,
  { walls, bends }: { readonly walls: readonly Beside[]; readonly bends: readonly Beside[] },
): readonly Edge[] {
  const [from, to] = [Math.min(p[1], q[1]), Math.max(p[1], q[1])];
  const none = walls.map((w) => w.begun).reduce(union, NONE);
  const over = bends.filter(
    ({ bend, mould, along }) =>
      Math.abs(mould.origin[0] - p[0]) < bend.setback + 0.01 && along[1] > from && along[0] < to,
  );
  const edge = { at: p[0], along: [from, to], panel, by: 'edge' } as const;
  const found: Edge[] = [];
  // the first that still lies flat decides
  let bent = NONE;
  for (const { along, begun } of over) {
    if (Math.max(along[0] - from, to - along[1]) > LEAST_EDGE)
      found.push({ ...edge, bent, flat: union(none, begun) });
    if (isEmpty(begun)) return found; // never bent
    bent = union(bent, begun);
  }
  return [...found, { ...edge, bent, flat: none }];
}

/** Outsides of walls on an edge, of several that are bent the first one. */
function outsides({ thickness }: FoldTree, p: Vec3, walls: readonly Beside[]): readonly Edge[] {
  let flat = NONE;
  return walls.flatMap(({ bend, mould, panel, begun, along }): readonly Edge[] => {
    const before = flat;
    flat = union(flat, begun);
    // bent square or further, the metal reaches as far as the outer tangent
    const out = bend.insideRadius + thickness;
    if (isEmpty(begun) || Math.abs(bend.angle) < 90 - NEAR) return [];
    const at = p[0] + Math.sign(mould.origin[0] - p[0]) * out;
    return [{ at, along, panel, by: 'outside', bent: begun, flat: before }];
  });
}

/** Bends of a panel: its own, and those of what hangs on it. */
function bendsAt(work: Work, pose: Pose, panel: number): readonly Beside[] {
  return work.tree.panels.flatMap(({ bend, parent }: TreePanel, i): readonly Beside[] => {
    if (bend === null || ![i, parent].includes(panel)) return [];
    const mould = compose3(pose, i === panel ? homePose() : mouldFrame(bend));
    const ends = bend.ends.map((x) => place3(mould, [x, 0, 0])[1]);
    return [
      {
        bend,
        panel: i === panel ? parent : i,
        begun: begun(work, i),
        mould,
        along: [Math.min(...ends), Math.max(...ends)],
      },
    ];
  });
}
