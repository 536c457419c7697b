import type { Remark } from '../errors/finding.js';
import type { FormedPanel } from '../fold/formed.js';
import { dot3, sub3, type Vec3 } from '../fold/space.js';
import type { FastenerNeeds, StackSheet } from '../joining/fastener.js';
import { capacity, fieldOf, type KeepOff, pointsOn, type Run, runOf, share } from '../joining/layout.js';
import { polygonArea } from '../plane/convex.js';
import { add, type Point, scale } from '../plane/point.js';
import { plainNumber } from '../units/format.js';
import { layersAt } from './layers.js';
import { type Overlap, onFace, outward, overlapsOf, type StandingFace } from './overlap.js';
import type { Placed, Seated } from './types.js';

/** One fastener: where it stands in the assembly, and its place on the panels it goes through. mm */
export interface Fastener {
  readonly joint: string;
  readonly kind: string;
  readonly at: Vec3;
  readonly on: readonly FastenerEnd[];
}

/** A fastener's place on one panel, in the panel's frame. */
export interface FastenerEnd {
  readonly piece: string;
  readonly panel: string;
  readonly at: Point;
  readonly hole: number | null;
  readonly beside: Point;
}

/** Fasteners of a joint with what to know about them. */
export interface Fastened {
  readonly joint: string;
  /** Part the joint starts from. */
  readonly part: string;
  readonly fasteners: readonly Fastener[];
  readonly remarks: readonly Remark[];
}

const BESIDE = 0.5; // mm of metal between a hole and the point that stands for it

/** Spread the fasteners of a joint over its overlaps, as a maker does: evenly, clear of edges and bends. */
export function fasten(seated: Seated, all: readonly Placed[]): Fastened {
  const { joint, from, to } = seated;
  const told = { joint: joint.name, part: from.part.name };
  if (joint.by === null) return { ...told, fasteners: [], remarks: [] };
  const { kind, ask } = joint.by;
  const stack = [from, to].map(
    (p): StackSheet => ({ part: p.piece, thickness: p.part.formed.thickness, material: p.part.material }),
  );
  const needs = kind.needs(stack, ask as never);
  const overlaps = overlapsOf(seated);
  if (overlaps.length === 0) return { ...told, fasteners: [], remarks: [nothingMeets(seated)] };
  const runs = overlaps.map((o) => runOf(o.shape, fieldOf(o.shape, keepOffs(o, needs))));
  const counts = share(runs, ask, needs);
  const fasteners = overlaps.flatMap((o, i) => {
    const run = runs[i] as Run;
    return pointsOn(run, counts[i] as number).map((p) => fastener(seated, o, p, run, needs));
  });
  const layers = Math.max(
    2,
    ...fasteners.map((f) => layersAt(f.at, outward((overlaps[0] as Overlap).from), all)),
  );
  const remarks = [
    ...kind.remarks(stack, ask as never, layers),
    ...tightRemarks(overlaps, runs, needs),
    ...pitchRemarks(runs, counts, needs),
  ];
  return { ...told, fasteners, remarks };
}

function fastener(seated: Seated, overlap: Overlap, p: Point, run: Run, needs: FastenerNeeds): Fastener {
  const at = onFace(overlap.from, p);
  const largest = Math.max(0, ...needs.holes.map((h) => h ?? 0));
  const aside = onFace(overlap.from, largest === 0 ? p : add(p, scale(run.along, largest / 2 + BESIDE)));
  const end = (face: StandingFace, i: number): FastenerEnd => ({
    piece: face.placed.piece,
    panel: face.panel.id,
    at: seenOn(face, at),
    hole: needs.holes[i] ?? null,
    beside: seenOn(face, aside),
  });
  return {
    joint: seated.joint.name,
    kind: seated.joint.by?.kind.name ?? '',
    at,
    on: [end(overlap.from, 0), end(overlap.to, 1)],
  };
}

/** A point in space, straight down on a panel, in its frame. */
function seenOn({ pose }: StandingFace, at: Vec3): Point {
  const d = sub3(at, pose.origin);
  return [dot3(d, pose.x), dot3(d, pose.y)];
}

/** Edges of both panels, in the first one's frame. */
function keepOffs({ from, to }: Overlap, needs: FastenerNeeds): readonly KeepOff[] {
  const own = sidesOf(from, (p) => p);
  const other = sidesOf(to, (p) => seenOn(from, onFace(to, p)));
  return [...own, ...other].map(({ from: a, to: b, bent }) => ({
    from: a,
    to: b,
    keep: bent ? needs.bend : needs.edge,
    what: bent ? 'bend' : 'edge',
  }));
}

interface SideOf {
  readonly from: Point;
  readonly to: Point;
  readonly bent: boolean;
}

function sidesOf(face: StandingFace, see: (p: Point) => Point): readonly SideOf[] {
  const { shape, edges } = face.panel;
  const turned = polygonArea(shape.map(see)) < 0;
  return shape.map((p, i) => {
    const [a, b] = [see(p), see(shape[(i + 1) % shape.length] as Point)];
    const bent = isBent(face.placed, face.panel, edges[i] ?? '');
    return turned ? { from: b, to: a, bent } : { from: a, to: b, bent };
  });
}

/** True when bent material joins this edge: the panel's own bend, or one that hangs on it. */
function isBent({ part }: Placed, panel: FormedPanel, edge: string): boolean {
  if (edge === 'near') return part.formed.bends.some((b) => b.id === panel.id);
  return part.part.panels.some((p) => p.hang?.bend.parent === panel.id && p.hang.bend.edge === edge);
}

const mm = (v: number) => `${plainNumber(v, 2)} mm`;

function nothingMeets({ sites }: Seated): Remark {
  return {
    code: 'joint-empty',
    severity: 'error',
    message: `the faces of ${sites[0].name} and ${sites[1].name} do not lie against each other, so nothing can be fastened`,
    source: 'computed',
    fix: 'check the sizes that bring them together',
  };
}

function tightRemarks(
  overlaps: readonly Overlap[],
  runs: readonly Run[],
  needs: FastenerNeeds,
): readonly Remark[] {
  const tight = runs.findIndex((r) => r.field.share < 1 - 1e-9);
  if (tight < 0) return [];
  const { share: part } = (runs[tight] as Run).field;
  const { from, to } = overlaps[tight] as Overlap;
  return [
    {
      code: 'overlap-narrow',
      severity: 'warning',
      value: part * needs.edge,
      limit: needs.edge,
      unit: 'mm',
      message: `${from.panel.id} over ${to.panel.id} is narrow: ${mm(part * needs.edge)} to edges and ${mm(part * needs.bend)} to bends can be kept, ${mm(needs.edge)} and ${mm(needs.bend)} wanted`,
      source: `${needs.edgeSource}; ${needs.bendSource}`,
      fix: `make them overlap by ${mm((1 - part) * (needs.edge + needs.bend))} more, or take a smaller fastener`,
    },
  ];
}

function pitchRemarks(
  runs: readonly Run[],
  counts: readonly number[],
  needs: FastenerNeeds,
): readonly Remark[] {
  const gaps = runs.map((r, i) =>
    (counts[i] as number) < 2 ? Infinity : (r.to - r.from) / ((counts[i] as number) - 1),
  );
  const least = Math.min(...gaps);
  if (least >= needs.pitch - 1e-6) return [];
  const most = runs.reduce((s, r) => s + capacity(r, needs.pitch), 0);
  return [
    {
      code: 'pitch-close',
      severity: 'warning',
      value: least,
      limit: needs.pitch,
      unit: 'mm',
      message: `${counts.reduce((a, b) => a + b, 0)} fasteners stand ${mm(least)} apart, ${mm(needs.pitch)} at least; ${most} can be met`,
      source: needs.pitchSource,
      fix: `ask for ${most} or fewer`,
    },
  ];
}
