// Zones of the bends of a written part, and the metal that each of them turns.
import type { CrossSection } from 'manifold-3d';

/** The entries of a manifest's part that folding needs. */
export interface WrittenPart {
  readonly name: string;
  readonly thickness: number;
  readonly base: readonly [number, number];
  readonly bends: readonly {
    readonly id: string;
    readonly angle: number;
    readonly direction: 'up' | 'down';
    readonly insideRadius: number;
    readonly line: readonly [readonly [number, number], readonly [number, number]];
    readonly zone: number;
  }[];
}

export type V = readonly [number, number];

export const SKIN = 0.005; // mm, shaved off before pieces are tested against each other
const LEAST_SHARE = 1e-4; // mm²

/** A bend's line, with directions along and across it. mm */
export interface Hinge {
  readonly bend: WrittenPart['bends'][number];
  readonly start: V;
  readonly along: V;
  readonly across: V;
  readonly length: number;
}

/** Of a bend as it was written. */
export function hingeOf(bend: WrittenPart['bends'][number]): Hinge {
  const [p, q] = bend.line;
  const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
  const along: V = [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
  return { bend, start: p, along, across: [-along[1], along[0]], length };
}

/** The point so far along a bend's line and so far to its left. */
export const point = ({ start, along, across }: Hinge, s: number, t: number): [number, number] => [
  start[0] + along[0] * s + across[0] * t,
  start[1] + along[1] * s + across[1] * t,
];

/** A strip along a bend's line from t0 to t1 across it, so far past its ends. */
export type Strip = (h: Hinge, t0: number, t1: number, over: number) => CrossSection;

/** Strips of a library's kind. */
export const stripsOf =
  (Kind: typeof CrossSection): Strip =>
  (h, t0, t1, over) =>
    new Kind([
      [
        point(h, -over, t0),
        point(h, h.length + over, t0),
        point(h, h.length + over, t1),
        point(h, -over, t1),
      ],
    ]);

/**
 * The metal each bend turns. Zones can end slanted, so it reaches a zone's width past the line's ends; what lies there
 * belongs to another bend, or hangs on one, where no metal joins it to the zone itself.
 */
export function zoneMetal(
  blank: CrossSection,
  hinges: readonly Hinge[],
  strip: Strip,
): readonly CrossSection[] {
  const across = (h: Hinge, over: number) => strip(h, -h.bend.zone / 2, h.bend.zone / 2, over);
  const cores = hinges.map((h) => across(h, 0));
  return hinges.map((h, i) => {
    const core = cores[i] as CrossSection;
    const reach = blank.intersect(across(h, h.bend.zone));
    const free = cores.reduce((rest, c) => (c === core ? rest : rest.subtract(c)), reach);
    // a hair along the edge of another zone joins nothing: what hangs together does so over more than two skins
    const solid = free.offset(-SKIN, 'Miter').decompose();
    const own = solid
      .filter((p) => p.intersect(core).area() > LEAST_SHARE)
      .map((p) => p.offset(2 * SKIN, 'Miter'));
    return own.reduce((all, p) => all.add(p.intersect(free)), core.intersect(blank));
  });
}
