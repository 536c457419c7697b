import { type Bench, emptyFloor } from './fill.js';
import { firstLayout } from './first-layout.js';
import { laidOn, put } from './floor.js';
import { kitOf, type NestItem, type NestShape } from './kit.js';
import type { FilledBed, NestLayout, NestProblem } from './problem.js';
import { randomFrom } from './random.js';
import { restOf } from './rank.js';
import { type Spend, STRIP_PLAN, shorten } from './strip.js';
import { hasRoom, topUp, without } from './top-up.js';

/** A search of one seed. */
export interface NestSearch {
  readonly seed: number;
  /** Share of the budget spent, 0 to 1, after so many moves more; 1 ends the search with the best so far. */
  readonly spend: Spend;
  /** Told of every better layout. */
  readonly better: (layout: NestLayout) => void;
}

/** A problem made ready: what beds lack joins the items, so that it is kept clear like any other piece. */
export function benchOf(problem: NestProblem): Bench {
  const lacks = problem.kinds.flatMap((k) => k.lacks.map((region): NestItem => ({ region, turns: [0] })));
  return { problem, kit: kitOf([...problem.items, ...lacks]) };
}

/** Share of the budget for emptying the least used bed into the others; the rest presses what is on it together. */
const EMPTYING = 0.5;

/** Larger beds are left as filled: the search keeps a weight for every pair. */
const MOST_PIECES = 400;

/**
 * Find a layout: fill bed after bed, then move pieces from the least used bed to the others, which make room for
 * them, and last press what is left on it to one side. The same seed and the same spending give the same layout.
 */
export function searchNest(bench: Bench, { seed, spend, better }: NestSearch): NestLayout {
  const random = randomFrom(seed);
  let spent = spend(0);
  const pulse = (until: number) => (moves: number) => {
    spent = spend(moves);
    return spent >= until ? ('stop' as const) : ('go' as const);
  };
  let layout = firstLayout(bench, (so) => {
    better(so);
    return pulse(1)(0);
  });
  better(layout);
  const keep = (beds: readonly FilledBed[]) => {
    layout = { beds: beds.filter((b) => b.laid.length > 0), left: layout.left };
    better(layout);
  };
  for (let fails = 0; spent < EMPTYING && layout.beds.length > 1 && fails < 24; ) {
    const beds = emptied(bench, layout.beds, random, pulse(EMPTYING));
    if (beds === undefined) fails++;
    else {
      fails = 0;
      keep(beds);
    }
  }
  const last = leastUsed(bench, layout.beds);
  const bed = layout.beds[last];
  if (bed === undefined || bed.laid.length > MOST_PIECES || spent >= 1) return layout;
  const floor = emptyFloor(
    bench,
    bed.kind,
    bed.laid.map((l) => l.item),
  );
  bed.laid.forEach((l, i) => {
    put(floor, i, l);
  });
  const begin = spent;
  const share: Spend = (moves) => (spend(moves) - begin) / (1 - begin);
  shorten(floor, random, share, STRIP_PLAN, () => {
    keep(layout.beds.with(last, { kind: bed.kind, laid: laidOn(floor) }));
  });
  return layout;
}

function leastUsed({ problem, kit }: Bench, beds: readonly FilledBed[]): number {
  const rests = beds.map((b) => restOf(problem, kit, b));
  return rests.indexOf(Math.max(...rests));
}

/** One piece of the least used bed moved to another bed; undefined where that failed. */
function emptied(
  bench: Bench,
  beds: readonly FilledBed[],
  random: () => number,
  pulse: (moves: number) => 'go' | 'stop',
): readonly FilledBed[] | undefined {
  const last = leastUsed(bench, beds);
  const from = beds[last] as FilledBed;
  const area = (shape: number) => (bench.kit.shapes[shape] as NestShape).area;
  // mostly the largest: small ones find a place anyway
  const pieces = from.laid.toSorted((a, b) => area(b.shape) - area(a.shape));
  const piece = pieces[Math.floor(random() ** 2 * pieces.length)] as (typeof pieces)[number];
  const open = beds
    .map((_, i) => i)
    .filter(
      (i) =>
        i !== last &&
        (beds[i] as FilledBed).laid.length < MOST_PIECES &&
        hasRoom(bench, beds[i] as FilledBed, piece.item),
    );
  if (open.length === 0) return undefined;
  const to = open[(random() * open.length) | 0] as number;
  const fuller = topUp(bench, beds[to] as FilledBed, piece.item, random, pulse);
  return fuller && beds.with(to, fuller).with(last, without(from, piece));
}
