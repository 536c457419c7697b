import type { Packing } from './packing.js';
import type { Random } from './random.js';
import { randomOrder, randomTaste, ranksOf, recreate } from './recreate.js';
import { ruin } from './ruin.js';

/** Steps between two questions whether it is enough. */
const ASK = 256;
/** A step is taken when it is no worse than what stood this many steps ago (late acceptance). */
const MEMORY = 400;

/** What shall become small. */
export interface Objective {
  /** Infinity for what may not be. */
  readonly value: (packing: Packing) => number;
  /** What steps are judged by, where that is not the value itself. */
  readonly guide?: (packing: Packing) => number;
  /** Look at where the climb stands and weigh things anew; what guides may change by it. */
  readonly learn: (packing: Packing) => void;
}

/** One climb: what shall become small, on which sheets, and when to stop. */
export interface Climb {
  readonly objective: Objective;
  /** No sheet is opened that would bring the cost to this. */
  readonly budget: number;
  readonly random: Random;
  /** Steps at most. */
  readonly steps: number;
  /** Asked after every improvement; true ends the climb. */
  readonly reached: (value: number) => boolean;
  /** Asked every few steps; true ends the climb. */
  readonly enough: (steps: number) => boolean;
}

/** Steps between two lessons. */
const LESSON = 200;

/** Ruin and recreate until the objective is reached or enough is done. @returns steps taken */
export function climb(
  packing: Packing,
  { objective, budget, random, steps: most, reached, enough }: Climb,
): number {
  const ranks = ranksOf(packing.problem.items);
  const { value, guide = value } = objective;
  let current = guide(packing);
  let best = value(packing);
  const memory = new Float64Array(MEMORY).fill(current);
  if (reached(best)) return 0;
  for (let steps = 0; steps < most; steps++) {
    if (steps % ASK === 0 && enough(steps)) return steps;
    if (steps % LESSON === LESSON - 1) {
      objective.learn(packing);
      current = guide(packing);
    }
    packing.begin();
    ruin(packing, random);
    randomOrder(packing.out, ranks, random);
    recreate(packing, budget, randomTaste(random, packing.areas.length));
    const now = guide(packing);
    const at = steps % MEMORY;
    const taken = now <= current || now <= (memory[at] as number);
    if (taken) current = now;
    else packing.undo();
    memory[at] = current;
    if (!taken) continue;
    const found = guide === value ? now : value(packing);
    if (found >= best) continue;
    best = found;
    if (reached(best)) return steps + 1;
  }
  return most;
}
