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
  /** Look at where the climb stands and weigh things anew; the value may change by it. */
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
  let current = objective.value(packing);
  let best = current;
  const memory = new Float64Array(MEMORY).fill(current);
  if (reached(current)) return 0;
  for (let steps = 0; steps < most; steps++) {
    if (steps % ASK === 0 && enough(steps)) return steps;
    if (steps % LESSON === LESSON - 1) {
      objective.learn(packing);
      current = objective.value(packing);
    }
    packing.begin();
    ruin(packing, random);
    randomOrder(packing.out, ranks, random);
    recreate(packing, budget, randomTaste(random, packing.areas.length));
    const value = objective.value(packing);
    const at = steps % MEMORY;
    if (value <= current || value <= (memory[at] as number)) current = value;
    else packing.undo();
    memory[at] = current;
    if (current >= best) continue;
    best = current;
    if (reached(best)) return steps + 1;
  }
  return most;
}
