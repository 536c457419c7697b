import { fail } from '../../errors/problem.js';
import { distance, dot, type Point, SAME, sub } from '../../plane/point.js';
import { bentPose, type Hinge } from '../draft/hinge.js';
import { LEAST_METAL, reaches } from '../draft/least.js';
import type { Lookup } from '../draft/lookup.js';
import { clip, edgeIndex, type HalfPlane, inside } from '../draft/outline.js';
import { homePose, type Pose } from '../draft/space.js';
import type { Bend, Draft, Edge, Outline, Panel, Site } from '../draft/tree.js';
import { type BendEnd, type CornerWork, cornerWork } from './corner-cuts.js';
import type { Part, PartPanel, RootHole, Zone } from './part.js';
import { setBack } from './set-back.js';
import type { CornerScene } from './space-cuts.js';

/**
 * A site with its seat where it is on the formed panel: outside faces may meet elsewhere than they were laid out to, while
 * the far edge stays where it was cut.
 */
function onMetal(lookup: Lookup, site: Site): Site {
  const { bend, outline } = lookup.panel(site.seat.panel);
  const off = bend === null ? 0 : bend.metal.setback - bend.setback;
  if (off === 0) return site;
  const [x, y] = site.seat.at;
  const far = Math.max(...outline.map((e) => e.from[1]));
  return { ...site, seat: { ...site.seat, at: [x, y + off * (1 - y / far)] } };
}

/** A panel as it is cut, and what stays flat of it when the metal bends. */
interface Shapes {
  readonly cut: Outline;
  readonly flat: Outline;
}

/**
 * Resolve a draft: cut every corner from the formed truth, set bend edges back to their tangent lines, and find
 * where bent material starts and ends.
 * @throws JobError `panel-vanishes` when the cuts leave nothing of a panel or of a bend
 */
export function settle(draft: Draft, lookup: Lookup): Part {
  const poses = mouldPoses(draft, lookup);
  const scene: CornerScene = {
    lookup,
    pose: (id) => poses.get(id) as Pose,
    thickness: draft.sheet.thickness,
  };
  const work: CornerWork[] = [];
  for (const request of draft.corners) work.push(...cornerWork(scene, lookup.panel(request.panel), request));
  const cuts = grouped(work);
  const shapes = new Map<string, Shapes>();
  for (const p of draft.panels) {
    const own = work.filter((w) => w.host === p.id);
    const cut = own.reduce(slotted, shapeOf(lookup, p, cuts.get(p.id) ?? []));
    shapes.set(p.id, { cut, flat: draft.sheet.rule.forms === undefined ? cut : flatOf(lookup, p, cut) });
  }
  const toRoot: BendEnd[] = [];
  for (const w of work) toRoot.push(...w.toRoot);
  return {
    sheet: draft.sheet,
    panels: draft.panels.map((p) => settlePanel(lookup, p, shapes, toRoot)),
    rootHoles: rootHoles(work),
    asked: draft.asked,
    sites: draft.sites.map((s) => onMetal(lookup, s)),
  };
}

/** The cuts of all corners by the panels they cut. */
function grouped(work: readonly CornerWork[]): ReadonlyMap<string, readonly HalfPlane[]> {
  const byPanel = new Map<string, HalfPlane[]>();
  for (const { cuts } of work)
    for (const { panel, half } of cuts) {
      const list = byPanel.get(panel);
      if (list === undefined) byPanel.set(panel, [half]);
      else list.push(half);
    }
  return byPanel;
}

/** Where panels stand by their mould planes, in the frame of the first. */
export function mouldPoses(draft: Draft, lookup: Lookup): ReadonlyMap<string, Pose> {
  const poses = new Map<string, Pose>();
  for (const { id, bend } of draft.panels) {
    if (bend === null) poses.set(id, homePose());
    else {
      const pose = poses.get(bend.parent) as Pose;
      poses.set(id, bentPose(pose, hingeOf(lookup, bend), bend, draft.sheet.thickness));
    }
  }
  return poses;
}

function hingeOf(lookup: Lookup, { parent, edge }: Bend): Hinge {
  const panel = lookup.panel(parent);
  return lookup.hinge(panel, edgeIndex(panel.outline, edge));
}

/** The authored outline less the corner cuts, bend edges moved in to their tangent lines. */
function shapeOf(lookup: Lookup, panel: Panel, cuts: readonly HalfPlane[]): Outline {
  const { id, outline } = panel;
  const trimmed = cuts.reduce<Outline>((o, half) => clip(o, half, 'cut'), outline);
  const shape = withoutBends(lookup, panel, trimmed, ({ terms }) => terms.setback);
  if (shape.length === 0)
    return vanishes(`nothing is left of panel "${id}" between its bends and corner cuts`);
  const far = shape.findIndex((e) => e.name === 'far');
  if (outline.some((e) => e.name === 'far') && !reaches(edgeLength(shape, far), LEAST_METAL))
    return fail(
      'panel-cut',
      panel.by[1],
      `the cuts at the ends of panel "${id}" leave nothing of its far edge`,
    );
  return shape;
}

/** What stays flat: less what the metal bends beyond the terms it was laid out with. */
function flatOf(lookup: Lookup, panel: Panel, cut: Outline): Outline {
  const shape = withoutBends(lookup, panel, cut, ({ metal }) => metal.setback);
  return shape.length > 0 ? shape : vanishes(`panel "${panel.id}" is no wider than its bends`);
}

/** An outline with its bend edges moved in. */
function withoutBends(lookup: Lookup, panel: Panel, from: Outline, by: (bend: Bend) => number): Outline {
  const { outline } = panel;
  return lookup.bends(panel).reduce<Outline>((rest, bend, i) => {
    if (bend === null) return rest;
    return setBack(rest, (outline[i] as Edge).name, inside(outline, i, by(bend)));
  }, from);
}

/** Length of an edge, mm; 0 where it is cut away. */
function edgeLength(outline: Outline, i: number): number {
  const [a, b] = [outline[i], outline[(i + 1) % outline.length]];
  return i < 0 || a === undefined || b === undefined ? 0 : distance(a.from, b.from);
}

/** A relief slot: a square bite into the panel at the root of the notch. */
function slotted(shape: Outline, { root, relief }: CornerWork): Outline {
  if (root === null || relief?.kind !== 'slot') return shape;
  const i = shape.findIndex((e) => distance(e.from, root) < SAME);
  if (i < 0) return shape;
  const n = shape.length;
  const towards = (q: Point): Point => {
    const l = distance(root, q);
    return [((q[0] - root[0]) / l) * relief.depth, ((q[1] - root[1]) / l) * relief.depth];
  };
  const u = towards((shape[(i + n - 1) % n] as Edge).from);
  const w = towards((shape[(i + 1) % n] as Edge).from);
  const bite: Outline = [
    { name: 'relief', from: [root[0] + u[0], root[1] + u[1]] },
    { name: 'relief', from: [root[0] + u[0] + w[0], root[1] + u[1] + w[1]] },
    { name: (shape[i] as Edge).name, from: [root[0] + w[0], root[1] + w[1]] },
  ];
  return [...shape.slice(0, i), ...bite, ...shape.slice(i + 1)];
}

function rootHoles(work: readonly CornerWork[]): readonly RootHole[] {
  const holes: RootHole[] = [];
  for (const { host, root, relief } of work)
    if (root !== null && relief?.kind === 'hole')
      holes.push({ panel: host, at: root, diameter: relief.diameter });
  return holes;
}

function settlePanel(
  lookup: Lookup,
  panel: Panel,
  shapes: ReadonlyMap<string, Shapes>,
  toRoot: readonly BendEnd[],
): PartPanel {
  const { id, outline, holes, cutouts, scribes, marks } = panel;
  const { cut, flat: shape } = shapes.get(id) as Shapes;
  const hung = settleBend(lookup, panel, shapes, toRoot);
  return {
    id,
    outline,
    shape,
    holes,
    cutouts,
    scribes,
    marks,
    hang: hung?.hang ?? null,
    cut: { shape: cut, zone: hung?.laid ?? null },
  };
}

/** Where a panel hangs, and its bend where the pattern is cut; null for the first panel. */
function settleBend(
  lookup: Lookup,
  { id, bend }: Panel,
  shapes: ReadonlyMap<string, Shapes>,
  toRoot: readonly BendEnd[],
): { readonly hang: NonNullable<PartPanel['hang']>; readonly laid: Zone } | null {
  if (bend === null) return null;
  const hinge = hingeOf(lookup, bend);
  // a bend without width cannot slant
  const ends = (end: BendEnd['end']) =>
    bend.terms.allowance > 0 && toRoot.some((b) => b.panel === id && b.end === end);
  const own = shapes.get(id) as Shapes;
  const parent = shapes.get(bend.parent) as Shapes;
  const zone = zoneOf(id, parent.flat, own.flat, hinge, bend, ends);
  const whole = own.cut === own.flat && parent.cut === parent.flat;
  const laid = whole ? zone : zoneOf(id, parent.cut, own.cut, hinge, bend, ends);
  return { hang: { bend, hinge, zone }, laid };
}

/**
 * Bent material runs where both tangent lines have some; an end `toRoot` slants to the parent's corner, where that is
 * near: no further than the bend is wide.
 */
function zoneOf(
  id: string,
  parent: Outline,
  child: Outline,
  hinge: Hinge,
  bend: Bend,
  toRoot: (end: BendEnd['end']) => boolean,
): Zone {
  const { origin, x } = hinge.frame;
  const along = (p: Point) => dot(sub(p, origin), x);
  // the parent's edge runs against the flange's x
  const [far, near] = edgeEnds(parent, bend.edge, bend.parent);
  const a = along(near);
  const b = along(far);
  const own = edgeEnds(child, 'near', id);
  const low = Math.max(a, own[0][0]);
  const high = Math.min(b, own[1][0]);
  if (!reaches(high - low, LEAST_METAL))
    return vanishes(`nothing is left to bend at "${id}" between the corner cuts`);
  const reach = bend.terms.allowance;
  return {
    parentSide: [
      toRoot('low') && Math.abs(a - low) <= reach ? a : low,
      toRoot('high') && Math.abs(b - high) <= reach ? b : high,
    ],
    childSide: [low, high],
  };
}

function edgeEnds(outline: Outline, name: string, panel: string): readonly [Point, Point] {
  const i = outline.findIndex((e) => e.name === name);
  if (i < 0) return vanishes(`the corner cuts remove the whole edge "${name}" of "${panel}"`);
  return [(outline[i] as Edge).from, (outline[(i + 1) % outline.length] as Edge).from];
}

function vanishes(message: string): never {
  return fail('panel-vanishes', [], message);
}
