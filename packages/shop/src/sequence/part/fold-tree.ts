import type { Part, PartPanel, Point, Pose } from '@tinwright/core';
import type { EdgeFold } from '@tinwright/core/family';
import {
  bentPose,
  compose3,
  convexPieces,
  dot3,
  homePose,
  radians,
  type Turn,
} from '@tinwright/core/internal';

/** Inside radius a machine is set for at a bend, mm. */
export function setRadius({ insideRadius }: FoldTree, bend: TreeBend): number {
  return bend.hem === null ? bend.insideRadius : insideRadius;
}

/** How far a bend has come: not at all, folded past for a hem, or done. */
export type Stage = 'flat' | 'folded' | 'done';

/** A panel of the part with the bend it hangs by, in the order of the part. */
export interface TreePanel {
  readonly id: string;
  /** Index of the panel it hangs on; -1 for the first. */
  readonly parent: number;
  readonly panel: PartPanel;
  readonly pieces: readonly (readonly Point[])[];
  readonly bend: TreeBend | null;
}

/** A bend, as bending it needs it. mm, degrees */
export interface TreeBend {
  /** Bent through, signed. */
  readonly angle: number;
  readonly insideRadius: number;
  /** Width of the metal that bends, on the flat. */
  readonly allowance: number;
  /** From the line the panels beside it are authored to, back to a tangent line. */
  readonly setback: number;
  /** Outside setback of the formed bend. */
  readonly outside: number;
  readonly hem: EdgeFold | null;
  /** Ends of the bent material along the hinge's x. */
  readonly ends: readonly [number, number];
  readonly hinge: NonNullable<PartPanel['hang']>['hinge'];
}

/** A part as it is folded, bend by bend. mm */
export interface FoldTree {
  readonly thickness: number;
  /** Inside radius of the sheet: hems are folded with the set-back that gives it. */
  readonly insideRadius: number;
  readonly panels: readonly TreePanel[];
  /** How a hem is folded before it is closed. */
  readonly fold: Fold;
}

/** A fold that is not closed: degrees it is folded through, and the set-back it is folded with where a leaf does it, mm. */
export interface Fold {
  readonly angle: number;
  readonly setBack: number | null;
}

/** @param fold how a hem is folded before it is closed */
export function foldTree(part: Part, fold: Fold): FoldTree {
  const index = new Map(part.panels.map((p, i) => [p.id, i]));
  const panels = part.panels.map((panel): TreePanel => {
    const { hang } = panel;
    return {
      id: panel.id,
      parent: hang === null ? -1 : (index.get(hang.bend.parent) as number),
      panel,
      pieces: convexPieces(panel.shape.map((e) => e.from)),
      bend: hang === null ? null : treeBend(hang),
    };
  });
  return { thickness: part.sheet.thickness, insideRadius: part.sheet.insideRadius, panels, fold };
}

function treeBend({ bend, hinge, zone }: NonNullable<PartPanel['hang']>): TreeBend {
  const { angle, insideRadius, metal, setback, hem } = bend;
  // slanted ends count as far as their shorter side
  const ends = [
    Math.max(zone.parentSide[0], zone.childSide[0]),
    Math.min(zone.parentSide[1], zone.childSide[1]),
  ] as const;
  return {
    angle,
    insideRadius,
    allowance: metal.width,
    setback: metal.setback,
    outside: setback,
    hem,
    ends,
    hinge,
  };
}

/** The bend as a turn at a stage. */
export function turnAt(tree: FoldTree, bend: TreeBend, stage: Stage): Turn | null {
  const { angle, setback, insideRadius } = bend;
  if (stage === 'flat') return null;
  return stage === 'done' ? { angle, insideRadius, setback } : foldedTurn(tree, bend).turn;
}

/**
 * A hem folded, not closed: all its metal wound up, or as much as the room before the nose takes, R = s / tan(A/2) − T,
 * and what is left of it lies flat beyond. mm
 */
export function foldedTurn(
  { thickness, fold }: FoldTree,
  { angle, setback, allowance }: TreeBend,
): { readonly turn: Turn; readonly left: number } {
  const through = Math.min(fold.angle, Math.abs(angle));
  const whole = allowance / radians(through) - thickness / 2;
  const room = fold.setBack === null ? whole : fold.setBack / Math.tan(radians(through) / 2) - thickness;
  const insideRadius = Math.max(0, Math.min(whole, room));
  const left = Math.max(0, allowance - radians(through) * (insideRadius + thickness / 2));
  return { turn: { angle: Math.sign(angle) * through, insideRadius, setback }, left };
}

/** Pose of a panel in its parent's frame, its bend at a stage. */
export function poseInParent(tree: FoldTree, index: number, stage: Stage): Pose {
  const { bend } = tree.panels[index] as TreePanel;
  if (bend === null) return homePose();
  const turn = turnAt(tree, bend, stage);
  if (turn !== null) {
    const bent = bentPose(homePose(), bend.hinge, turn, tree.thickness);
    const left = stage === 'folded' ? foldedTurn(tree, bend).left : 0;
    return left === 0 ? bent : compose3(bent, homePose([0, left, 0]));
  }
  // on the flat the panel lies a deduction nearer than its mould line
  return compose3(mouldFrame(bend), homePose([0, bend.allowance - 2 * bend.setback, 0]));
}

/** The frame of a flange whose mould line lies on its parent's, in the parent's frame. */
export function mouldFrame({ hinge }: TreeBend): Pose {
  const { origin, x, y } = hinge.frame;
  return {
    origin: [origin[0], origin[1], 0],
    x: [x[0], x[1], 0],
    y: [y[0], y[1], 0],
    z: [0, 0, 1],
  };
}

/** The pose that takes back what another does. */
export function inverse({ origin, x, y, z }: Pose): Pose {
  const turn = {
    x: [x[0], y[0], z[0]],
    y: [x[1], y[1], z[1]],
    z: [x[2], y[2], z[2]],
  } as const;
  return { origin: [-dot3(origin, x), -dot3(origin, y), -dot3(origin, z)], ...turn };
}

/** Where a panel stands seen from another one, bends at their stages. */
export function poseFrom(tree: FoldTree, from: number, to: number, stage: (panel: number) => Stage): Pose {
  const up = ancestors(tree, from);
  const down = ancestors(tree, to);
  const shared = up.find((p) => down.includes(p)) as number;
  const chain = (list: readonly number[]) =>
    list
      .slice(0, list.indexOf(shared))
      .toReversed()
      .reduce<Pose>((pose, p) => compose3(pose, poseInParent(tree, p, stage(p))), homePose());
  return compose3(inverse(chain(up)), chain(down));
}

/** The panel itself, its parent, and so on up to the first. */
export function ancestors(tree: FoldTree, panel: number): readonly number[] {
  const list: number[] = [];
  for (let p = panel; p >= 0; p = (tree.panels[p] as TreePanel).parent) list.push(p);
  return list;
}

/** Panels whose bends lie between two panels: those that turn when one of these is bent. */
export function bendsBetween(tree: FoldTree, from: number, to: number): readonly number[] {
  const [up, down] = [ancestors(tree, from), ancestors(tree, to)];
  return [...up.filter((p) => !down.includes(p)), ...down.filter((p) => !up.includes(p))];
}

/** A panel and everything that hangs on it. */
export function subtree(tree: FoldTree, root: number): readonly number[] {
  return tree.panels.map((_, i) => i).filter((i) => ancestors(tree, i).includes(root));
}
