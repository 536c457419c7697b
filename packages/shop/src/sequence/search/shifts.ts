import { ROUGH_START, type Rough, type RoughStep, roughOf } from './rough.js';
import type { Move, Node } from './states.js';
import type { Way } from './ways.js';

/** A step of a plan: its way, the state it comes to, and the seconds it takes beyond what is told without geometry. */
export interface PlanStep {
  readonly way: Way;
  readonly node: Node & { readonly move: Move };
  readonly extra: number;
}

/** A plan with a run of its steps put elsewhere. */
export interface Shift {
  readonly order: readonly PlanStep[];
  /** Numbers in it: of the first and the last step that are not where they were, and of the run. */
  readonly first: number;
  readonly last: number;
  readonly run: readonly [from: number, to: number];
  /** How a single step is done then; null for the way that takes least. */
  readonly by: Way | null;
  /** From the first step on, as far as it was looked at: where the plan comes to without geometry. */
  readonly path: readonly Rough[];
  /** Seconds it saves by that. */
  readonly saves: number;
}

/** How runs are put elsewhere. */
export interface ShiftInput {
  readonly plan: readonly PlanStep[];
  readonly step: RoughStep;
  /** By the number of the operation. */
  readonly ways: readonly (readonly Way[])[];
  /** What a step takes beyond what is told without geometry is taken to stay. */
  readonly strict: boolean;
}

const RUNS = [1, 2, 3, 4, 6]; // steps that are moved together
const AFTER = 4; // steps behind the last that is moved until all is as it was
const DEARER = 40; // s on the way beyond which nothing is hoped for
const EVEN = 1e-6; // s

/** Runs from a place of a plan put elsewhere, or a step done another way, where that promises to save something: the most first. */
export function shiftsFrom(input: ShiftInput, from: number): readonly Shift[] {
  const { plan } = input;
  const found = RUNS.filter((count) => from + count <= plan.length).flatMap((count) =>
    plan.slice(count - 1).flatMap((_, to) => shiftsTo(input, from, count, to)),
  );
  return found.toSorted((a, b) => b.saves - a.saves);
}

function shiftsTo(input: ShiftInput, from: number, count: number, to: number): readonly Shift[] {
  const { plan, ways } = input;
  const own = plan[from] as PlanStep;
  const others = (ways[own.way.operation.index] ?? []).filter((w) => to !== from || w !== own.way);
  const bys = count === 1 ? others : to === from ? [] : [null];
  const order = plan.toSpliced(from, count).toSpliced(to, 0, ...plan.slice(from, from + count));
  const [first, last] = [Math.min(from, to), Math.max(from, to) + count - 1];
  return bys.flatMap((by): readonly Shift[] => {
    const shift = { order, first, last, run: [to, to + count], by } as const;
    const told = pathOf(input, shift);
    return told === null || told.saves < EVEN ? [] : [{ ...shift, ...told }];
  });
}

/** Where a shift comes to without geometry, until what follows is as it was; null where it does not go. */
function pathOf(
  { plan, step, strict }: ShiftInput,
  { order, first, last, run, by }: Omit<Shift, 'path' | 'saves'>,
): Pick<Shift, 'path' | 'saves'> | null {
  const before = plan[first - 1];
  let at = before === undefined ? ROUGH_START : roughOf(before.node, before.way);
  let dearer = 0;
  const path: Rough[] = [];
  for (let k = first; k < order.length; k++) {
    const { way, extra } = order[k] as PlanStep;
    const next = step(at, way.operation, k === run[0] ? by : null);
    if (next === null) return null;
    at = strict ? { ...next, cost: next.cost + extra } : next;
    path.push(at);
    const old = plan[k] as PlanStep;
    dearer = at.cost - old.node.cost;
    if (dearer > DEARER) return null;
    const same = at.way === old.way && (at.on & (old.node.at?.gauge ?? 0n)) !== 0n;
    if (k >= last + AFTER || (k >= last && same)) break;
  }
  return { path, saves: -dearer };
}
