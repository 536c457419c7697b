// Folds a pattern from what was written, the cut file and the manifest, with a routine of its own on manifold-3d.
import Module, { type CrossSection, type Manifold, type ManifoldToplevel, type Mat4 } from 'manifold-3d';
import {
  type Hinge,
  hingeOf,
  point,
  SKIN,
  type Strip,
  stripsOf,
  type V,
  type WrittenPart,
  zoneMetal,
} from './bend-zones.js';
import { cutLoops } from './cut-layer.js';

/** What came out. mm, mm³ */
export interface Folded {
  readonly size: readonly [number, number, number];
  readonly panels: number;
  /** Volume that two panels share, the worst pair. */
  readonly shared: number;
  /** Volume of panels and bends together. */
  readonly volume: number;
}

let loaded: Promise<ManifoldToplevel> | null = null;

/** The library, loaded once a test file. */
export async function manifold(): Promise<ManifoldToplevel> {
  loaded ??= Module().then((m) => {
    m.setup();
    return m;
  });
  return loaded;
}

/** Drop the library with every solid made so far, which it would keep; the next one who asks gets it anew. */
export function dropManifold(): void {
  loaded = null;
}

const SAG = 0.002; // mm, between a bend and the flat strips it is folded from

/** Column-major 4×4. */
const multiply = (a: Mat4, b: Mat4): Mat4 =>
  Array.from({ length: 16 }, (_, i) => {
    const [row, col] = [i % 4, Math.floor(i / 4)];
    return [0, 1, 2, 3].reduce((s, k) => s + (a[k * 4 + row] as number) * (b[col * 4 + k] as number), 0);
  }) as unknown as Mat4;

const move = (x: number, y: number, z: number) =>
  [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, x, y, z, 1] as unknown as Mat4;

/** Turn about a line through the origin along the unit vector (ux, uy, 0). */
function spin([ux, uy]: V, radian: number): Mat4 {
  const [c, s] = [Math.cos(radian), Math.sin(radian)];
  const v = 1 - c;
  return [
    c + ux * ux * v,
    ux * uy * v,
    -uy * s,
    0,
    ux * uy * v,
    c + uy * uy * v,
    ux * s,
    0,
    uy * s,
    -ux * s,
    c,
    0,
    0,
    0,
    0,
    1,
  ] as unknown as Mat4;
}

/** A flat piece of a folded part: a panel by the id of the bend it hangs on, null for the one that stays put. */
export interface FoldedPanel {
  readonly id: string | null;
  readonly shape: CrossSection;
  readonly rings: Rings;
  readonly matrix: Mat4;
  readonly solid: Manifold;
}

type Rings = readonly (readonly (readonly number[])[])[];

/** A part folded from its files, piece by piece, in the frame of its base panel on the flat. */
export interface FoldedPieces {
  readonly panels: readonly FoldedPanel[];
  readonly bends: readonly FoldedBend[];
}

/** The bent material of a folded part, by the id of its bend. */
export interface FoldedBend {
  readonly id: string;
  /** The flat strips it is folded from; worked out when asked for. */
  readonly strips: () => readonly Manifold[];
  /** Points whose box, grown by a bend's thickness, holds all of it. */
  readonly around: readonly (readonly [number, number, number])[];
  /** Metal within a zone's width past the line's ends that the bend does not turn. mm² */
  readonly beside: number;
}

/** Fold one part from its DXF text and manifest entry, and keep its pieces. */
export async function foldPieces(part: WrittenPart, dxf: string): Promise<FoldedPieces> {
  const { CrossSection, Manifold } = await manifold();
  const blank = new CrossSection(cutLoops(dxf), 'EvenOdd');
  const hinges = part.bends.map(hingeOf);
  const strip = stripsOf(CrossSection);
  // zones can end slanted: reach a little past the line's ends, never into a neighbour's panel
  const zones = hinges.map((h) => strip(h, -h.bend.zone / 2, h.bend.zone / 2, h.bend.zone));
  const metals = zoneMetal(blank, hinges, strip);
  const shapes = zones
    .reduce((rest, z) => rest.subtract(z), blank)
    .decompose()
    .filter((p) => p.area() > 0.02);
  const rings = shapes.map((p): Rings => p.toPolygons());
  const holds = (at: V) => rings.findIndex((r) => inside(r, at));
  const poses = placePanels(part, hinges, shapes.length, holds);
  const T = part.thickness;
  const panels = shapes.map((shape, i): FoldedPanel => {
    const pose = poses[i];
    if (pose === undefined)
      throw new Error(`${part.name}: a panel of ${shape.area().toFixed(2)} mm² hangs on no bend`);
    const { matrix, fold } = pose;
    const solid = Manifold.extrude(shape, T).transform(matrix);
    return { id: fold?.hinge.bend.id ?? null, shape, rings: rings[i] as Rings, matrix, solid };
  });
  const bends = poses.flatMap((pose) => {
    const fold = pose?.fold;
    if (fold === undefined) return [];
    const { hinge } = fold;
    const metal = metals[hinges.indexOf(hinge)] as CrossSection;
    const strips = () => bendStrips(Manifold, metal, fold, T, strip);
    const near = blank.intersect(zones[hinges.indexOf(hinge)] as CrossSection);
    return [{ id: hinge.bend.id, strips, around: aroundBend(fold, T), beside: near.area() - metal.area() }];
  });
  return { panels, bends };
}

/** Points along both ends of a bend, a zone's width past them, on both faces. */
function aroundBend(fold: Fold, T: number): FoldedBend['around'] {
  const { hinge, side } = fold;
  const { zone } = hinge.bend;
  return Array.from({ length: 9 }, (_, i) => i / 8).flatMap((part) =>
    [-zone, hinge.length + zone].flatMap((s) =>
      [0, T].map((z) => {
        const [x, y] = point(hinge, s, side * (part - 0.5) * zone);
        return moved(turned(fold, T, part * zone, part), [x, y, z]);
      }),
    ),
  );
}

/** Fold one part from its DXF text and manifest entry. */
export async function foldFiles(part: WrittenPart, dxf: string): Promise<Folded> {
  const { Manifold } = await manifold();
  const { panels, bends } = await foldPieces(part, dxf);
  const solids = [...panels.map((p) => p.solid), ...bends.flatMap((b) => b.strips())];
  const boxes = solids.map((b) => b.boundingBox());
  const size = [0, 1, 2].map(
    (k) =>
      Math.max(...boxes.map((b) => b.max[k] as number)) - Math.min(...boxes.map((b) => b.min[k] as number)),
  );
  return {
    size: size as unknown as Folded['size'],
    panels: panels.length,
    shared: worstPair(Manifold, panels, part.thickness),
    volume: solids.reduce((s, b) => s + b.volume(), 0),
  };
}

/** Where a point of the flat stands once folded, `height` over the unmarked face; null off every panel. */
export function foldedPoint(
  { panels }: FoldedPieces,
  at: readonly [number, number],
  height: number,
): readonly [number, number, number] | null {
  const panel = panels.find((p) => inside(p.rings, at));
  return panel === undefined ? null : moved(panel.matrix, [at[0], at[1], height]);
}

/** A point brought on by a column-major 4×4. */
export function moved(
  m: Mat4 | readonly number[],
  [x, y, z]: readonly [number, number, number],
): readonly [number, number, number] {
  const row = (k: number) =>
    (m[k] as number) * x + (m[k + 4] as number) * y + (m[k + 8] as number) * z + (m[k + 12] as number);
  return [row(0), row(1), row(2)];
}

interface Fold {
  readonly hinge: Hinge;
  readonly parent: Mat4;
  readonly side: 1 | -1;
}
interface PanelPose {
  readonly matrix: Mat4;
  readonly fold?: Fold;
}

/** Breadth first from the panel that stays put, over every bend once. */
function placePanels(
  part: WrittenPart,
  hinges: readonly Hinge[],
  count: number,
  holds: (at: V) => number,
): (PanelPose | undefined)[] {
  const poses = new Array<PanelPose | undefined>(count).fill(undefined);
  const base = holds(part.base);
  if (base < 0) throw new Error(`${part.name}: the base point lies on no panel`);
  poses[base] = { matrix: move(0, 0, 0) };
  const links = hinges.map((hinge) => ({
    hinge,
    sides: ([1, -1] as const).map((side) => beside(hinge, side, holds)),
  }));
  const queue = [base];
  for (let i = 0; i < queue.length; i++) {
    const from = queue[i] as number;
    for (const { hinge, sides } of links) {
      const at = sides.indexOf(from);
      const to = sides[1 - at];
      if (at < 0 || to === undefined || poses[to] !== undefined) continue;
      const fold: Fold = { hinge, parent: (poses[from] as PanelPose).matrix, side: at === 0 ? -1 : 1 };
      poses[to] = { matrix: turned(fold, part.thickness, hinge.bend.zone, 1), fold };
      queue.push(to);
    }
  }
  return poses;
}

/** The panel that touches a zone on one side, looked for along its length. */
function beside(h: Hinge, side: 1 | -1, holds: (at: V) => number): number {
  const tries = [0.5, 0.25, 0.75, 0.1, 0.9, 0.02, 0.98].map((f) =>
    holds(point(h, h.length * f, side * (h.bend.zone / 2 + 0.01))),
  );
  const found = tries.find((i) => i >= 0);
  if (found === undefined) throw new Error(`bend ${h.bend.id}: no panel on one side`);
  return found;
}

/** Metal that lies `flat` mm past the parent's tangent line, turned through `part` of the bend. */
function turned({ hinge, parent, side }: Fold, T: number, flat: number, part: number): Mat4 {
  const { bend, along, across } = hinge;
  const up = bend.direction === 'up';
  const out: V = [across[0] * side, across[1] * side];
  const foot = point(hinge, 0, (-side * bend.zone) / 2);
  const height = up ? T + bend.insideRadius : -bend.insideRadius;
  const axis: V = [along[0] * side, along[1] * side]; // along × out points up for side 1
  const radian = (((up ? 1 : -1) * bend.angle * Math.PI) / 180) * part;
  const back = move(-out[0] * flat - foot[0], -out[1] * flat - foot[1], -height);
  return multiply(parent, multiply(move(foot[0], foot[1], height), multiply(spin(axis, radian), back)));
}

function bendStrips(
  M: typeof Manifold,
  metal: CrossSection,
  fold: Fold,
  T: number,
  strip: Strip,
): Manifold[] {
  const { hinge, side } = fold;
  const { zone, angle, insideRadius } = hinge.bend;
  const count = Math.max(8, Math.ceil((angle / 57) * Math.sqrt((insideRadius + T) / (8 * SAG))));
  return Array.from({ length: count }, (_, j) => [j / count, (j + 1) / count] as const).flatMap(([a, b]) => {
    // off the tangent lines by a hair: a neighbour that ends there would be caught as a sliver
    const [low, high] = [Math.max(a, 1e-5), Math.min(b, 1 - 1e-5)];
    const [t0, t1] = side === 1 ? [low - 0.5, high - 0.5] : [0.5 - high, 0.5 - low];
    const own = metal.intersect(strip(hinge, t0 * zone, t1 * zone, 0.6 * zone));
    const matrix = turned(fold, T, ((a + b) / 2) * zone, (a + b) / 2);
    return own.decompose().map((p) => M.extrude(p, T).transform(matrix));
  });
}

function worstPair(M: typeof Manifold, panels: readonly FoldedPanel[], T: number): number {
  const thin = panels.map(({ shape, matrix }) =>
    M.extrude(shape.offset(-SKIN, 'Miter'), T - 2 * SKIN)
      .translate([0, 0, SKIN])
      .transform(matrix),
  );
  return Math.max(0, ...thin.flatMap((a, i) => thin.slice(i + 1).map((b) => a.intersect(b).volume())));
}

function inside(polygons: Rings, [x, y]: V): boolean {
  let odd = false;
  for (const ring of polygons)
    ring.forEach((p, i) => {
      const q = ring[(i + 1) % ring.length] as readonly number[];
      const [px, py, qx, qy] = [p[0] as number, p[1] as number, q[0] as number, q[1] as number];
      if (py > y !== qy > y && x < ((qx - px) * (y - py)) / (qy - py) + px) odd = !odd;
    });
  return odd;
}
