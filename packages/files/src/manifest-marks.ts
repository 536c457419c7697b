import type {
  Fastener,
  FastenerEnd,
  FlatPanel,
  FormedPanel,
  JobPlan,
  PartPlan,
  Placed,
  Point,
  Pose,
  Vec3,
} from '@tinwright/core';
import {
  add3,
  contains,
  cutPose,
  distanceToLoop,
  dot3,
  place,
  sameMark,
  scale3,
  sub3,
} from '@tinwright/core/internal';

/** A mark as the manifest lists it, in the flat frame, mm. */
export interface WrittenMark {
  readonly kind: string;
  readonly at: Point;
  readonly joint: string;
  /** Set where `at` stands for a hole in one of the sheets: what is cut away cannot carry a mark. */
  readonly centre?: Point;
  readonly diameter?: number;
}

/** The marks of every part, and the one of them that an end of a fastener is. */
export interface WrittenMarks {
  readonly of: (part: string) => readonly WrittenMark[];
  readonly index: (end: FastenerEnd) => number;
}

const BESIDE = [0.25, 2, 4, 8]; // mm from a hole's rim to the point of metal that stands for it, the nearest that will do
const CLEAR = 0.05; // mm that point stays off rims and edges
const DIRECTIONS = 16;
const SAME = 0.01; // mm

/**
 * Marks of a plan as the manifest lists them. The marks of a fastener lie over each other on metal: on its place, or
 * beside it where a sheet has a hole there, so that a hole that pieces share may have several.
 */
export function writtenMarks({ parts, assembly }: JobPlan): WrittenMarks {
  const used = new Map<FastenerEnd, Used>();
  const marks = new Map(parts.map((p) => [p, marksOf(p)]));
  for (const fastener of assembly?.fasteners ?? []) {
    const ends = fastener.on.map((end) => groundOf(end, parts, assembly?.placed ?? []));
    const spot = onMetal(fastener, ends);
    for (const [i, end] of fastener.on.entries()) {
      const { part, flat, pose } = ends[i] as Ground;
      const own = marks.get(part) ?? [];
      const mark = own.findIndex((m) => sameMark(m, end, fastener.kind));
      if (mark < 0 || part.flat.marks.length !== own.length)
        throw new RangeError(`no mark on ${part.name} for a ${fastener.kind}`);
      used.set(end, { part, mark, at: place(flat.frame, seen(pose, spot)) });
    }
  }
  const entries = new Map(parts.map((p) => [p.name, entriesOf(p, [...used.values()])]));
  return {
    of: (part) => entries.get(part)?.map((e) => e.written) ?? [],
    index: (end) => {
      const { part, mark, at } = used.get(end) as Used;
      return (entries.get(part.name) ?? []).findIndex((e) => e.mark === mark && near(e.written.at, at));
    },
  };
}

/** An end of a fastener: which mark of its part's pattern it is, and the point of metal that stands for it. */
interface Used {
  readonly part: PartPlan;
  readonly mark: number;
  readonly at: Point;
}

interface Entry {
  readonly mark: number;
  readonly written: WrittenMark;
}

function entriesOf(part: PartPlan, used: readonly Used[]): readonly Entry[] {
  const own = used.filter((u) => u.part === part);
  return part.flat.marks.flatMap(({ kind, at: centre, joint, hole }, mark) => {
    const spots = own.filter((u) => u.mark === mark).map((u) => u.at);
    const places = spots.filter((p, i) => spots.findIndex((q) => near(p, q)) === i);
    return (places.length === 0 ? [centre] : places).map(
      (at): Entry => ({
        mark,
        written: {
          kind,
          at,
          joint,
          ...(near(at, centre) ? {} : { centre }),
          ...(hole === null ? {} : { diameter: hole }),
        },
      }),
    );
  });
}

/** The panel an end of a fastener lies on: as planned, on the flat, and where it stands. */
interface Ground {
  readonly part: PartPlan;
  readonly panel: FormedPanel;
  readonly flat: FlatPanel;
  readonly pose: Pose;
}

function groundOf(end: FastenerEnd, parts: readonly PartPlan[], placed: readonly Placed[]): Ground {
  const piece = placed.find((p) => p.piece === end.piece) as Placed;
  const part = parts.find((p) => p.name === piece.part.name) as PartPlan;
  const named = <T extends { readonly id: string }>(panels: readonly T[]) =>
    panels.find((p) => p.id === end.panel) as T;
  const pose = cutPose(piece, end.panel);
  return { part, panel: named(part.formed.panels), flat: named(part.flat.panels), pose };
}

/** A point in space that lies on metal of all sheets of a fastener: its place, or one beside its largest hole. */
function onMetal({ at, on }: Fastener, ends: readonly Ground[]): Vec3 {
  const largest = Math.max(0, ...on.map((e) => e.hole ?? 0));
  const clear = (p: Vec3) => ends.every(({ panel, pose }) => isMetal(panel, seen(pose, p)));
  if (largest === 0 && clear(at)) return at;
  // told in the frame of a part of several pieces, so that they share the point with the hole
  const { x, y } = (ends.find((e) => e.part.quantity > 1) ?? (ends[0] as Ground)).pose;
  const round = BESIDE.flatMap((beside) =>
    Array.from({ length: DIRECTIONS }, (_, i) => {
      const [turn, r] = [(2 * Math.PI * i) / DIRECTIONS, largest / 2 + beside];
      return add3(at, add3(scale3(x, r * Math.cos(turn)), scale3(y, r * Math.sin(turn))));
    }),
  );
  return round.find(clear) ?? at;
}

function isMetal({ shape, holes, cutouts }: FormedPanel, p: Point): boolean {
  const loop = shape.map((at) => ({ at, bulge: 0 }));
  const off = (h: (typeof holes)[number]) => Math.hypot(p[0] - h.at[0], p[1] - h.at[1]) - h.diameter / 2;
  const clear = (c: (typeof cutouts)[number]) => !contains(c, p) && distanceToLoop(p, c) >= CLEAR;
  const open = holes.every((h) => off(h) >= CLEAR) && cutouts.every(clear);
  return open && contains(loop, p) && distanceToLoop(p, loop) >= CLEAR;
}

/** A point in space, straight down on a panel, in its frame. */
function seen(pose: Pose, at: Vec3): Point {
  const d = sub3(at, pose.origin);
  return [dot3(d, pose.x), dot3(d, pose.y)];
}

/** Marks of a part's panels in the order of those of its pattern. */
const marksOf = ({ part }: PartPlan) =>
  part.panels.flatMap((p) => p.marks.map((m) => ({ ...m, panel: p.id })));

const near = (p: Point, q: Point) => Math.hypot(p[0] - q[0], p[1] - q[1]) < SAME;
