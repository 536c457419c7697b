import type { Point } from '../plane/point.js';
import { radians } from '../units/angle.js';
import { type Arm, type CornerSide, setBackCorner, sidesAt } from './corner-arms.js';
import type { ArmCut, CornerStyle } from './corner-style.js';
import { bendAxis, hingeAt } from './hinge.js';
import type { Lookup } from './lookup.js';
import { edgeIndex, type HalfPlane } from './outline.js';
import { bisect, type HalfSpace, isFoldedBack, type Meeting, onPanel, sharesPlane } from './separate.js';
import { dot3, type Pose, place3, scale3 } from './space.js';
import type { Edge, Panel } from './tree.js';

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

/** An end of a flange's bend. */
export interface BendEnd {
  readonly panel: string;
  readonly end: 'low' | 'high';
}

/** What one corner asks of the panels round it. */
export interface CornerWork {
  readonly cuts: readonly PanelCut[];
  /** Bends whose end runs to the root of the notch. */
  readonly toRoot: readonly BendEnd[];
  /** Where both bends of the host are set back, if it has two there: the root of the notch. */
  readonly root: Point | null;
}

/** The work at all corners of a host: first what keeps the formed flanges apart, then what the style asks. */
export function cornerWork(scene: CornerScene, host: Panel, style: CornerStyle): readonly CornerWork[] {
  const n = host.outline.length;
  return host.outline.flatMap((next, i) => {
    const prev = host.outline[(i + n - 1) % n] as Edge;
    if (next.name === 'near' || prev.name === 'near') return []; // settled with the parent's corner
    const [before, after] = sidesAt(scene.lookup, host, i);
    const arms = [before, after].flatMap((s) => s?.tab ?? []);
    if (before !== null && after !== null) {
      const root = setBackCorner(scene.lookup, host, i);
      return pairWork(scene, style, before, after, root);
    }
    // a tab next to a free edge of the host still has to clear the bend it stands on
    const cuts = arms.flatMap((tab) => styleCuts(scene, style, tab, false));
    return arms.length === 0 ? [] : { cuts, toRoot: slanting(style, arms), root: null };
  });
}

/** Where a tab folds round the end of a flange it lies beside the other flange: those two meet. */
function pairWork(
  scene: CornerScene,
  style: CornerStyle,
  before: CornerSide,
  after: CornerSide,
  root: Point,
): CornerWork {
  const [a, b] = [before.tab ?? before.arm, after.tab ?? after.arm];
  const [keepA, keepB] = apart(scene, style, a, b);
  const mitred = style.meet === 'mitre';
  const more =
    style.beyond !== 'free' &&
    [before.arm, after.arm].some(({ flange }) => scene.lookup.on(flange.id, 'far') !== null);
  const beyond = more ? bisect(meeting(scene, before.arm), meeting(scene, after.arm), style.gap) : null;
  const cuts = [
    ...styleCuts(scene, style, a, mitred && keepA !== null),
    ...styleCuts(scene, style, b, mitred && keepB !== null),
    ...(keepA === null ? [] : spaceCuts(scene, a.flange, keepA)),
    ...(keepB === null ? [] : spaceCuts(scene, b.flange, keepB)),
    ...overCuts(scene, a, b, style.gap),
    ...overCuts(scene, b, a, style.gap),
    ...(beyond === null ? [] : beyondCuts(scene, before.arm, beyond[0])),
    ...(beyond === null ? [] : beyondCuts(scene, after.arm, beyond[1])),
  ];
  return { cuts, toRoot: slanting(style, [a, b]), root };
}

/** Folds ending straight stay clear of what stands beside them; flanges may run to the root of the notch. */
function slanting(style: CornerStyle, arms: readonly Arm[]): readonly BendEnd[] {
  if (style.root !== 'apex') return [];
  const upright = arms.filter(({ flange }) => Math.abs(flange.bend?.angle ?? 0) <= 90);
  return upright.map(({ flange, end }) => ({ panel: flange.id, end }));
}

function apart(
  scene: CornerScene,
  style: CornerStyle,
  a: Arm,
  b: Arm,
): readonly [HalfSpace | null, HalfSpace | null] {
  if (style.meet === 'none') return [null, null];
  const [ma, mb] = [meeting(scene, a), meeting(scene, b)];
  const tab = a.edge === null ? a : b.edge === null ? b : null;
  if (style.meet === 'mitre' || tab === null) return bisect(ma, mb, style.gap) ?? [null, null];
  if (!sharesPlane(ma, mb)) return [null, null];
  const above = beyondFar(scene, tab === a ? b.flange : a.flange, style.gap);
  return tab === a ? [above, null] : [null, above];
}

/** A flange folded back over its panel ends clear of the inside of a neighbour that stands up on the same side. */
function overCuts(scene: CornerScene, own: Arm, other: Arm, gap: number): readonly PanelCut[] {
  const [m, o] = [meeting(scene, own), meeting(scene, other)];
  const [folded, upright] = [own.flange.bend?.angle ?? 0, other.flange.bend?.angle ?? 0];
  if (!isFoldedBack(m) || isFoldedBack(o) || folded > 0 !== upright > 0) return [];
  const up = upright > 0 ? 1 : -1; // the inside is the marked face of what is bent up
  const n = scale3(o.pose.z, up);
  const inside = place3(o.pose, [0, 0, up > 0 ? scene.thickness : 0]);
  return spaceCuts(scene, own.flange, { n, c: dot3(n, inside) + gap });
}

/** Beyond the far edge of a flange, in its plane. */
function beyondFar(scene: CornerScene, flange: Panel, gap: number): HalfSpace {
  const pose = scene.pose(flange.id);
  const height = Math.max(...flange.outline.map((e) => e.from[1]));
  return { n: pose.y, c: dot3(pose.y, place3(pose, [0, height, 0])) + gap };
}

function meeting(scene: CornerScene, arm: Arm): Meeting {
  const angle = arm.flange.bend?.angle ?? 0;
  const outside = angle > 0 ? 0 : scene.thickness;
  return {
    angle: Math.abs(angle),
    pose: scene.pose(arm.flange.id),
    corner: [arm.end === 'low' ? 0 : arm.length, 0, outside],
    along: [arm.end === 'low' ? 1 : -1, 0, 0],
  };
}

/** Cut a flange and whatever hangs on its far edge with one half space. */
function spaceCuts(scene: CornerScene, flange: Panel, half: HalfSpace): readonly PanelCut[] {
  return chain(scene, flange).map(({ id }) => ({
    panel: id,
    half: onPanel(half, scene.pose(id), scene.thickness),
  }));
}

/** What hangs on a flange: its panels, and the folds they hang by, which bulge past the panels they join. */
function beyondCuts(scene: CornerScene, { flange }: Arm, half: HalfSpace): readonly PanelCut[] {
  const [, ...rest] = chain(scene, flange);
  return rest.flatMap((panel) => [
    { panel: panel.id, half: onPanel(half, scene.pose(panel.id), scene.thickness) },
    ...foldCut(scene, panel, half),
  ]);
}

/** Ends of a fold where its whole ring lies in a half space. */
function foldCut(
  { lookup, pose, thickness }: CornerScene,
  panel: Panel,
  { n, c }: HalfSpace,
): readonly PanelCut[] {
  const { bend } = panel;
  if (bend === null) return [];
  const parent = lookup.panel(bend.parent).outline;
  const axis = bendAxis(pose(bend.parent), hingeAt(parent, edgeIndex(parent, bend.edge)), bend, thickness);
  const along = dot3(n, axis.x);
  if (Math.abs(along) < 1e-6) return [];
  const least = ringReach(
    dot3(n, axis.y),
    dot3(n, axis.z),
    radians(Math.abs(bend.angle)),
    bend.insideRadius,
    thickness,
  );
  return [{ panel: panel.id, half: { x: along, y: 0, c: c - dot3(n, axis.origin) - least } }];
}

/** Least value of r·(y·cos φ + z·sin φ) over a ring of this turn. */
function ringReach(y: number, z: number, sweep: number, insideRadius: number, thickness: number): number {
  const lowest = (((Math.atan2(z, y) + Math.PI) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  const turns = lowest < sweep ? [0, sweep, lowest] : [0, sweep];
  const values = turns.flatMap((phi) =>
    [insideRadius, insideRadius + thickness].map((r) => r * (y * Math.cos(phi) + z * Math.sin(phi))),
  );
  return Math.min(...values);
}

function chain(scene: CornerScene, flange: Panel): readonly Panel[] {
  const next = scene.lookup.on(flange.id, 'far');
  return next === null ? [flange] : [flange, ...chain(scene, next)];
}

/** The style's cuts of one flange. A straight end goes on through whatever hangs on its far edge. */
function styleCuts(scene: CornerScene, style: CornerStyle, arm: Arm, meets: boolean): readonly PanelCut[] {
  const { bend } = arm.flange;
  if (bend === null) return [];
  const cuts = style.cuts({
    edge: arm.edge,
    start: arm.start,
    tangent: bend.terms.setback,
    angle: Math.abs(bend.angle),
    thickness: scene.thickness,
    meets,
  });
  return cuts.flatMap((cut) => {
    if (cut.d !== 0) return [{ panel: arm.flange.id, half: inFlange(cut, arm, 0) }];
    let shift = 0; // x of a panel down the chain runs along the same line, from where its edge starts
    return chain(scene, arm.flange).map((panel, i, list) => {
      if (i > 0) shift += Math.min(...(list[i - 1] as Panel).outline.map((e) => e.from[0]));
      return { panel: panel.id, half: inFlange(cut, arm, shift) };
    });
  });
}

/** From (t, d) at the corner to (x, y) of a panel whose x starts `shift` further in. */
function inFlange({ t, d, c }: ArmCut, arm: Arm, shift: number): HalfPlane {
  const low = { x: t, y: d, c: c - t * shift };
  return arm.end === 'low' ? low : { x: -t, y: d, c: c - t * (arm.length - shift) };
}
