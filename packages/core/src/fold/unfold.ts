import { compose, type Frame, place, STAY } from '../plane/frame.js';
import { boxOf, type Loop, loopArea, loopBox, loopLength, tidy, type Vertex } from '../plane/loop.js';
import { mix, type Point, sub } from '../plane/point.js';
import { placeLoop } from '../plane/shapes.js';
import { withoutShort } from '../plane/without-short.js';
import { biteHole, type Circle, outOfHole } from './bite-hole.js';
import type { FlatBend, FlatPattern, Line } from './flat.js';
import { flatFrame } from './hinge.js';
import { openingsOf, type Part, type PartPanel, type Zone } from './part.js';
import type { Edge } from './tree.js';

/** No edge of an outline is shorter, mm: no tool sees its ends apart, and readers take it for a fault. */
const LEAST_EDGE = 1e-3;

type Hung = PartPanel & { readonly hang: NonNullable<PartPanel['hang']> };

/** Panels of a part with their frames on the flat, with the first panel's frame given. */
interface Laid {
  readonly frames: ReadonlyMap<string, Frame>;
  /** What hangs on a panel, by its edges. */
  readonly on: ReadonlyMap<string, ReadonlyMap<string, Hung>>;
  readonly reliefs: readonly Circle[];
}

/**
 * Lay a part flat: panels in one plane, each bend replaced by its allowance.
 * Units mm, degrees. Frame: origin at the outline's lower left corner, marked face up, axes of the first panel.
 * The outline is walked panel by panel, so it is exact; `verifyFlat` checks that it is simple.
 */
export function unfold(part: Part): FlatPattern {
  const rough = lay(part);
  const corners = part.panels.flatMap((p) =>
    p.cut.shape.map((e) => place(rough.frames.get(p.id) as Frame, e.from)),
  );
  const laid = toCorner(rough, boxOf(corners).min);
  const at = (id: string, p: Point) => place(laid.frames.get(id) as Frame, p);
  const outline = outlineOf(part, laid);
  const holes = part.panels.flatMap((p) =>
    openingsOf(p).map((loop) => placeLoop(laid.frames.get(p.id) as Frame, loop)),
  );
  return {
    thickness: part.sheet.thickness,
    outline,
    holes,
    bends: part.panels.filter(isHung).map((p) => flatBend(laid, p)),
    marks: part.panels.flatMap((p) => p.marks.map((m) => ({ ...m, at: at(p.id, m.at), panel: p.id }))),
    scribes: part.panels.flatMap((p) => p.scribes.map(([a, b]): Line => [at(p.id, a), at(p.id, b)])),
    panels: part.panels.map((p) => ({
      id: p.id,
      frame: laid.frames.get(p.id) as Frame,
      shape: p.shape.map((e) => at(p.id, e.from)),
    })),
    blank: { min: [0, 0], max: loopBox(outline).max },
    area: loopArea(outline) - holes.reduce((sum, h) => sum + loopArea(h), 0),
    cutLength: loopLength(outline) + holes.reduce((sum, h) => sum + loopLength(h), 0),
  };
}

/** The first panel's outline with everything that hangs on it, bitten by the round reliefs. */
function outlineOf(part: Part, laid: Laid): Loop {
  const [first] = part.panels as [PartPanel];
  const path: Vertex[] = [];
  walk(laid, first, 0, first.cut.shape.length, (at) => path.push({ at, bulge: 0 }));
  return withoutShort(tidy(laid.reliefs.reduce<Loop>(biteHole, path)), LEAST_EDGE);
}

const isHung = (p: PartPanel): p is Hung => p.hang !== null;

/** Laid out from the first panel's own frame. */
function lay(part: Part): Laid {
  const frames = new Map<string, Frame>();
  const on = new Map<string, Map<string, Hung>>(part.panels.map((p) => [p.id, new Map()]));
  for (const p of part.panels) {
    if (!isHung(p)) frames.set(p.id, STAY);
    else {
      const { bend, hinge } = p.hang;
      const parent = frames.get(bend.parent) as Frame;
      frames.set(p.id, compose(parent, flatFrame(hinge, bend.terms.deduction)));
      on.get(bend.parent)?.set(bend.edge, p);
    }
  }
  const reliefs = part.rootHoles.map(({ panel, at, diameter }) => ({
    centre: place(frames.get(panel) as Frame, at),
    radius: diameter / 2,
  }));
  return { frames, on, reliefs };
}

/** The same moved so that `corner` is the origin. */
function toCorner({ frames, on, reliefs }: Laid, corner: Point): Laid {
  const moved = new Map<string, Frame>();
  for (const [id, f] of frames) moved.set(id, { ...f, origin: sub(f.origin, corner) });
  return { frames: moved, on, reliefs: reliefs.map((r) => ({ ...r, centre: sub(r.centre, corner) })) };
}

/** Visit `count` edges of a panel's shape from edge `start` on, with everything that hangs on them, on the flat. */
function walk(laid: Laid, panel: PartPanel, start: number, count: number, visit: (p: Point) => void): void {
  const frame = laid.frames.get(panel.id) as Frame;
  const hung = laid.on.get(panel.id);
  for (let k = 0; k < count; k++) {
    const { shape } = panel.cut;
    const edge = shape[(start + k) % shape.length] as Edge;
    const child = hung?.get(edge.name);
    visit(place(frame, edge.from));
    if (child !== undefined) round(laid, frame, child, visit);
  }
}

/** Out along one end of the bend, round the flange, and back along the other end. */
function round(laid: Laid, parent: Frame, child: Hung, visit: (p: Point) => void): void {
  const frame = laid.frames.get(child.id) as Frame;
  const [[low, high], [tailLow, tailHigh]] = laidEnds(child, parent, frame);
  const { shape } = child.cut;
  const near = shape.findIndex((e) => e.name === 'near');
  visit(high);
  visit(tailHigh);
  walk(laid, child, near + 1, shape.length - 1, visit);
  visit(place(frame, (shape[near] as Edge).from));
  visit(tailLow);
  visit(low);
}

/** Corners of the bent material, low and high end: on the parent's tangent line, then on the flange's. */
const bentEnds = (child: Hung, parent: Frame, own: Frame) =>
  endsOf(child, parent, own, { zone: child.hang.zone, setback: child.hang.bend.metal.setback });

/** The same where the pattern is cut. */
const laidEnds = (child: Hung, parent: Frame, own: Frame) =>
  endsOf(child, parent, own, { zone: child.cut.zone as Zone, setback: child.hang.bend.terms.setback });

function endsOf(
  child: Hung,
  parent: Frame,
  own: Frame,
  { zone, setback: s }: { readonly zone: Zone; readonly setback: number },
): readonly [Line, Line] {
  const { hinge } = child.hang;
  const edge = compose(parent, hinge.frame);
  const at = (frame: Frame, y: number, [low, high]: readonly [number, number]): Line => [
    place(frame, [low, y]),
    place(frame, [high, y]),
  ];
  return [at(edge, -s, zone.parentSide), at(own, s, zone.childSide)];
}

function flatBend(laid: Laid, child: Hung): FlatBend {
  const { bend } = child.hang;
  const frames = [laid.frames.get(bend.parent) as Frame, laid.frames.get(child.id) as Frame] as const;
  const [[a, b], [c, d]] = laidEnds(child, ...frames);
  const middle: Line = [mix(a, c, 0.5), mix(b, d, 0.5)];
  return {
    id: child.id,
    parent: bend.parent,
    angle: Math.abs(bend.angle),
    direction: bend.angle > 0 ? 'up' : 'down',
    insideRadius: bend.insideRadius,
    terms: bend.terms,
    hem: bend.hem,
    line: laid.reliefs.reduce(outOfHole, middle),
    tangents: bentEnds(child, ...frames),
    zone: bend.metal.width,
  };
}
