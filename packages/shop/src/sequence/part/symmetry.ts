import type { Point, Pose } from '@tinwright/core';
import { place3 } from '@tinwright/core/internal';
import { type Motion, motionsBetween, moved } from './flat-motion.js';
import { type FoldTree, mouldFrame, poseFrom, type TreeBend, type TreePanel } from './fold-tree.js';
import { type Mask, maskOf, sameMask } from './mask.js';
import type { BendStage, LineStroke, Work } from './operations.js';

/** A way to lay a flat part on itself, turned or turned over: every panel on one like it, every bend on one like it. */
export interface Symmetry {
  /** True when it is turned over. */
  readonly over: boolean;
  /** By step and by operation: what it is laid on. */
  readonly steps: readonly number[];
  readonly operations: readonly LineStroke[];
  /** By operation: true when the panels that hang by the line come to lie on those it hangs on. */
  readonly swapped: readonly boolean[];
}

const EVEN = 1e-6; // mm, degrees

/**
 * Every way to lay a part on itself but the one that leaves it as it is. A part is moved as a body, never mirrored: so it
 * stands under every machine exactly as its likeness does.
 */
export function symmetriesOf(work: Work): readonly Symmetry[] {
  const flat = work.tree.panels.map((_, i) => flatPanel(work.tree, i));
  const [first] = flat;
  if (first === undefined) return [];
  return flat
    .flatMap((panel) => motionsBetween(first.outline, panel.outline, EVEN))
    .flatMap((motion): readonly Symmetry[] => {
      const found = laidOn(work, flat, motion);
      return found === null || found.steps.every((s, i) => s === i) ? [] : [found];
    });
}

/** A panel as it lies on the flat. */
interface FlatPanel {
  readonly pose: Pose;
  readonly outline: readonly Point[];
  readonly pieces: readonly (readonly Point[])[];
}

function flatPanel(tree: FoldTree, index: number): FlatPanel {
  const pose = poseFrom(tree, 0, index, () => 'flat');
  const { panel, pieces } = tree.panels[index] as TreePanel;
  const at = ([x, y]: Point): Point => flatPoint(pose, x, y);
  return { pose, outline: panel.shape.map((e) => at(e.from)), pieces: pieces.map((p) => p.map(at)) };
}

function flatPoint(pose: Pose, x: number, y: number): Point {
  const [u, v] = place3(pose, [x, y, 0]);
  return [u, v];
}

function laidOn(work: Work, flat: readonly FlatPanel[], motion: Motion): Symmetry | null {
  const panels: number[] = [];
  for (const { pieces } of flat) {
    const image = pieces.map((p) => p.map((q) => moved(motion, q)));
    const on = flat.findIndex((f) => samePieces(image, f.pieces));
    if (on < 0) return null;
    panels.push(on);
  }
  const hung = work.tree.panels.map((p, i) =>
    p.bend === null ? i : bendOn(work.tree, flat, motion, panels, i),
  );
  if (hung.includes(null)) return null;
  const steps = work.steps.map((s) => stepOn(work, s, hung[s.panel] as number));
  const operations = work.operations.map((o) =>
    operationOn(work, o, maskOf(o.steps.map((s) => steps[s] as number))),
  );
  if (operations.includes(null)) return null;
  const swapped = work.operations.map((o) => {
    const child = o.panels[0] as number;
    return hung[child] !== panels[child];
  });
  return { over: motion.over, steps, operations: operations as readonly LineStroke[], swapped };
}

/** The panel whose bend the bend of a panel is laid on; null where it is not one like it. */
function bendOn(
  tree: FoldTree,
  flat: readonly FlatPanel[],
  motion: Motion,
  panels: readonly number[],
  child: number,
): number | null {
  const { bend, parent } = tree.panels[child] as TreePanel & { bend: TreeBend };
  const [childOn, parentOn] = [panels[child] as number, panels[parent] as number];
  const parentOf = (p: number) => (tree.panels[p] as TreePanel).parent;
  // a hem has a side that is the hem
  const turned = bend.hem === null && parentOf(parentOn) === childOn;
  if (!turned && parentOf(childOn) !== parentOn) return null;
  const on = turned ? parentOn : childOn;
  const other = (tree.panels[on] as TreePanel & { bend: TreeBend }).bend;
  const frame = mouldFrame(other);
  const pose = (flat[parentOf(on)] as FlatPanel).pose;
  const along = ([x, y]: Point): number => {
    const [u, v] = flatPoint(pose, frame.origin[0], frame.origin[1]);
    const [a, b] = flatPoint({ ...pose, origin: [0, 0, 0] }, frame.x[0], frame.x[1]);
    return (x - u) * a + (y - v) * b;
  };
  const own = mouldFrame(bend);
  const ends = bend.ends
    .map((e) =>
      flatPoint((flat[parent] as FlatPanel).pose, own.origin[0] + own.x[0] * e, own.origin[1] + own.x[1] * e),
    )
    .map((p) => along(moved(motion, p)))
    .toSorted((a, b) => a - b);
  const same =
    sameBend(bend, other, motion.over) &&
    ends.every((e, i) => Math.abs(e - (other.ends[i] as number)) < EVEN);
  return same ? on : null;
}

const sameBend = (a: TreeBend, b: TreeBend, over: boolean): boolean =>
  a.hem === b.hem &&
  Math.abs(a.angle - (over ? -b.angle : b.angle)) < EVEN &&
  (['insideRadius', 'allowance', 'setback', 'outside'] as const).every((k) => Math.abs(a[k] - b[k]) < EVEN);

const stepOn = ({ steps }: Work, { action }: BendStage, panel: number): number =>
  steps.findIndex((s) => s.panel === panel && s.action === action);

const operationOn = ({ operations }: Work, { action }: LineStroke, mask: Mask): LineStroke | null =>
  operations.find((o) => o.action === action && sameMask(o.mask, mask)) ?? null;

/** True when every convex piece is there, corner for corner. */
function samePieces(a: readonly (readonly Point[])[], b: readonly (readonly Point[])[]): boolean {
  const near = ([x, y]: Point, [u, v]: Point) => Math.abs(x - u) < EVEN && Math.abs(y - v) < EVEN;
  const same = (p: readonly Point[], q: readonly Point[]) =>
    p.length === q.length && p.every((v) => q.some((w) => near(v, w)));
  return a.length === b.length && a.every((p) => b.some((q) => same(p, q)));
}
