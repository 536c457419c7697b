import type { Laid } from './floor.js';
import type { Kit, NestShape } from './kit.js';
import type { BedKind, FilledBed, NestLayout, NestProblem } from './problem.js';

/** Area of laid pieces, grown as they are, mm². */
export function layoutArea(kit: Kit, laid: readonly Laid[]): number {
  return laid.reduce((sum, l) => sum + (kit.shapes[l.shape] as NestShape).area, 0);
}

/** How far east a bed is used, mm. */
export function usedTo(kit: Kit, { laid }: FilledBed): number {
  return laid.reduce((x, l) => Math.max(x, l.x + (kit.shapes[l.shape] as NestShape).box[2]), 0);
}

/**
 * Which layout is better: fewer pieces left out, less cost of sheets, less cost of offcuts, and last the longest rest
 * on the bed used least. Negative when `a` is.
 */
export function compareLayouts(problem: NestProblem, kit: Kit, a: NestLayout, b: NestLayout): number {
  const left = (l: NestLayout) => l.left.reduce((sum, n) => sum + n, 0);
  const cost = (l: NestLayout, origin: BedKind['origin']) =>
    l.beds.reduce((sum, bed) => {
      const kind = problem.kinds[bed.kind] as BedKind;
      return kind.origin === origin ? sum + kind.cost : sum;
    }, 0);
  const rest = (l: NestLayout) => Math.max(0, ...l.beds.map((bed) => restOf(problem, kit, bed)));
  return (
    left(a) - left(b) ||
    cost(a, 'sheet') - cost(b, 'sheet') ||
    cost(a, 'offcut') - cost(b, 'offcut') ||
    rest(b) - rest(a)
  );
}

/** Area east of all pieces of a bed, mm². */
export function restOf(problem: NestProblem, kit: Kit, bed: FilledBed): number {
  const kind = problem.kinds[bed.kind] as BedKind;
  return (kind.x - usedTo(kit, bed)) * kind.y;
}
