import { fail } from '../errors/problem.js';
import { distance, dot, type Point, SAME, sub } from '../plane/point.js';
import { type BendEnd, type CornerScene, type CornerWork, cornerWork, type PanelCut } from './corner-cuts.js';
import { bentPose, type Hinge, hingeAt } from './hinge.js';
import { LEAST_METAL, reaches } from './least.js';
import { type Lookup, lookupOf } from './lookup.js';
import { clip, edgeIndex, type HalfPlane, inside } from './outline.js';
import type { Part, PartPanel, RootHole, Zone } from './part.js';
import { setBack } from './set-back.js';
import { HOME, type Pose } from './space.js';
import type { Bend, CornerRequest, Draft, Edge, Outline, Panel, Site } from './tree.js';

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

interface Worked extends CornerWork {
  readonly request: CornerRequest;
}

/**
 * Resolve a draft: cut every corner from the formed truth, set bend edges back to their tangent lines, and find
 * where bent material starts and ends.
 * @throws JobError `panel-vanishes` when the cuts leave nothing of a panel or of a bend
 */
export function settle(draft: Draft): Part {
  const lookup = lookupOf(draft);
  const poses = mouldPoses(draft);
  const scene: CornerScene = {
    lookup,
    pose: (id) => poses.get(id) as Pose,
    thickness: draft.sheet.thickness,
  };
  const work: readonly Worked[] = draft.corners.flatMap((request) =>
    cornerWork(scene, lookup.panel(request.panel), request.style).map((w) => ({ ...w, request })),
  );
  const cuts = grouped(work.flatMap((w) => w.cuts));
  const shapes = new Map<string, Shapes>();
  for (const p of draft.panels) {
    const own = work.filter((w) => w.request.panel === p.id);
    const cut = own.reduce(slotted, shapeOf(lookup, p, cuts.get(p.id) ?? []));
    shapes.set(p.id, { cut, flat: draft.sheet.rule.forms === undefined ? cut : flatOf(lookup, p, cut) });
  }
  const toRoot = work.flatMap((w) => w.toRoot);
  return {
    sheet: draft.sheet,
    panels: draft.panels.map((p) => settlePanel(lookup, p, shapes, toRoot)),
    rootHoles: work.flatMap(rootHole),
    asked: draft.asked,
    sites: draft.sites.map((s) => onMetal(lookup, s)),
  };
}

function grouped(cuts: readonly PanelCut[]): ReadonlyMap<string, readonly HalfPlane[]> {
  const byPanel = new Map<string, HalfPlane[]>();
  for (const { panel, half } of cuts) {
    const list = byPanel.get(panel);
    if (list === undefined) byPanel.set(panel, [half]);
    else list.push(half);
  }
  return byPanel;
}

/** Where panels stand by their mould planes, in the frame of the first. */
export function mouldPoses(draft: Draft): ReadonlyMap<string, Pose> {
  const poses = new Map<string, Pose>();
  const outlines = new Map(draft.panels.map((p) => [p.id, p.outline]));
  for (const { id, bend } of draft.panels) {
    if (bend === null) poses.set(id, HOME);
    else {
      const hinge = hingeOf(outlines.get(bend.parent) as Outline, bend);
      poses.set(id, bentPose(poses.get(bend.parent) as Pose, hinge, bend, draft.sheet.thickness));
    }
  }
  return poses;
}

const hingeOf = (parent: Outline, bend: Bend): Hinge => hingeAt(parent, edgeIndex(parent, bend.edge));

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
function withoutBends(
  lookup: Lookup,
  { id, outline, bend }: Panel,
  from: Outline,
  by: (bend: Bend) => number,
): Outline {
  return outline.reduce<Outline>((rest, edge, i) => {
    const bent = edge.name === 'near' ? bend : lookup.on(id, edge.name)?.bend;
    return bent == null ? rest : setBack(rest, edge.name, inside(outline, i, by(bent)));
  }, from);
}

/** Length of an edge, mm; 0 where it is cut away. */
function edgeLength(outline: Outline, i: number): number {
  const [a, b] = [outline[i], outline[(i + 1) % outline.length]];
  return i < 0 || a === undefined || b === undefined ? 0 : distance(a.from, b.from);
}

/** A relief slot: a square bite into the panel at the root of the notch. */
function slotted(shape: Outline, { root, request }: Worked): Outline {
  const { relief } = request.style;
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

function rootHole({ root, request }: Worked): readonly RootHole[] {
  const { relief } = request.style;
  if (root === null || relief?.kind !== 'hole') return [];
  return [{ panel: request.panel, at: root, diameter: relief.diameter }];
}

function settlePanel(
  lookup: Lookup,
  panel: Panel,
  shapes: ReadonlyMap<string, Shapes>,
  toRoot: readonly BendEnd[],
): PartPanel {
  const { id, outline, bend, holes, cutouts, scribes, marks } = panel;
  const { cut, flat: shape } = shapes.get(id) as Shapes;
  const kept = { id, outline, shape, holes, cutouts, scribes, marks };
  if (bend === null) return { ...kept, hang: null, cut: { shape: cut, zone: null } };
  const hinge = hingeOf(lookup.panel(bend.parent).outline, bend);
  // a bend without width cannot slant
  const ends = (end: BendEnd['end']) =>
    bend.terms.allowance > 0 && toRoot.some((b) => b.panel === id && b.end === end);
  const parent = shapes.get(bend.parent) as Shapes;
  const zone = zoneOf(id, parent.flat, shape, hinge, bend, ends);
  const whole = cut === shape && parent.cut === parent.flat;
  const laid = whole ? zone : zoneOf(id, parent.cut, cut, hinge, bend, ends);
  return { ...kept, hang: { bend, hinge, zone }, cut: { shape: cut, zone: laid } };
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
  // the parent's edge runs against the flange's x
  const [b, a] = edgeEnds(parent, bend.edge, bend.parent).map((p) =>
    dot(sub(p, hinge.frame.origin), hinge.frame.x),
  ) as [number, number];
  const [childLow, childHigh] = edgeEnds(child, 'near', id).map((p) => p[0]) as [number, number];
  const [low, high] = [Math.max(a, childLow), Math.min(b, childHigh)];
  if (!reaches(high - low, LEAST_METAL))
    return vanishes(`nothing is left to bend at "${id}" between the corner cuts`);
  const near = (corner: number, end: number) => Math.abs(corner - end) <= bend.terms.allowance;
  return {
    parentSide: [toRoot('low') && near(a, low) ? a : low, toRoot('high') && near(b, high) ? b : high],
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
