import type { Pose } from '@tinwright/core';
import { compose3, lazy } from '@tinwright/core/internal';
import { inverse, poseInParent, type Stage, type TreeBend, type TreePanel } from './fold-tree.js';
import { acrossFrame, type LineFrame } from './line.js';
import { type Mask, maskOf, NONE, union } from './mask.js';
import type { Work } from './operations.js';
import { stageOf } from './stage.js';

/** Where panels stand under a line, state by state. */
export interface LinePoses {
  /** Pose of a panel in the machine before the stroke. */
  readonly at: (panel: number, done: Mask) => Pose;
  /** Steps of the bends between the line and a panel: no others move it. */
  readonly steps: (panel: number) => Mask;
  /** Panels whose bends those are. */
  readonly bends: (panel: number) => readonly number[];
}

/** Poses over the bend of a panel: of it in its parent's frame, or of its parent in its own. */
export type HingeBook = (panel: number, seen: 'parent' | 'panel', stage: Stage) => Pose;

/** Poses over the bends of a part, each made once for all its lines. */
export function hingeBook(tree: Work['tree']): HingeBook {
  const byStage = (pose: (stage: Stage) => Pose) => ({
    flat: lazy(() => pose('flat')),
    folded: lazy(() => pose('folded')),
    done: lazy(() => pose('done')),
  });
  const known = tree.panels.map((_, panel) => ({
    parent: byStage((s) => poseInParent(tree, panel, s)),
    panel: byStage((s) => inverse(poseInParent(tree, panel, s))),
  }));
  return (panel, seen, stage) => (known[panel] as (typeof known)[number])[seen][stage]();
}

/** A panel as it is come to from the line. */
interface Link {
  readonly at: (done: Mask) => Pose;
  readonly steps: Mask;
  readonly bends: readonly number[];
}

/**
 * Poses from the line outwards, each from the one before it: a state that is like the last one is computed only from where
 * it differs. The free side stands as far out as it is in the end, since it turns rigidly about the hinge.
 */
export function linePoses(work: Work, frame: LineFrame, hinges: HingeBook): LinePoses {
  const { tree } = work;
  const links = lazy(() => linked(work, frame, hinges));
  const of = (panel: number): Link => {
    const link = links().get(panel);
    if (link === undefined) throw new RangeError(`panel ${panel} of ${tree.panels.length} hangs on nothing`);
    return link;
  };
  return {
    at: (panel, done) => of(panel).at(done),
    steps: (panel) => of(panel).steps,
    bends: (panel) => of(panel).bends,
  };
}

function linked(work: Work, frame: LineFrame, hinges: HingeBook): ReadonlyMap<number, Link> {
  const { tree } = work;
  const hung = hanging(work);
  const links = new Map<number, Link>();
  const [first] = frame.parents as [number];
  const own = new Set(frame.children);
  /** Everything that is come to from a panel, but over the line itself. */
  const walk = (from: number, link: Link): void => {
    if (links.has(from)) return;
    links.set(from, link);
    const { parent } = tree.panels[from] as TreePanel;
    if (parent >= 0 && !own.has(from) && !links.has(parent))
      walk(
        parent,
        onwards(work, link, from, (s) => hinges(from, 'panel', s)),
      );
    for (const child of hung[from] ?? [])
      if (!own.has(child) && !links.has(child))
        walk(
          child,
          onwards(work, link, child, (s) => hinges(child, 'parent', s)),
        );
  };
  walk(first, { at: () => frame.pose, steps: NONE, bends: [] });
  frame.children.forEach((child, i) => {
    const parent = links.get(frame.parents[i] as number) as Link;
    const { bend } = tree.panels[child] as TreePanel & { bend: TreeBend };
    const across = acrossFrame(frame, bend);
    const at = lastOf(parent.steps, (done) => compose3(parent.at(done), across));
    walk(child, { at, steps: parent.steps, bends: [] });
  });
  return links;
}

/** Panels that hang on each. */
function hanging({ tree }: Work): readonly (readonly number[])[] {
  return tree.panels.map((_, p) => tree.panels.flatMap((q, i) => (q.parent === p ? [i] : [])));
}

/** One panel further out, over the bend of a panel. */
function onwards(work: Work, from: Link, panel: number, pose: (stage: Stage) => Pose): Link {
  const [first, last] = [work.first[panel] as number, work.last[panel] as number];
  const steps = union(from.steps, union(bit(first), bit(last)));
  const at = lastOf(steps, (done) => compose3(from.at(done), pose(stageOf(work, done)(panel))));
  return { at, steps, bends: [...from.bends, panel] };
}

const bit = (step: number): Mask => (step < 0 ? NONE : maskOf([step]));

/** A function of a state that hangs on some steps alone, its last answer kept: states that follow each other are much alike. */
function lastOf<T>(steps: Mask, make: (done: Mask) => T): (done: Mask) => T {
  let [low, high] = [-1, -1];
  let last: T;
  return (done) => {
    const [l, h] = [done.low & steps.low, done.high & steps.high];
    if (l === low && h === high) return last;
    last = make(done);
    [low, high] = [l, h];
    return last;
  };
}
