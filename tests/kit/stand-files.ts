// Puts an object together from what was written: every part folded from its cut file, every piece moved by the
// matrix of the manifest. Nothing of the assembly code is used.
import type { JobPlan } from '@tinwright/core';
import { jobFiles } from '@tinwright/files';
import type { Manifold, Mat4 } from 'manifold-3d';
import type { WrittenPart } from './bend-zones.js';
import { type FoldedPieces, foldedPoint, foldPieces, manifold, moved } from './fold-files.js';

type Vec3 = readonly [number, number, number];

/** A panel or the strips of a bend of a piece, where it stands. `panel` is null for the panel that stays put. */
export interface Lump {
  readonly panel: string | null;
  readonly bend: boolean;
  readonly solid: () => Manifold;
  /** A box that holds it. */
  readonly box: Box;
}

interface Box {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** A piece where it stands. */
export interface StandingPiece {
  readonly name: string;
  readonly part: string;
  readonly lumps: readonly Lump[];
  /** The most metal that lies beside a bend of it, within the bend's width, and is not turned by it. mm² */
  readonly beside: number;
}

/** A fastener by its marks: where each stands on its sheet's two faces, and the sheets' thicknesses. mm */
export interface StandingFastener {
  readonly id: string;
  readonly kind: string;
  readonly joint: string;
  readonly ends: readonly {
    readonly piece: string;
    readonly low: Vec3;
    readonly high: Vec3;
    readonly thickness: number;
  }[];
}

/** An object as its files put it together. */
export interface StandingObject {
  readonly pieces: readonly StandingPiece[];
  readonly fasteners: readonly StandingFastener[];
}

interface Written {
  readonly parts: readonly (WrittenPart & {
    readonly marks: readonly { readonly at: readonly [number, number] }[];
    readonly files: { readonly dxf: string };
  })[];
  readonly assembly: {
    readonly placements: readonly {
      readonly name: string;
      readonly part: string;
      readonly matrix: readonly number[];
    }[];
    readonly fasteners: readonly {
      readonly id: string;
      readonly kind: string;
      readonly joint: string;
      readonly on: readonly { readonly placement: string; readonly mark: number }[];
    }[];
  };
}

/** Put a planned job together from its files. @throws Error where a mark lies on no panel */
export function standFiles(plan: JobPlan): Promise<StandingObject> {
  const files = new Map(jobFiles(plan, { dxf: 'r2000' }).map((f) => [f.path, String(f.content)]));
  return standWritten((path) => files.get(path) ?? '');
}

/** Put an object together from what was written. @param text of a file by its path in the folder */
export async function standWritten(text: (path: string) => string): Promise<StandingObject> {
  const { Manifold } = await manifold();
  const { parts, assembly } = JSON.parse(text('job.json')) as Written;
  const folded = new Map(
    await Promise.all(
      parts.map(async (p) => {
        const pieces = await foldPieces(p, text(p.files.dxf));
        return [p.name, { written: p, ...pieces, lumps: lumpsOf(pieces, p.thickness, Manifold) }] as const;
      }),
    ),
  );
  const of = (name: string) => {
    const found = folded.get(name);
    if (found === undefined) throw new Error(`no part ${name}`);
    return found;
  };
  const pieces = assembly.placements.map(({ name, part, matrix }): StandingPiece => {
    const { lumps, written, bends } = of(part);
    const beside = Math.max(0, ...bends.map((b) => b.beside));
    const placed = lumps.map(({ panel, bend, solid, around }): Lump => {
      const stands = once(() => solid().transform(matrix as unknown as Mat4));
      const points = around.map((p) => moved(matrix, p));
      return { panel, bend, solid: stands, box: boxOf(points, bend ? written.thickness : 0) };
    });
    return { name, part, lumps: placed, beside };
  });
  const fasteners = assembly.fasteners.map(({ id, kind, joint, on }): StandingFastener => {
    const ends = on.map(({ placement, mark }) => {
      const placed = assembly.placements.find((p) => p.name === placement);
      if (placed === undefined) throw new Error(`${id}: no placement ${placement}`);
      const part = of(placed.part);
      const at = part.written.marks[mark]?.at;
      const { thickness } = part.written;
      const [low, high] = [0, thickness].map((z) => (at === undefined ? null : foldedPoint(part, at, z)));
      if (!low || !high) throw new Error(`${id}: mark ${mark} of ${placed.part} lies on no panel`);
      return {
        piece: placement,
        low: moved(placed.matrix, low),
        high: moved(placed.matrix, high),
        thickness,
      };
    });
    return { id, kind, joint, ends };
  });
  return { pieces, fasteners };
}

/**
 * How thick the thickest space is that two pieces share, mm, over every pair of panels and bends; 0 when they share
 * none. Of a space in its box: the least side, or twice its volume over the two longer sides where it lies askew.
 */
export function sharedThickness(a: StandingPiece, b: StandingPiece): number {
  const thick = (u: Lump, v: Lump) => {
    if (!boxesMeet(u.box, v.box, 0)) return 0;
    const shared = u.solid().intersect(v.solid());
    const volume = shared.volume();
    if (volume < 1e-6) return 0;
    const { min, max } = shared.boundingBox();
    const sides = [0, 1, 2].map((k) => (max[k] as number) - (min[k] as number));
    const [a = 0, b = 0, c = 0] = sides.toSorted((x, y) => x - y);
    return Math.min(a, (2 * volume) / (b * c));
  };
  return Math.max(0, ...a.lumps.flatMap((u) => b.lumps.map((v) => thick(u, v))));
}

/** Least distance between lumps of two pieces, up to `most`; pairs that `skip` names are left out. mm */
export function leastDistance(
  a: StandingPiece,
  b: StandingPiece,
  most: number,
  skip: (u: Lump, v: Lump) => boolean = () => false,
): number {
  let best = most;
  for (const u of a.lumps)
    for (const v of b.lumps)
      if (!skip(u, v) && boxesMeet(u.box, v.box, best))
        best = Math.min(best, u.solid().minGap(v.solid(), best));
  return best;
}

/** True when two boxes come nearer than `margin`. */
function boxesMeet(p: Box, q: Box, margin: number): boolean {
  return ([0, 1, 2] as const).every((k) => p.min[k] < q.max[k] + margin && q.min[k] < p.max[k] + margin);
}

/** A panel or bend of a part, in the part's own frame. */
interface OwnLump extends Pick<Lump, 'panel' | 'bend' | 'solid'> {
  readonly around: readonly Vec3[];
}

/** Solids of a part; those of bends are worked out once, and only when something comes near them. */
function lumpsOf({ panels, bends }: FoldedPieces, T: number, M: typeof Manifold): readonly OwnLump[] {
  return [
    ...panels.map(({ id, solid, rings, matrix }): OwnLump => {
      const around = rings.flat().flatMap(([x = 0, y = 0]) => [0, T].map((z) => moved(matrix, [x, y, z])));
      return { panel: id, bend: false, solid: () => solid, around };
    }),
    ...bends.map(
      ({ id, strips, around }): OwnLump => ({
        panel: id,
        bend: true,
        solid: once(() => M.union([...strips()])),
        around,
      }),
    ),
  ];
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function boxOf(points: readonly Vec3[], grown: number): Box {
  const at = (pick: (...v: number[]) => number, by: number) =>
    [0, 1, 2].map((k) => pick(...points.map((p) => p[k] as number)) + by) as unknown as Vec3;
  return { min: at(Math.min, -grown), max: at(Math.max, grown) };
}

/** How far the marks of a fastener miss each other: along the sheets, and the gap between the sheets' faces. mm */
export function missOf({ ends }: StandingFastener): { readonly aside: number; readonly gap: number } {
  const [a, b] = ends;
  if (a === undefined || b === undefined) throw new Error('a fastener on fewer than two sheets');
  const normal = a.high.map((v, k) => (v - (a.low[k] as number)) / a.thickness);
  const middle = (e: typeof a) => e.low.map((v, k) => (v + (e.high[k] as number)) / 2);
  const d = middle(b).map((v, k) => v - (middle(a)[k] as number));
  const across = d.reduce((s, v, k) => s + v * (normal[k] as number), 0);
  const aside = Math.hypot(...d.map((v, k) => v - across * (normal[k] as number)));
  return { aside, gap: Math.abs(across) - (a.thickness + b.thickness) / 2 };
}
