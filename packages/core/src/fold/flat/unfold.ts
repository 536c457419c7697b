import { compose, type Frame, place } from '../../plane/frame.js';
import {
  boxOf,
  type Loop,
  loopArea,
  loopBox,
  loopLength,
  segments,
  tidy,
  type Vertex,
} from '../../plane/loop.js';
import { mix, type Point, sub } from '../../plane/point.js';
import { placeLoop } from '../../plane/shapes.js';
import { withoutShort } from '../../plane/without-short.js';
import { flatFrame } from '../draft/hinge.js';
import type { Edge } from '../draft/tree.js';
import { openingsOf, type Part, type PartPanel, type Zone } from '../settle/part.js';
import { biteHole, type Circle, outOfHole } from './bite-hole.js';
import type { FlatBend, FlatMark, FlatPattern, Line } from './flat.js';
import { lineOnMetal } from './line-on-metal.js';

/** No edge of an outline is shorter, mm: no tool sees its ends apart, and readers take it for a fault. */
const LEAST_EDGE = 1e-3;

/** A panel laid on the flat. */
interface Laid {
  readonly panel: PartPanel;
  readonly frame: Frame;
  /** Its bend, and where that is cut: low and high end on the parent's tangent line, then on its own. */
  readonly hung: { readonly hang: Hang; readonly ends: readonly [Line, Line] } | null;
  /** What hangs on it, by its edges. */
  readonly on: Map<string, Laid>;
}

type Hang = NonNullable<PartPanel['hang']>;
type Frames = ReadonlyMap<string, Frame>;

/**
 * Lay a part flat: panels in one plane, each bend replaced by its allowance.
 * Units mm, degrees. Frame: origin at the outline's lower left corner, marked face up, axes of the first panel.
 * The outline is walked panel by panel, so it is exact; `verifyFlat` checks that it is simple.
 */
export function unfold(part: Part): FlatPattern {
  const rough = framesOf(part);
  const corner = lowest(part, rough);
  const frames = movedTo(corner, rough);
  const reliefs = part.rootHoles.map(({ panel, at, diameter }) => ({
    centre: sub(place(rough.get(panel) as Frame, at), corner),
    radius: diameter / 2,
  }));
  const laid = layAll(part, frames);
  const outline = outlineOf(laid[0] as Laid, reliefs);
  const holes: Loop[] = [];
  const bends: FlatBend[] = [];
  const scribes: Line[] = [];
  for (const { panel, frame, hung } of laid) {
    for (const loop of openingsOf(panel)) holes.push(placeLoop(frame, loop));
    if (hung !== null) bends.push(flatBend(panel, frames, hung, reliefs));
    for (const [a, b] of panel.scribes) scribes.push([place(frame, a), place(frame, b)]);
  }
  return {
    thickness: part.sheet.thickness,
    outline,
    holes,
    bends,
    marks: laid.flatMap(({ panel, frame }) => marksOn(panel, frame)),
    // what is folded on a panel's edge may take a corner that a line ran to
    scribes: scribes.length === 0 ? [] : onMetal(scribes, outline),
    panels: laid.map(({ panel: { id, shape }, frame }) => ({
      id,
      frame,
      shape: shape.map((e) => place(frame, e.from)),
    })),
    blank: { min: [0, 0], max: loopBox(outline).max },
    area: loopArea(outline) - holes.reduce((sum, h) => sum + loopArea(h), 0),
    cutLength: loopLength(outline) + holes.reduce((sum, h) => sum + loopLength(h), 0),
  };
}

/** The pattern of a part that got no more than marks since it was unfolded: nothing else of it changes. */
export function unfoldMarks(flat: FlatPattern, { panels }: Part): FlatPattern {
  const frames = new Map(flat.panels.map((p) => [p.id, p.frame]));
  return { ...flat, marks: panels.flatMap((p) => marksOn(p, frames.get(p.id) as Frame)) };
}

const marksOn = ({ id, marks }: PartPanel, frame: Frame): readonly FlatMark[] =>
  marks.map((m) => ({ ...m, at: place(frame, m.at), panel: id }));

function onMetal(lines: readonly Line[], outline: Loop): readonly Line[] {
  const edges = segments(outline);
  return lines.map((line) => lineOnMetal(line, outline, edges));
}

/** The first panel's outline with everything that hangs on it, bitten by the round reliefs. */
function outlineOf(first: Laid, reliefs: readonly Circle[]): Loop {
  const path: Vertex[] = [];
  walk(first, 0, first.panel.cut.shape.length, (at) => path.push({ at, bulge: 0 }));
  return withoutShort(tidy(reliefs.reduce<Loop>(biteHole, path)), LEAST_EDGE);
}

/** Frames of the panels on the flat, laid out from the first panel's own. */
function framesOf({ panels }: Part): Frames {
  const frames = new Map<string, Frame>();
  for (const { id, hang } of panels) {
    if (hang === null) frames.set(id, { origin: [0, 0], x: [1, 0], y: [0, 1] });
    else {
      const { bend, hinge } = hang;
      const parent = frames.get(bend.parent) as Frame;
      frames.set(id, compose(parent, flatFrame(hinge, bend.terms.deduction)));
    }
  }
  return frames;
}

/** Lower left corner of what is cut. */
function lowest({ panels }: Part, frames: Frames): Point {
  const corners: Point[] = [];
  for (const { id, cut } of panels)
    for (const { from } of cut.shape) corners.push(place(frames.get(id) as Frame, from));
  return boxOf(corners).min;
}

/** The same with this corner as the origin. */
function movedTo(corner: Point, frames: Frames): Frames {
  const moved = new Map<string, Frame>();
  for (const [id, { origin, x, y }] of frames) moved.set(id, { origin: sub(origin, corner), x, y });
  return moved;
}

/** Panels with what hangs on them, parents before children. */
function layAll({ panels }: Part, frames: Frames): readonly Laid[] {
  const byId = new Map<string, Laid>();
  return panels.map((panel) => {
    const { id, hang, cut } = panel;
    const setback = hang?.bend.terms.setback ?? 0;
    const hung = hang === null ? null : { hang, ends: endsOf(id, hang, frames, cut.zone as Zone, setback) };
    const laid: Laid = { panel, frame: frames.get(id) as Frame, hung, on: new Map() };
    byId.set(id, laid);
    if (hang !== null) byId.get(hang.bend.parent)?.on.set(hang.bend.edge, laid);
    return laid;
  });
}

/** Visit `count` edges of a panel's shape from edge `start` on, with everything that hangs on them, on the flat. */
function walk({ panel, frame, on }: Laid, start: number, count: number, visit: (p: Point) => void): void {
  const { shape } = panel.cut;
  for (let k = 0; k < count; k++) {
    const edge = shape[(start + k) % shape.length] as Edge;
    visit(place(frame, edge.from));
    const child = on.get(edge.name);
    if (child?.hung != null) round(child, child.hung.ends, visit);
  }
}

/** Out along one end of the bend, round the flange, and back along the other end. */
function round(
  child: Laid,
  [[low, high], [tailLow, tailHigh]]: readonly [Line, Line],
  visit: (p: Point) => void,
): void {
  const { shape } = child.panel.cut;
  const near = shape.findIndex((e) => e.name === 'near');
  visit(high);
  visit(tailHigh);
  walk(child, near + 1, shape.length - 1, visit);
  visit(place(child.frame, (shape[near] as Edge).from));
  visit(tailLow);
  visit(low);
}

/** Corners of the bent material, low and high end: on the parent's tangent line, then on the flange's. */
function endsOf(
  id: string,
  { bend, hinge }: Hang,
  frames: Frames,
  zone: Zone,
  setback: number,
): readonly [Line, Line] {
  const edge = compose(frames.get(bend.parent) as Frame, hinge.frame);
  return [lineAt(edge, -setback, zone.parentSide), lineAt(frames.get(id) as Frame, setback, zone.childSide)];
}

const lineAt = (frame: Frame, y: number, ends: readonly [number, number]): Line => [
  place(frame, [ends[0], y]),
  place(frame, [ends[1], y]),
];

function flatBend(
  { id, cut }: PartPanel,
  frames: Frames,
  { hang, ends }: NonNullable<Laid['hung']>,
  reliefs: readonly Circle[],
): FlatBend {
  const { bend, zone } = hang;
  const [[a, b], [c, d]] = ends;
  const middle: Line = [mix(a, c, 0.5), mix(b, d, 0.5)];
  const formed = zone !== cut.zone || bend.metal.setback !== bend.terms.setback;
  return {
    id,
    parent: bend.parent,
    angle: Math.abs(bend.angle),
    direction: bend.angle > 0 ? 'up' : 'down',
    insideRadius: bend.insideRadius,
    terms: bend.terms,
    hem: bend.hem,
    line: reliefs.reduce(outOfHole, middle),
    tangents: formed ? endsOf(id, hang, frames, zone, bend.metal.setback) : ends,
    zone: bend.metal.width,
  };
}
