import type { Area, CutTree, SheetPlan } from './shear-plan.js';

const SAME = 1e-6;

/** Whether the lower and the upper side of a cut come out at a size that blanks need, across the cut. */
export type SidesExact = readonly [low: boolean, high: boolean];

/** Is a piece, along x and along y, just as long as the blanks that are cut from it need? */
interface Exact {
  readonly x: boolean;
  readonly y: boolean;
}

/**
 * For every cut of a sheet, which of its sides have their final size once it is made: a blank has; a strip has it where
 * blanks fill it; what ends in offcut or scrap has not. Written into `found`.
 */
export function exactSides(
  tree: CutTree,
  area: Area,
  { parts }: Pick<SheetPlan, 'parts'>,
  kerf: number,
  found: Map<CutTree, SidesExact>,
): Exact {
  const [low, high] = sides(tree, area, kerf);
  const of = (below: CutTree | null, piece: Area): Exact => {
    if (below !== null) return exactSides(below, piece, { parts }, kerf, found);
    const blank = parts.some((p) => same(p, piece));
    return { x: blank, y: blank };
  };
  const [a, b] = [of(tree.low, low), of(tree.high, high)];
  const { axis } = tree;
  found.set(tree, [a[axis], b[axis]]);
  const along = a[axis] && b[axis];
  return axis === 'x' ? { x: along, y: a.y || b.y } : { x: a.x || b.x, y: along };
}

/** Two areas that are one. */
export function same(a: Area, b: Area): boolean {
  return [a.x - b.x, a.y - b.y, a.w - b.w, a.h - b.h].every((d) => Math.abs(d) < SAME * 10);
}

/** Both sides of a cut; the upper one is empty where the kerf runs over the edge. */
export function sides({ axis, at }: CutTree, area: Area, kerf: number): readonly [Area, Area] {
  if (axis === 'x') {
    const from = Math.min(at + kerf, area.x + area.w);
    return [
      { ...area, w: at - area.x },
      { ...area, x: from, w: area.x + area.w - from },
    ];
  }
  const from = Math.min(at + kerf, area.y + area.h);
  return [
    { ...area, h: at - area.y },
    { ...area, y: from, h: area.y + area.h - from },
  ];
}
