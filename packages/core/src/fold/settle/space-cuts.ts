import { distance } from '../../plane/point.js';
import { radians } from '../../units/angle.js';
import { bendAxis } from '../draft/hinge.js';
import { reaches } from '../draft/least.js';
import type { Lookup } from '../draft/lookup.js';
import { clip, edgeIndex, type HalfPlane } from '../draft/outline.js';
import { add3, dot3, type Pose, scale3 } from '../draft/space.js';
import type { Edge, Outline, Panel } from '../draft/tree.js';
import { type HalfSpace, onPanel } from './separate.js';

/** A half plane to cut a panel with, in the panel's own frame. */
export interface PanelCut {
  readonly panel: string;
  readonly half: HalfPlane;
}

/** What the cuts of one part are computed from. */
export interface CornerScene {
  readonly lookup: Lookup;
  /** Pose of a panel with the setbacks of its real bends, whatever the rule. */
  readonly pose: (id: string) => Pose;
  readonly thickness: number;
}

/** A flange, and panel by panel what hangs on far edges from it on. */
export function chain(scene: CornerScene, flange: Panel): readonly Panel[] {
  const next = scene.lookup.on(flange.id, 'far');
  return next === null ? [flange] : [flange, ...chain(scene, next)];
}

/** Cut a flange and whatever hangs on its far edge with one half space. */
export function spaceCuts(scene: CornerScene, flange: Panel, half: HalfSpace): readonly PanelCut[] {
  return chain(scene, flange).map(({ id }) => ({
    panel: id,
    half: onPanel(half, scene.pose(id), scene.thickness),
  }));
}

/** What hangs on a flange: its panels, and the folds they hang by, which bulge past the panels they join. */
export const beyondCuts = (scene: CornerScene, flange: Panel, half: HalfSpace): readonly PanelCut[] =>
  chain(scene, flange)
    .slice(1)
    .flatMap((panel) => hungCuts(scene, panel, half));

/** What is bent on at the end of a flange, its folds and whatever hangs on its far edge, cut with one half space. */
export const finishCuts = (scene: CornerScene, finish: Panel, half: HalfSpace): readonly PanelCut[] =>
  chain(scene, finish).flatMap((panel) => hungCuts(scene, panel, half));

/** A panel and the fold it hangs by. */
function hungCuts(scene: CornerScene, panel: Panel, half: HalfSpace): readonly PanelCut[] {
  const cut = { panel: panel.id, half: onPanel(half, scene.pose(panel.id), scene.thickness) };
  const fold = foldCut(scene, panel, half);
  return fold === null ? [cut] : [cut, fold];
}

/** The half space upright on a panel over a half plane of it. */
export function upright({ x, y, c }: HalfPlane, pose: Pose): HalfSpace {
  const n = add3(scale3(pose.x, x), scale3(pose.y, y));
  return { n, c: c + dot3(n, pose.origin) };
}

/** True where cuts of its parent go through the edge that a panel hangs on, and leave some of it. */
export function goesOn({ lookup }: CornerScene, { bend }: Panel, cuts: readonly PanelCut[]): boolean {
  if (bend === null) return false;
  const { outline } = lookup.panel(bend.parent);
  const i = edgeIndex(outline, bend.edge);
  const left = cuts.reduce<Outline>((o, { half }) => clip(o, half, 'cut'), outline);
  const k = left.findIndex(({ name }) => name === bend.edge);
  return k >= 0 && !reaches(lengthOf(left, k), lengthOf(outline, i));
}

const lengthOf = (outline: Outline, i: number): number =>
  distance((outline[i] as Edge).from, (outline[(i + 1) % outline.length] as Edge).from);

/** Ends of a fold where its whole ring lies in a half space; null where that says nothing of its ends. */
function foldCut(
  { lookup, pose, thickness }: CornerScene,
  panel: Panel,
  { n, c }: HalfSpace,
): PanelCut | null {
  const { bend } = panel;
  if (bend === null) return null;
  const parent = lookup.panel(bend.parent);
  const hinge = lookup.hinge(parent, edgeIndex(parent.outline, bend.edge));
  const axis = bendAxis(pose(bend.parent), hinge, bend, thickness);
  const along = dot3(n, axis.x);
  if (Math.abs(along) < 1e-6) return null;
  const least = ringReach(
    dot3(n, axis.y),
    dot3(n, axis.z),
    radians(Math.abs(bend.angle)),
    bend.insideRadius,
    thickness,
  );
  return { panel: panel.id, half: { x: along, y: 0, c: c - dot3(n, axis.origin) - least } };
}

/** Least value of r·(y·cos φ + z·sin φ) over a ring of this turn. */
function ringReach(y: number, z: number, sweep: number, insideRadius: number, thickness: number): number {
  const lowest = (((Math.atan2(z, y) + Math.PI) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  let least = Infinity;
  for (const phi of lowest < sweep ? [0, sweep, lowest] : [0, sweep]) {
    const reach = y * Math.cos(phi) + z * Math.sin(phi);
    least = Math.min(least, insideRadius * reach, (insideRadius + thickness) * reach);
  }
  return least;
}
