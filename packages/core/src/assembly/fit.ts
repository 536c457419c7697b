import { remark, type Spot } from '../errors/core-findings.js';
import type { Finding } from '../errors/finding.js';
import { cite } from '../errors/source.js';
import { dot3, scale3, type Vec3 } from '../fold/draft/space.js';
import { type Lump, lumpDepth, lumpsOf } from '../fold/formed/lump.js';
import { boxDistance, leastAlong } from '../fold/formed/prism.js';
import { prismDistanceUpTo } from '../fold/formed/prism-distance.js';
import { stand } from '../fold/formed/stand.js';
import type { Miss } from './place.js';
import { siteFrame } from './site-frame.js';
import type { Placed, Seated } from './types.js';

/** Clearance asked and found of a joint. mm */
export interface FitRow {
  readonly joint: string;
  readonly asked: number;
  /** Least distance between the two parts away from the faces that meet; negative where they overlap. */
  readonly found: number;
  /** Where that is: panel or bend of one part, and of the other. */
  readonly between: readonly [Spot, Spot];
  /** Between the faces that meet. */
  readonly gap: number;
}

/** The panels and bends of a body where they stand. */
export type LumpsOf = (piece: string) => readonly Lump[];

/** Those of each body; made once. */
export function lumpsWhere(bodies: readonly Placed[]): LumpsOf {
  const lumps = new Map(bodies.map((p) => [p.piece, lumpsOf(stand(p.part.formed, p.pose))]));
  return (piece) => lumps.get(piece) ?? [];
}

/**
 * Pieces that reach less into each other do not clash, mm: it is rounding of the strips bends are measured by. A little
 * over what sizes are written in, so that a hundredth too much is the same whichever piece stands first.
 */
export const CLASH = 0.01 + 1e-7;
const TIGHT = 0.005;

/**
 * Fit of every joint, and clashes between any two pieces.
 * @param bodies everything that stands; a clash is told of the later one
 * @param open joints that do not close: what runs into each other there has to give way by the whole misfit
 */
export function fitsOf(
  joints: readonly Seated[],
  bodies: readonly Placed[],
  lumps: LumpsOf,
  open: readonly Miss[],
): { readonly rows: readonly FitRow[]; readonly findings: readonly Finding[] } {
  const of = ({ piece }: Placed) => lumps(piece);
  const two = joints.filter((s) => s.from.piece !== s.to.piece); // within one piece nothing is fitted
  const rows = two.map((s) => fitRow(s, matingOf(s, two), of(s.from), of(s.to)));
  const tight = rows.flatMap((r, i) => tightFinding(r, two[i] as Seated));
  const clashes = bodies.flatMap((a, i) =>
    bodies.slice(i + 1).flatMap((b) => {
      const made = [b, a].filter(isMade).map((p) => p.piece);
      return clashFindings([a, of(a)], [b, of(b)], made, open);
    }),
  );
  const beside = neighbours(two).flatMap(([s, other]) => {
    const row = fitRow({ ...s, from: s.to, to: other.to, gap: 0 }, [], of(s.to), of(other.to));
    return tightFinding(row, { ...s, from: s.to });
  });
  return { rows, findings: [...clashes, ...tight, ...beside] };
}

/** What is bought is only a body: it has no panels to be cut from. */
const isMade = ({ part }: Placed) => part.part.panels.length > 0;

/** Pieces that one joint brings to places beside each other. */
function neighbours(joints: readonly Seated[]): readonly (readonly [Seated, Seated])[] {
  const of = (s: Seated) => joints.filter((o) => o.joint.path === s.joint.path);
  const row = (s: Seated) => of(s).toSorted((a, b) => a.joint.shift.across - b.joint.shift.across);
  return joints.flatMap((s) => {
    const next = s.joint.places === null ? undefined : row(s)[row(s).indexOf(s) + 1];
    return next === undefined ? [] : [[s, next] as const];
  });
}

export const spotOf = ({ piece }: Placed, { id, bend }: Lump): Spot => ({
  piece,
  panel: id,
  what: bend === null ? 'panel' : 'bend',
});

/** Where two pieces meet on purpose: faces of the first and of the second, the plane between them, and its gap. */
interface Mating {
  readonly faces: readonly [readonly string[], readonly string[]];
  readonly normal: Vec3;
  /** The first piece lies where normal·p is less, the second where it is more. */
  readonly at: number;
  readonly gap: number;
}

/** All joints between the two pieces of one. */
function matingOf({ from, to }: Seated, all: readonly Seated[]): readonly Mating[] {
  return all.flatMap((s) => {
    const forward = s.from === from && s.to === to;
    if (!forward && !(s.from === to && s.to === from)) return [];
    const faces = s.sites.map((site) => site.faces.map((f) => f.panel)) as [string[], string[]];
    const { normal, origin } = siteFrame(s.from.part.formed, s.sites[0], s.from.pose);
    const out = forward ? normal : scale3(normal, -1);
    return [
      { faces: forward ? faces : [faces[1], faces[0]], normal: out, at: dot3(out, origin), gap: s.gap },
    ];
  });
}

/** True for lumps whose faces meet, or stand off each other's bends. */
const seated = (p: Lump, q: Lump, { faces }: Mating) => faces[0].includes(p.id) && faces[1].includes(q.id);

/** True for lumps with the joint's plane between them: that they touch there is meant. */
function parted(p: Lump, q: Lump, { normal, at }: Mating): boolean {
  const least = (l: Lump, [x, y, z]: Vec3) =>
    Math.min(...l.prisms().map((solid) => leastAlong(solid, x, y, z)));
  return -least(p, scale3(normal, -1)) - at <= CLASH && least(q, normal) - at >= -CLASH;
}

function fitRow(
  { joint, from, to, gap }: Seated,
  matings: readonly Mating[],
  a: readonly Lump[],
  b: readonly Lump[],
): FitRow {
  const pairs: { readonly p: Lump; readonly q: Lump; readonly far: number }[] = [];
  for (const p of a) for (const q of b) pairs.push({ p, q, far: boxDistance(p, q) });
  let best: Pick<FitRow, 'found' | 'between'> = {
    found: Infinity,
    between: [spotOf(from, a[0] as Lump), spotOf(to, b[0] as Lump)],
  };
  for (const { p, q, far } of pairs.toSorted((x, y) => x.far - y.far)) {
    if (far >= best.found) break; // so are all that follow
    if (matings.some((m) => seated(p, q, m))) continue;
    const found = lumpDistance(p, q, best.found);
    if (found >= best.found || matings.some((m) => found <= m.gap + CLASH && parted(p, q, m))) continue;
    best = { found, between: [spotOf(from, p), spotOf(to, q)] };
  }
  return { joint: joint.name, asked: joint.clearance, ...best, gap };
}

function lumpDistance(p: Lump, q: Lump, enough: number): number {
  const depth = lumpDepth(p, q);
  if (depth > CLASH) return -depth;
  let best = enough;
  for (const u of p.prisms())
    if (boxDistance(u, q) < best)
      for (const v of q.prisms()) best = Math.min(best, Math.max(0, prismDistanceUpTo(u, v, best)));
  return best;
}

function tightFinding(row: FitRow, { from }: Seated): readonly Finding[] {
  if (row.found < 0 || row.found >= row.asked - TIGHT) return [];
  return [
    {
      part: from.part.name,
      ...remark('fit-tight', 'warning', {
        value: row.found,
        limit: row.asked,
        unit: 'mm',
        where: { joints: [row.joint] },
        values: { between: row.between },
        source: [cite('joints')],
      }),
    },
  ];
}

interface Pair {
  readonly u: Lump;
  readonly v: Lump;
  readonly depth: number;
}

/** The two lumps that reach furthest into each other, the first of equals; null when none do. */
export function deepestPair(p: readonly Lump[], q: readonly Lump[]): Pair | null {
  let worst: Pair | null = null;
  for (const u of p)
    for (const v of q) {
      const depth = lumpDepth(u, v);
      if (depth > (worst?.depth ?? CLASH)) worst = { u, v, depth };
    }
  return worst;
}

function clashFindings(
  [a, p]: readonly [Placed, readonly Lump[]],
  [b, q]: readonly [Placed, readonly Lump[]],
  made: readonly string[],
  open: readonly Miss[],
): readonly Finding[] {
  const worst = deepestPair(p, q);
  if (worst === null) return [];
  const joined = open.filter((m) => m.pieces.includes(a.piece) && m.pieces.includes(b.piece));
  const by = Math.max(worst.depth, ...joined.map((m) => m.into));
  return [
    {
      part: b.part.name,
      ...remark('clash', 'error', {
        value: worst.depth,
        limit: 0,
        unit: 'mm',
        values: { between: [spotOf(a, worst.u), spotOf(b, worst.v)], by, made },
        source: [cite(null, { basis: 'computed' })],
      }),
    },
  ];
}
