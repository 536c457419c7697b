import type { Point } from '../../plane/point.js';
import type { ArmCut, CornerStyle, Relief } from '../draft/corner-style.js';
import type { HalfPlane } from '../draft/outline.js';
import { dot3, place3, scale3 } from '../draft/space.js';
import type { CornerRequest, Edge, Panel } from '../draft/tree.js';
import { type Arm, type CornerSide, cornerOf } from './corner-arms.js';
import { bisect, type HalfSpace, isFoldedBack, type Meeting, sharesPlane } from './separate.js';
import {
  beyondCuts,
  type CornerScene,
  chain,
  finishCuts,
  goesOn,
  type PanelCut,
  spaceCuts,
  upright,
} from './space-cuts.js';

/** An end of a flange's bend. */
export interface BendEnd {
  readonly panel: string;
  readonly end: 'low' | 'high';
}

/** What one corner asks of the panels round it. */
export interface CornerWork {
  /** The panel whose corner it is. */
  readonly host: string;
  readonly relief: Relief | null;
  readonly cuts: readonly PanelCut[];
  /** Bends whose end runs to the root of the notch. */
  readonly toRoot: readonly BendEnd[];
  /** Where both bends of the host are set back, if it has two there: the root of the notch. */
  readonly root: Point | null;
}

/** The work at all corners of a host: first what keeps the formed flanges apart, then what the style asks. */
export function cornerWork(scene: CornerScene, host: Panel, request: CornerRequest): readonly CornerWork[] {
  const work: CornerWork[] = [];
  const n = host.outline.length;
  const { style } = request;
  const { relief } = style;
  host.outline.forEach((next, i) => {
    const prev = host.outline[(i + n - 1) % n] as Edge;
    if (next.name === 'near' || prev.name === 'near') return; // settled with the parent's corner
    const { before, after, root } = cornerOf(scene.lookup, host, i);
    if (before !== null && after !== null) {
      const { cuts, toRoot } = pairWork(scene, request, before, after);
      work.push({ host: host.id, relief, cuts, toRoot, root });
      return;
    }
    // a tab next to a free edge of the host still has to clear the bend it stands on
    const tab = before?.tab ?? after?.tab;
    if (tab == null) return;
    const cuts = styleCuts(scene, style, tab, false);
    work.push({ host: host.id, relief, cuts, toRoot: slanting(style, [tab]), root: null });
  });
  return work;
}

/**
 * Two flanges at a corner. What is hung on the end of one once the corner was styled, and on an edge that goes on past the
 * corner's own cut, folds round no corner: it ends with its flange.
 */
function pairWork(
  scene: CornerScene,
  request: CornerRequest,
  before: CornerSide,
  after: CornerSide,
): Pick<CornerWork, 'cuts' | 'toRoot'> {
  const a = tabbed(scene, request, before, after);
  const b = tabbed(scene, request, after, a);
  const { cuts, toRoot, apart } = besideEachOther(scene, request.style, a, b);
  return {
    cuts: [
      ...cuts,
      ...(a === before ? NONE : endedWith(scene, before, cuts, apart[0])),
      ...(b === after ? NONE : endedWith(scene, after, cuts, apart[1])),
    ],
    toRoot,
  };
}

/** A side of a corner, without what hangs at the end of its flange where that is no tab. */
function tabbed(
  scene: CornerScene,
  { style, there }: CornerRequest,
  side: CornerSide,
  other: CornerSide,
): CornerSide {
  const { arm, tab } = side;
  if (tab === null || there.some(({ id }) => id === tab.flange.id)) return side;
  const bare: CornerSide = { arm, tab: null };
  const { cuts } = besideEachOther(scene, style, bare, other);
  const own = cuts.filter(({ panel }) => panel === arm.flange.id);
  return goesOn(scene, tab.flange, own) ? bare : side;
}

/** What hangs at the end of a flange ends where the flange does. */
function endedWith(
  scene: CornerScene,
  { arm, tab }: CornerSide,
  cuts: readonly PanelCut[],
  apart: HalfSpace | null,
): readonly PanelCut[] {
  const { flange } = arm;
  const pose = scene.pose(flange.id);
  const own = cuts.filter(({ panel }) => panel === flange.id).map(({ half }) => upright(half, pose));
  const halves = apart === null ? own : [...own, apart];
  return tab === null ? NONE : halves.flatMap((half) => finishCuts(scene, tab.flange, half));
}

/** What two sides of a corner are cut by, and the half spaces that keep them apart. */
interface PairCuts extends Pick<CornerWork, 'cuts' | 'toRoot'> {
  readonly apart: readonly [HalfSpace | null, HalfSpace | null];
}

/** Where a tab folds round the end of a flange it lies beside the other flange: those two meet. */
function besideEachOther(
  scene: CornerScene,
  style: CornerStyle,
  before: CornerSide,
  after: CornerSide,
): PairCuts {
  const { gap } = style;
  const a = meeting(scene, before.tab ?? before.arm);
  const b = meeting(scene, after.tab ?? after.arm);
  const [keepA, keepB] = apart(scene, style, a, b);
  const mitred = style.meet === 'mitre';
  const hasMore = ({ arm }: CornerSide) => scene.lookup.on(arm.flange.id, 'far') !== null;
  const beyond =
    style.beyond !== 'free' && (hasMore(before) || hasMore(after))
      ? bisect(meeting(scene, before.arm), meeting(scene, after.arm), gap)
      : null;
  const cuts = [
    ...styleCuts(scene, style, a.arm, mitred && keepA !== null),
    ...styleCuts(scene, style, b.arm, mitred && keepB !== null),
    ...(keepA === null ? NONE : spaceCuts(scene, a.arm.flange, keepA)),
    ...(keepB === null ? NONE : spaceCuts(scene, b.arm.flange, keepB)),
    ...overCuts(scene, a, b, gap),
    ...overCuts(scene, b, a, gap),
    ...(beyond === null ? NONE : beyondCuts(scene, before.arm.flange, beyond[0])),
    ...(beyond === null ? NONE : beyondCuts(scene, after.arm.flange, beyond[1])),
  ];
  return { cuts, toRoot: slanting(style, [a.arm, b.arm]), apart: [keepA, keepB] };
}

const NONE: readonly PanelCut[] = [];

/** Folds ending straight stay clear of what stands beside them; flanges may run to the root of the notch. */
function slanting(style: CornerStyle, arms: readonly Arm[]): readonly BendEnd[] {
  if (style.root !== 'apex') return [];
  const upright = arms.filter(({ flange }) => Math.abs(flange.bend?.angle ?? 0) <= 90);
  return upright.map(({ flange, end }) => ({ panel: flange.id, end }));
}

function apart(
  scene: CornerScene,
  style: CornerStyle,
  a: ArmMeeting,
  b: ArmMeeting,
): readonly [HalfSpace | null, HalfSpace | null] {
  if (style.meet === 'none') return [null, null];
  const tab = a.arm.edge === null ? a : b.arm.edge === null ? b : null;
  if (style.meet === 'mitre' || tab === null) return bisect(a, b, style.gap) ?? [null, null];
  if (!sharesPlane(a, b)) return [null, null];
  const above = beyondFar(scene, (tab === a ? b : a).arm.flange, style.gap);
  return tab === a ? [above, null] : [null, above];
}

/** A flange folded back over its panel ends clear of the inside of a neighbour that stands up on the same side. */
function overCuts(scene: CornerScene, own: ArmMeeting, other: ArmMeeting, gap: number): readonly PanelCut[] {
  if (!isFoldedBack(own) || isFoldedBack(other)) return NONE;
  const { flange } = own.arm;
  const [folded, upright] = [flange.bend?.angle ?? 0, other.arm.flange.bend?.angle ?? 0];
  if (folded > 0 !== upright > 0) return NONE;
  const up = upright > 0 ? 1 : -1; // the inside is the marked face of what is bent up
  const n = scale3(other.pose.z, up);
  const inside = place3(other.pose, [0, 0, up > 0 ? scene.thickness : 0]);
  return spaceCuts(scene, flange, { n, c: dot3(n, inside) + gap });
}

/** Beyond the far edge of a flange, in its plane. */
function beyondFar(scene: CornerScene, flange: Panel, gap: number): HalfSpace {
  const pose = scene.pose(flange.id);
  const height = Math.max(...flange.outline.map((e) => e.from[1]));
  return { n: pose.y, c: dot3(pose.y, place3(pose, [0, height, 0])) + gap };
}

/** An arm, and where it stands. */
interface ArmMeeting extends Meeting {
  readonly arm: Arm;
}

function meeting(scene: CornerScene, arm: Arm): ArmMeeting {
  const angle = arm.flange.bend?.angle ?? 0;
  const outside = angle > 0 ? 0 : scene.thickness;
  return {
    arm,
    angle: Math.abs(angle),
    pose: scene.pose(arm.flange.id),
    corner: [arm.end === 'low' ? 0 : arm.length, 0, outside],
    along: [arm.end === 'low' ? 1 : -1, 0, 0],
  };
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
  const laid: PanelCut[] = [];
  for (const cut of cuts) {
    if (cut.d !== 0) {
      laid.push({ panel: arm.flange.id, half: inFlange(cut, arm, 0) });
      continue;
    }
    let shift = 0; // x of a panel down the chain runs along the same line, from where its edge starts
    for (const { id, outline } of chain(scene, arm.flange)) {
      laid.push({ panel: id, half: inFlange(cut, arm, shift) });
      shift += outline.reduce((least, e) => Math.min(least, e.from[0]), Infinity);
    }
  }
  return laid;
}

/** From (t, d) at the corner to (x, y) of a panel whose x starts `shift` further in. */
function inFlange({ t, d, c }: ArmCut, arm: Arm, shift: number): HalfPlane {
  const low = { x: t, y: d, c: c - t * shift };
  return arm.end === 'low' ? low : { x: -t, y: d, c: c - t * (arm.length - shift) };
}
