import type { Unsaid } from '../errors/finding.js';
import { boxOfPieces } from '../fold/extent.js';
import type { Box3, FormedBend } from '../fold/formed.js';
import { boxDistance, leastAlong, type Prism, panelPrisms } from '../fold/prism.js';
import { prismDistanceUpTo } from '../fold/prism-distance.js';
import { overlapDepth } from '../fold/prism-overlap.js';
import { shellDepth, shellStrips } from '../fold/shell.js';
import { dot3, scale3, type Vec3 } from '../fold/space.js';
import { stand } from '../fold/stand.js';
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
  readonly between: readonly [string, string];
  /** Between the faces that meet. */
  readonly gap: number;
}

/** A panel, or a bend, of a piece where it stands, with the box round it. */
interface Lump extends Box3 {
  readonly name: string;
  readonly panel: string;
  /** In flat-faced pieces; made when first asked for, since most lumps lie far from everything. */
  readonly prisms: () => readonly Prism[];
  /** Set for a bend, whose true shape is round. */
  readonly bend: FormedBend | null;
}

const CLASH = 0.01; // mm; less is rounding of the strips bends are measured by
const TIGHT = 0.005;

/**
 * Fit of every joint, and clashes between any two pieces.
 * @param open joints that do not close: what runs into each other there has to give way by the whole misfit
 */
export function fitsOf(
  joints: readonly Seated[],
  placed: readonly Placed[],
  open: readonly Miss[],
): { readonly rows: readonly FitRow[]; readonly findings: readonly Unsaid[] } {
  const lumps = new Map(placed.map((p) => [p.piece, lumpsOf(p)]));
  const of = ({ piece }: Placed) => lumps.get(piece) as readonly Lump[];
  const rows = joints.map((s) => fitRow(s, matingOf(s, joints), of(s.from), of(s.to)));
  const tight = rows.flatMap((r, i) => tightFinding(r, joints[i] as Seated));
  const clashes = placed.flatMap((a, i) =>
    placed.slice(i + 1).flatMap((b) => clashFindings(a, b, of(a), of(b), open)),
  );
  return { rows, findings: [...clashes, ...tight] };
}

function lumpsOf({ piece, part: { formed }, pose }: Placed): readonly Lump[] {
  const standing = stand(formed, pose);
  const panels = standing.panels.map((panel): Lump => {
    const box = boxOfPieces([panel], [], formed.thickness);
    const prisms = once(() => panelPrisms(panel, formed.thickness));
    return { name: `${piece}.${panel.id}`, panel: panel.id, prisms, bend: null, ...box };
  });
  const bends = standing.bends.map((bend): Lump => {
    const box = boxOfPieces([], [bend], formed.thickness);
    const prisms = once(() => shellStrips(bend));
    return { name: `bend ${bend.id} of ${piece}`, panel: bend.id, prisms, bend, ...box };
  });
  return [...panels, ...bends];
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

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
const seated = (p: Lump, q: Lump, { faces }: Mating) =>
  faces[0].includes(p.panel) && faces[1].includes(q.panel);

/** True for lumps with the joint's plane between them: that they touch there is meant. */
function parted(p: Lump, q: Lump, { normal, at }: Mating): boolean {
  const least = (l: Lump, [x, y, z]: Vec3) =>
    Math.min(...l.prisms().map((solid) => leastAlong(solid, x, y, z)));
  return -least(p, scale3(normal, -1)) - at <= CLASH && least(q, normal) - at >= -CLASH;
}

function fitRow(
  { joint, gap }: Seated,
  matings: readonly Mating[],
  a: readonly Lump[],
  b: readonly Lump[],
): FitRow {
  const pairs = a.flatMap((p) => b.map((q) => ({ p, q, far: boxDistance(p, q) })));
  let best: { found: number; between: readonly [string, string] } = { found: Infinity, between: ['', ''] };
  for (const { p, q, far } of pairs.toSorted((x, y) => x.far - y.far)) {
    if (far >= best.found) break; // so are all that follow
    if (matings.some((m) => seated(p, q, m))) continue;
    const found = lumpDistance(p, q, best.found);
    if (found >= best.found || matings.some((m) => found <= m.gap + CLASH && parted(p, q, m))) continue;
    best = { found, between: [p.name, q.name] };
  }
  return { joint: joint.name, asked: joint.clearance, ...best, gap };
}

function lumpDistance(p: Lump, q: Lump, enough: number): number {
  const depth = lumpDepth(p, q);
  if (depth > CLASH) return -depth;
  let best = enough;
  for (const u of p.prisms())
    for (const v of q.prisms()) best = Math.min(best, Math.max(0, prismDistanceUpTo(u, v, best)));
  return best;
}

/** How deep two lumps reach into each other; bends by their true round shape against panels. mm */
function lumpDepth(p: Lump, q: Lump): number {
  if (boxDistance(p, q) >= 0) return 0;
  if (!p.prisms().some((u) => q.prisms().some((v) => boxDistance(u, v) < 0))) return 0;
  const deepest = (depths: readonly number[]) => depths.reduce((x, y) => Math.max(x, y), 0);
  const { bend: ring } = p;
  if (ring !== null && q.bend === null) return deepest(q.prisms().map((v) => shellDepth(v, ring)));
  const { bend: other } = q;
  if (other !== null && ring === null) return deepest(p.prisms().map((u) => shellDepth(u, other)));
  return deepest(p.prisms().flatMap((u) => q.prisms().map((v) => overlapDepth(u, v))));
}

function tightFinding(row: FitRow, { from }: Seated): readonly Unsaid[] {
  if (row.found < 0 || row.found >= row.asked - TIGHT) return [];
  return [
    {
      code: 'fit-tight',
      severity: 'warning',
      part: from.part.name,
      value: row.found,
      limit: row.asked,
      unit: 'mm',
      message: (say) =>
        `joint ${row.joint}: ${say.size(row.found)} between ${row.between[0]} and ${row.between[1]}, ${say.size(row.asked)} asked`,
      source: 'the clearance of the joint',
      fix: (say) => `give it ${say.least(row.asked - row.found)} more, or ask for less clearance`,
    },
  ];
}

function clashFindings(
  a: Placed,
  b: Placed,
  p: readonly Lump[],
  q: readonly Lump[],
  open: readonly Miss[],
): readonly Unsaid[] {
  const pairs = p
    .flatMap((u) => q.map((v) => ({ u, v, depth: lumpDepth(u, v) })))
    .filter((c) => c.depth > CLASH);
  const worst = pairs.reduce<(typeof pairs)[number] | null>(
    (x, y) => (x === null || y.depth > x.depth ? y : x),
    null,
  );
  if (worst === null) return [];
  const joined = open.filter((m) => m.pieces.includes(a.piece) && m.pieces.includes(b.piece));
  const by = Math.max(worst.depth, ...joined.map((m) => m.into));
  return [
    {
      code: 'clash',
      severity: 'error',
      part: b.part.name,
      value: worst.depth,
      limit: 0,
      unit: 'mm',
      message: (say) =>
        `${worst.u.name} and ${worst.v.name} are in the same place, ${say.size(worst.depth)} deep`,
      source: 'computed from the formed parts, bend radii included',
      fix: (say) => `make ${b.piece} or ${a.piece} smaller there by ${say.least(by)}`,
    },
  ];
}
