import type { Part, PartPanel, Point } from '@tinwright/core';
import type { EdgeFold } from '@tinwright/core/family';

/** A bend as one of its two panels sees it, in that panel's frame. mm, degrees */
export interface OutlineSide {
  /** Panel that looks, and the one beyond the bend. */
  readonly panel: string;
  readonly beyond: string;
  /** Id of the bend: the panel that it folds. */
  readonly bend: string;
  /** A point of the mould line, and the way out over it. */
  readonly origin: Point;
  readonly out: Point;
  /** Ends of the bent material along `out` turned left by 90°. */
  readonly span: readonly [number, number];
  /** Signed as the part has it: up is positive. */
  readonly angle: number;
  readonly insideRadius: number;
  readonly hem: EdgeFold | null;
}

/** The bends round a panel: its own first, then those of what hangs on it. */
export function sidesOf({ panels }: Pick<Part, 'panels'>, id: string): readonly OutlineSide[] {
  return panels.flatMap((p): readonly OutlineSide[] => {
    if (p.hang === null) return [];
    const { bend, hinge, zone } = p.hang;
    const common = { bend: p.id, angle: bend.angle, insideRadius: bend.insideRadius, hem: bend.hem };
    const ends = [
      Math.max(zone.parentSide[0], zone.childSide[0]),
      Math.min(zone.parentSide[1], zone.childSide[1]),
    ] as const;
    if (p.id === id)
      // its own bend lies on y = 0, out is down: left of down is +x
      return [{ ...common, panel: id, beyond: bend.parent, origin: [0, 0], out: [0, -1], span: ends }];
    if (bend.parent !== id) return [];
    const { origin, x, y } = hinge.frame;
    const along: Point = [-y[1], y[0]];
    const at = ends.map((e) => (origin[0] + x[0] * e) * along[0] + (origin[1] + x[1] * e) * along[1]);
    const span = [Math.min(...at), Math.max(...at)] as const;
    return [{ ...common, panel: id, beyond: p.id, origin, out: y, span }];
  });
}

/** How far a panel's own flat metal reaches back from the mould line of one of its bends, mm. */
export function reachFrom({ shape }: Pick<PartPanel, 'shape'>, { origin, out }: OutlineSide): number {
  return Math.max(...shape.map(({ from }) => back(from, origin, out)));
}

/** The same, up to the mould lines of its other bends: the outside leg. mm */
export function legFrom(
  { outline, shape }: PartPanel,
  side: OutlineSide,
  others: readonly OutlineSide[],
): number {
  const flat = reachFrom({ shape }, side);
  const opposite = others.filter((o) => o !== side && isOpposite(o, side));
  // authored corners lie on mould lines
  return opposite.length === 0
    ? flat
    : Math.max(flat, ...outline.map(({ from }) => back(from, side.origin, side.out)));
}

const back = (p: Point, o: Point, out: Point): number => -((p[0] - o[0]) * out[0] + (p[1] - o[1]) * out[1]);

/** True for two bends on opposite, parallel edges of a panel. */
export const isOpposite = (a: OutlineSide, b: OutlineSide): boolean =>
  a.out[0] * b.out[0] + a.out[1] * b.out[1] < -1 + 1e-9;

/** Between the mould lines of two opposite bends, mm. */
export const between = (a: OutlineSide, b: OutlineSide): number =>
  (a.origin[0] - b.origin[0]) * a.out[0] + (a.origin[1] - b.origin[1]) * a.out[1];

/** Stretch along the line that two opposite bends share, mm. */
export function shared(a: OutlineSide, b: OutlineSide): number {
  const mirrored = [-b.span[1], -b.span[0]] as const;
  return Math.min(a.span[1], mirrored[1]) - Math.max(a.span[0], mirrored[0]);
}

/** A panel of a part by its id. */
export const panelNamed = ({ panels }: Pick<Part, 'panels'>, id: string): PartPanel =>
  panels.find((p) => p.id === id) as PartPanel;

/** Outside height of what stands beyond a bend of a panel. */
export function heightOf(part: Pick<Part, 'panels'>, side: OutlineSide): number {
  const beyond = sidesOf(part, side.beyond);
  const back = beyond.find((s) => s.bend === side.bend) as OutlineSide;
  return legFrom(panelNamed(part, side.beyond), back, beyond);
}
