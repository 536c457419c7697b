import { type Floor, furthest, type Laid, laidOn, layAgain, putWithin, shapeOn, spotOf } from './floor.js';
import { overlapOf } from './overlap.js';
import { LOOKING, type Looking, relocator } from './relocate.js';
import { type Patience, separate } from './separate.js';

/** How the share of the budget that is spent is known, 0 to 1, after so many moves more. */
export type Spend = (moves: number) => number;

/** Settings of the strip search. */
export interface StripPlan {
  /** Share of the budget spent on exploring. */
  readonly explore: number;
  /** Parts of the length taken off: first and least when exploring; first and least when pressing. */
  readonly shrink: readonly [first: number, least: number];
  readonly press: readonly [first: number, least: number];
  readonly patience: { readonly explore: Patience; readonly press: Patience };
  /** Fresh starts from a disturbed layout before the length is given up. */
  readonly tries: number;
  readonly looking: Looking;
}

export const STRIP_PLAN: StripPlan = {
  explore: 0.75,
  shrink: [0.016, 0.002],
  press: [0.0015, 0.0001],
  patience: { explore: { rounds: 80, strikes: 3 }, press: { rounds: 40, strikes: 2 } },
  tries: 60,
  looking: LOOKING,
};

/**
 * Shorten the bed of a floor without overlap as far as the budget allows: explore lengths in larger steps, with
 * disturbed fresh starts where one cannot be cleared, then press in ever smaller ones. The floor is left at the best;
 * `better` is told of each.
 */
export function shorten(
  floor: Floor,
  random: () => number,
  spend: Spend,
  plan: StripPlan,
  better: (length: number) => void,
): void {
  const { bed } = floor;
  const overlap = overlapOf(floor);
  const relocate = relocator(floor, overlap, random, plan.looking);
  let best = laidOn(floor);
  const keep = () => {
    bed.x1 = Math.min(bed.x1, furthest(floor));
    best = laidOn(floor);
    length = bed.x1 - bed.x0;
    better(length);
  };
  let length = 0;
  keep();
  let spent = 0;
  const clear = (patience: Patience, until: number): boolean => {
    const pulse = (moves: number) => {
      spent = spend(moves);
      return spent >= until ? ('stop' as const) : ('go' as const);
    };
    return pulse(1) === 'go' && separate(floor, overlap, relocate, random, patience, pulse);
  };
  const least = longestPiece(floor);
  for (let step = plan.shrink[0]; spent < plan.explore && length * (1 - step) > least; ) {
    squeeze(floor, bed.x0 + length * (1 - step), random);
    const pool: { sum: number; lay: readonly Laid[] }[] = [];
    let cleared = clear(plan.patience.explore, plan.explore);
    for (let t = 0; !cleared && spent < plan.explore && step <= 2 * plan.shrink[1] && t < plan.tries; t++) {
      pool.push({ sum: overlap.total(), lay: laidOn(floor) });
      pool.sort((a, b) => a.sum - b.sum);
      const far = Math.abs(random() + random() + random() - 1.5) / 1.5;
      layAgain(
        floor,
        (pool[Math.min(pool.length - 1, Math.floor(far * pool.length))] as { lay: readonly Laid[] }).lay,
      );
      swapTwo(floor, random);
      cleared = clear(plan.patience.explore, plan.explore);
    }
    if (cleared) keep();
    else {
      step = Math.max(plan.shrink[1], step / 2);
      layAgain(floor, best);
      bed.x1 = bed.x0 + length;
    }
  }
  for (let step = plan.press[0]; spent < 1 && length * (1 - step) > least; ) {
    squeeze(floor, bed.x0 + length * (1 - step), random);
    if (clear(plan.patience.press, 1)) keep();
    else {
      step = Math.max(plan.press[1], step * 0.93);
      layAgain(floor, best);
      bed.x1 = bed.x0 + length;
    }
  }
}

/** The length below which some piece fits at none of its turns, mm. */
function longestPiece(floor: Floor): number {
  const width = (shape: number) => shapeOn(floor, shape).box[2] - shapeOn(floor, shape).box[0];
  const pieces = Array.from({ length: floor.movable }, (_, i) => floor.item[i] as number);
  return Math.max(0, ...pieces.map((item) => Math.min(...(floor.shapesOf[item] ?? []).map(width))));
}

/** End the bed at x; what lies beyond a cut somewhere moves along. */
function squeeze(floor: Floor, x1: number, random: () => number): void {
  const { bed } = floor;
  const cut = bed.x0 + random() * (x1 - bed.x0);
  const by = bed.x1 - x1;
  bed.x1 = x1;
  for (let i = 0; i < floor.movable; i++) {
    const spot = spotOf(floor, i);
    const { box } = shapeOn(floor, spot.shape);
    const beyond = spot.x + (box[0] + box[2]) / 2 > cut;
    putWithin(floor, i, beyond ? { ...spot, x: spot.x - by } : spot);
  }
}

/** Let two different pieces of the larger half change places. */
function swapTwo(floor: Floor, random: () => number): void {
  const area = (i: number) => shapeOn(floor, floor.shape[i] as number).area;
  const byArea = Array.from({ length: floor.movable }, (_, i) => i).sort((a, b) => area(b) - area(a));
  const middle = area(byArea[floor.movable >> 1] as number);
  const large = byArea.filter((i) => area(i) >= middle);
  const one = large[(random() * large.length) | 0] as number;
  const others = large.filter((i) => floor.item[i] !== floor.item[one]);
  if (others.length === 0) return;
  const two = others[(random() * others.length) | 0] as number;
  const [a, b] = [spotOf(floor, one), spotOf(floor, two)];
  putWithin(floor, one, { ...b, shape: a.shape });
  putWithin(floor, two, { ...a, shape: b.shape });
}
