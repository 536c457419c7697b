import type { CoverSolver } from '../lp/cover.js';
import type { ShearProblem } from '../problem.js';
import { climb } from './climb.js';
import { type Layout, layoutOf, withSpare } from './layout.js';
import { leftOut } from './left-out.js';
import { type Least, largestSpare } from './offcut.js';
import { type HeldPlan, Packing } from './packing.js';
import { Random } from './random.js';
import { firstTaste, randomOrder, randomTaste, ranksOf, recreate } from './recreate.js';

/** One sheet of a plan. */
export interface Filled {
  readonly bin: number;
  readonly layout: Layout;
}

/** What is sought at the moment: fewer or cheaper sheets, a larger single offcut, less setting and cutting. */
export type PackGoal = 'sheets' | 'offcut' | 'neat';

/** Where the search stands. */
export interface Progress {
  readonly stage: PackGoal;
  readonly steps: number;
  readonly cost: number;
  /** Items no place was found for. */
  readonly left: readonly number[];
}

/** How long, towards what and in which order of chances to search. */
export interface Effort {
  readonly seed: number;
  /** Steps at most in each stage. */
  readonly steps: Readonly<Record<PackGoal, number>>;
  /** No plan is cheaper than this; looking for cheaper sheets ends when it is met. */
  readonly bound: number;
  readonly least: Least;
  /** How much work a plan is; of equal plans the one that is less is kept. */
  readonly work: (sheets: readonly Filled[]) => number;
  /** Asked every few steps; true ends the stage. */
  readonly enough: (at: Progress) => boolean;
  /** For orders of many pieces: whole patterns by a linear programme too. */
  readonly cover?: CoverSolver;
}

/** A plan of sheets and what did not go on them. */
export interface Packed extends Progress {
  readonly sheets: readonly Filled[];
}

const ROUNDING = 1e-9;

/**
 * All items on sheets that cost as little as can be found, by ruin and recreate: a plan first, then again and again
 * one that must cost less, with items left out meanwhile, until none is out. Then, on no dearer sheets, a larger
 * offcut, then less work. Deterministic for a seed and numbers of steps.
 */
export function pack(problem: ShearProblem, effort: Effort): Packed {
  const search = new Search(problem, effort);
  search.start();
  search.fewerSheets();
  search.largerOffcut();
  search.lessWork();
  return search.best();
}

class Search {
  private readonly packing: Packing;
  private readonly random: Random;
  private readonly effort: Effort;
  private held: HeldPlan;
  private steps = 0;

  constructor(problem: ShearProblem, effort: Effort) {
    this.effort = effort;
    this.random = new Random(effort.seed);
    this.packing = new Packing(problem);
    this.held = this.packing.hold();
  }

  private at(stage: PackGoal, steps: number): Progress {
    return { stage, steps: this.steps + steps, cost: this.held.cost, left: this.held.out };
  }

  start(): void {
    const { packing } = this;
    packing.out = packing.problem.items.map((_, i) => i);
    packing.out.sort((a, b) => (packing.areas[b] as number) - (packing.areas[a] as number) || a - b);
    recreate(packing, Number.POSITIVE_INFINITY, firstTaste(this.random));
    this.held = packing.hold();
  }

  fewerSheets(): void {
    const { packing, effort, random } = this;
    let left = effort.steps.sheets;
    while (this.held.out.length > 0 || this.held.cost > effort.bound + ROUNDING) {
      if (left <= 0 || effort.enough(this.at('sheets', 0))) return;
      const whole = this.held.out.length === 0;
      const budget = whole ? this.held.cost : Number.POSITIVE_INFINITY;
      if (whole) this.dropDearest();
      let done = false;
      const taken = climb(packing, {
        objective: leftOut(packing.areas.length),
        budget,
        random,
        steps: left,
        reached: () => {
          done = packing.out.length === 0;
          if (done || !whole) this.held = packing.hold();
          return done;
        },
        enough: (steps) => effort.enough(this.at('sheets', steps)),
      });
      left -= taken;
      this.steps += taken;
      if (!done) return;
    }
  }

  /** Clear the sheet that holds least for what it costs, and put its items elsewhere as far as they go. */
  private dropDearest(): void {
    const { packing, random } = this;
    const worth = packing.slots.map(({ tree }) => tree.used / packing.costOf(tree.type));
    const budget = packing.cost;
    packing.begin();
    packing.remove(worth.indexOf(Math.min(...worth)), 0);
    randomOrder(packing.out, ranksOf(packing.problem.items), random);
    recreate(packing, budget, randomTaste(random, packing.areas.length));
  }

  largerOffcut(): void {
    this.improve('offcut', (packing) => -this.spareOf(packing));
  }

  lessWork(): void {
    const enough = this.spareOf(this.reset()) * (1 - ROUNDING);
    this.improve('neat', (packing) =>
      this.spareOf(packing) < enough ? Number.POSITIVE_INFINITY : this.effort.work(this.sheets()),
    );
  }

  private improve(stage: PackGoal, objective: (packing: Packing) => number): void {
    const { effort, random } = this;
    if (effort.steps[stage] <= 0 || this.held.slots.length === 0) return;
    const packing = this.reset();
    const most = packing.areaOut() * (1 + ROUNDING);
    this.steps += climb(packing, {
      objective: {
        value: (p) => (p.areaOut() > most ? Number.POSITIVE_INFINITY : objective(p)),
        learn: () => undefined,
      },
      budget: this.held.cost * (1 + ROUNDING) + ROUNDING,
      random,
      steps: effort.steps[stage],
      reached: () => {
        this.held = packing.hold();
        return false;
      },
      enough: (steps) => effort.enough(this.at(stage, steps)),
    });
  }

  private reset(): Packing {
    this.packing.restore(this.held);
    return this.packing;
  }

  private spareOf(packing: Packing): number {
    let best = 0;
    for (const slot of packing.slots) {
      if (slot.spare < 0) slot.spare = largestSpare(slot.tree, this.effort.least).area;
      if (slot.spare > best) best = slot.spare;
    }
    return best;
  }

  private sheets(): readonly Filled[] {
    return this.packing.slots.map(({ tree }) => {
      const spare = largestSpare(tree, this.effort.least);
      return { bin: tree.type, layout: spare.area > 0 ? withSpare(tree, spare) : layoutOf(tree, 0) };
    });
  }

  best(): Packed {
    this.reset();
    return { ...this.at('neat', 0), sheets: this.sheets() };
  }
}
