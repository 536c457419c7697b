// A part as its files tell it: flat panels, and the bends between them, folded as far as asked.
import type { ManifoldToplevel } from 'manifold-3d';
import { cutLoops } from '../kit/cut-layer.js';
import { area, convexPieces, type Ring } from './outline.js';
import { chain, type Move, STAY, shift, spin, type V2, type V3 } from './rigid.js';
import { moved, prism, type Solid } from './solid.js';

/** A bend as the manifest has it. */
export interface WrittenBend {
  readonly id: string;
  readonly angle: number;
  readonly direction: 'up' | 'down';
  readonly insideRadius: number;
  readonly line: readonly [V2, V2];
  readonly zone: number;
  readonly hem?: string;
}

export interface Panel {
  /** The bend it hangs on; null for the one that stays put. */
  readonly id: string | null;
  readonly solids: readonly Solid[];
  readonly corners: Ring;
}

export interface Hinge {
  readonly bend: WrittenBend;
  readonly start: V2;
  readonly along: V2;
  readonly across: V2;
  readonly length: number;
  /** Panels on the right of the line and on its left, by index. */
  readonly sides: readonly [number, number];
  /** The side that the bend folds. */
  readonly child: number;
}

export interface Body {
  readonly thickness: number;
  readonly longest: number;
  readonly panels: readonly Panel[];
  readonly hinges: readonly Hinge[];
}

/** How far a bend is bent: radians, inside radius, and flat metal that is wound up. mm */
export interface Bent {
  readonly turn: number;
  readonly radius: number;
  readonly wound: number;
}

export const FLAT: Bent = { turn: 0, radius: 0, wound: 0 };

const SKIN = 0.05; // mm taken off every side of the sheet: what touches does not meet

/** The part of a manifest's entry and its cut file. */
export function bodyOf(
  library: ManifoldToplevel,
  part: { readonly thickness: number; readonly base: V2; readonly bends: readonly WrittenBend[] },
  dxf: string,
): Body {
  const blank = new library.CrossSection(cutLoops(dxf), 'EvenOdd');
  const lines = part.bends.map(lineOf);
  const zones = lines.map((h) => {
    const { length, bend } = h;
    const [s0, s1, t] = [-bend.zone, length + bend.zone, bend.zone / 2];
    return new library.CrossSection([
      [pointOn(h, s0, -t), pointOn(h, s1, -t), pointOn(h, s1, t), pointOn(h, s0, t)],
    ]);
  });
  const shapes = zones
    .reduce((rest, z) => rest.subtract(z), blank)
    .decompose()
    .filter((s) => s.area() > 0.02);
  const rings = shapes.map((s) => largest(s.toPolygons() as unknown as readonly Ring[]));
  const holding = (p: V2) => rings.findIndex((r) => inside(r, p));
  const sides = lines.map(
    (h) => ([-1, 1] as const).map((side) => beside(h, side, holding)) as [number, number],
  );
  const parents = treeFrom(holding(part.base), sides);
  const hinges = lines.map((h, i): Hinge => {
    const own = sides[i] as [number, number];
    return { ...h, sides: own, child: parents.get(own[0])?.hinge === i ? own[0] : own[1] };
  });
  const size = blank.bounds();
  return {
    thickness: part.thickness,
    longest: Math.max(size.max[0] - size.min[0], size.max[1] - size.min[1]),
    hinges,
    panels: shapes.map((shape, i): Panel => {
      const smaller = shape.offset(-SKIN, 'Miter', 2);
      const hinge = parents.get(i)?.hinge;
      return {
        id: hinge === undefined ? null : (part.bends[hinge] as WrittenBend).id,
        corners: rings[i] as Ring,
        solids: convexPieces(library, smaller.area() > 0.01 ? smaller : shape).map((ring) =>
          prism(
            ring.map(([x, y]): V3 => [x, y, SKIN]),
            [0, 0, part.thickness - 2 * SKIN],
          ),
        ),
      };
    }),
  };
}

function lineOf(bend: WrittenBend): Omit<Hinge, 'sides' | 'child'> {
  const [p, q] = bend.line;
  const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
  const along: V2 = [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
  return { bend, start: p, along, across: [-along[1], along[0]], length };
}

/** `s` along a line and `t` to its left. */
export const pointOn = (
  { start, along, across }: Pick<Hinge, 'start' | 'along' | 'across'>,
  s: number,
  t: number,
): [number, number] => [start[0] + along[0] * s + across[0] * t, start[1] + along[1] * s + across[1] * t];

const largest = (rings: readonly Ring[]): Ring => rings.reduce((a, b) => (area(b) > area(a) ? b : a));

function beside(h: Omit<Hinge, 'sides' | 'child'>, side: 1 | -1, holding: (p: V2) => number): number {
  const tries = [0.5, 0.25, 0.75, 0.1, 0.9, 0.02, 0.98].map((f) =>
    holding(pointOn(h, h.length * f, side * (h.bend.zone / 2 + 0.01))),
  );
  const found = tries.find((i) => i >= 0);
  if (found === undefined) throw new Error(`bend ${h.bend.id}: no panel on one side`);
  return found;
}

/** By panel, the hinge it hangs on, from the panel that stays put outwards. */
function treeFrom(
  root: number,
  sides: readonly (readonly [number, number])[],
): ReadonlyMap<number, { hinge: number }> {
  const found = new Map<number, { hinge: number }>();
  const queue = [root];
  for (const from of queue)
    sides.forEach(([a, b], hinge) => {
      const to = a === from ? b : b === from ? a : -1;
      if (to < 0 || to === root || found.has(to)) return;
      found.set(to, { hinge });
      queue.push(to);
    });
  return found;
}

function inside(ring: Ring, [x, y]: V2): boolean {
  return ring.reduce((odd, p, i) => {
    const q = ring[(i + 1) % ring.length] as V2;
    return p[1] > y !== q[1] > y && x < ((q[0] - p[0]) * (y - p[1])) / (q[1] - p[1]) + p[0] ? !odd : odd;
  }, false);
}

/** What crossing a bend from the side `from` does to the sheet beyond it. @param flat metal past the tangent line, mm */
function crossing(
  { thickness }: Body,
  h: Hinge,
  from: -1 | 1,
  bent: Bent,
  flat = bent.wound,
  part = 1,
): Move {
  if (bent.turn === 0) return STAY;
  const { bend, across } = h;
  const up = bend.direction === 'up';
  const out: V2 = [-across[0] * from, -across[1] * from];
  const foot = pointOn(h, 0, (from * bend.zone) / 2);
  const height = up ? thickness + bent.radius : -bent.radius;
  const axis: V2 = [out[1], -out[0]]; // turned by the right hand, what lies out goes up
  return chain(
    shift(foot[0], foot[1], height),
    spin(axis, (up ? 1 : -1) * bent.turn * part),
    shift(-out[0] * flat - foot[0], -out[1] * flat - foot[1], -height),
  );
}

/** Every panel and every bend's metal as moves of the flat, with one panel at rest. */
export interface Poses {
  readonly panels: readonly Move[];
  /** By hinge, the pose of the side nearer to the panel at rest, and which that is. */
  readonly hinges: readonly { readonly pose: Move; readonly from: -1 | 1 }[];
}

export function posesFrom(body: Body, root: number, bent: (h: Hinge) => Bent): Poses {
  const panels = new Map<number, Move>([[root, STAY]]);
  const hinges = new Map<number, Poses['hinges'][number]>();
  const queue = [root];
  for (const panel of queue)
    body.hinges.forEach((h, i) => {
      const k = h.sides.indexOf(panel);
      const to = h.sides[1 - k];
      if (k < 0 || to === undefined || panels.has(to)) return;
      const from = k === 0 ? -1 : 1;
      const pose = panels.get(panel) as Move;
      hinges.set(i, { pose, from });
      panels.set(to, chain(pose, crossing(body, h, from, bent(h))));
      queue.push(to);
    });
  return {
    panels: body.panels.map((_, i) => panels.get(i) as Move),
    hinges: body.hinges.map((_, i) => hinges.get(i) as Poses['hinges'][number]),
  };
}

const EIGHTH = Math.PI / 4;

/** The metal of a bend as prisms, none for one that is flat. */
export function bentMetal(
  body: Body,
  h: Hinge,
  { pose, from }: Poses['hinges'][number],
  bent: Bent,
): readonly Solid[] {
  if (bent.turn === 0) return [];
  const T = body.thickness;
  const up = h.bend.direction === 'up' ? 1 : -1;
  const count = Math.max(1, Math.ceil(bent.turn / EIGHTH - 1e-9));
  const half = bent.turn / count / 2;
  const [inner, outer] = [bent.radius + SKIN, bent.radius + T - SKIN];
  const middle = up > 0 ? T + bent.radius : -bent.radius;
  return Array.from({ length: count }, (_, i) => {
    // a wedge in the middle of its turn, then turned on with the sheet
    const share = (2 * i + 1) / (2 * count);
    const ring = [
      [-inner * Math.sin(half), inner * Math.cos(half)],
      [inner * Math.sin(half), inner * Math.cos(half)],
      [outer * Math.sin(half), outer * Math.cos(half)],
      [0, outer / Math.cos(half)],
      [-outer * Math.sin(half), outer * Math.cos(half)],
    ].map(([out = 0, down = 0]): V3 => {
      const [x, y] = pointOn(h, SKIN, from * (h.bend.zone / 2) - from * out);
      return [x, y, middle - up * down];
    });
    const [dx, dy] = [h.along[0] * (h.length - 2 * SKIN), h.along[1] * (h.length - 2 * SKIN)];
    const turned = chain(pose, crossing(body, h, from, bent, 0, share));
    return movedPrism(ring, [dx, dy, 0], turned);
  });
}

const movedPrism = (ring: readonly V3[], up: V3, by: Move): Solid => moved(prism(ring, up), by);
