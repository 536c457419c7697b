import { bottomLeft } from './bottom-left.js';
import { type Floor, floorOf, laidOn, put } from './floor.js';
import { itemArea, type Kit, type NestShape } from './kit.js';
import { pairDepthOf } from './pair-depth.js';
import type { BedKind, FilledBed, NestProblem } from './problem.js';

/** A problem with its kit: what lies fixed on a bed is in the kit as items after those of the problem. */
export interface Bench {
  readonly problem: NestProblem;
  readonly kit: Kit;
}

/** A bed of one kind with nothing movable yet but room for these items. */
export function emptyFloor({ problem, kit }: Bench, kind: number, items: readonly number[]): Floor {
  const k = problem.kinds[kind] as BedKind;
  const before = problem.kinds.slice(0, kind).reduce((sum, b) => sum + b.lacks.length, problem.items.length);
  const fixed = k.lacks.map((_, i) => {
    const shape = kit.shapesOf[before + i]?.[0] as number;
    const [x, y] = kit.shifts[shape] as readonly [number, number];
    return { item: before + i, shape, x: -x, y: -y };
  });
  return floorOf(kit, { x0: 0, y0: 0, x1: k.x, y1: k.y }, allowed(kit, k), items, fixed);
}

function allowed(kit: Kit, { turns }: BedKind): readonly (readonly number[])[] {
  return turns.map((mine, item) =>
    (kit.shapesOf[item] as readonly number[]).filter((s) => mine.includes((kit.shapes[s] as NestShape).turn)),
  );
}

/**
 * Fill one bed from its west side with the largest pieces first, each at the place furthest to the west
 * (bottom-left; Burke et al. 2006 for the idea of filling gaps). `left` says how many of each item there are.
 */
export function fill(bench: Bench, kind: number, left: readonly number[]): FilledBed {
  const { kit } = bench;
  const area = (item: number) => itemArea(kit, item);
  const order = left.map((_, i) => i).sort((a, b) => area(b) - area(a) || a - b);
  const offered = offeredOf(bench, kind, left);
  const items = order.flatMap((i) => new Array<number>(offered[i] as number).fill(i));
  const floor = emptyFloor(bench, kind, items);
  const depth = pairDepthOf(floor);
  const lying = Array.from({ length: floor.item.length - floor.movable }, (_, k) => floor.movable + k);
  const laid: number[] = [];
  let full = -1;
  items.forEach((item, piece) => {
    if (item === full) return;
    const spot = bottomLeft(floor, depth, piece, lying);
    if (spot === undefined) {
      full = item;
      return;
    }
    put(floor, piece, spot);
    lying.push(piece);
    laid.push(piece);
  });
  const all = laidOn(floor);
  return { kind, laid: laid.map((i) => all[i] as (typeof all)[number]) };
}

/** How many pieces of each item a bed is offered: those that are left, but no more than it could hold by area. */
function offeredOf({ kit, problem }: Bench, kind: number, left: readonly number[]): readonly number[] {
  const { area } = problem.kinds[kind] as BedKind;
  return left.map((n, item) => Math.min(n, Math.ceil(area / itemArea(kit, item))));
}

/** A bed that was filled when so many of each item were left. */
export interface FilledFrom {
  readonly bed: FilledBed;
  readonly left: readonly number[];
}

/**
 * Would a bed of the same kind come out the same from what is left now? It does where each item still has more pieces
 * than went on the bed before one did not fit, or just as many where all went on.
 */
export function fillsAgain(
  bench: Bench,
  { bed, left: before }: FilledFrom,
  left: readonly number[],
): boolean {
  const laid = new Map<number, number>();
  for (const { item } of bed.laid) laid.set(item, (laid.get(item) ?? 0) + 1);
  const [then, now] = [before, left].map((l) => offeredOf(bench, bed.kind, l)) as [
    readonly number[],
    readonly number[],
  ];
  return then.every((offered, item) => {
    const used = laid.get(item) ?? 0;
    return used < offered ? (now[item] as number) > used : now[item] === offered;
  });
}
