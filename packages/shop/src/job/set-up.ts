import { wholeAtFirst } from '../machines/at-first.js';
import { brakeNamed } from '../machines/brakes.js';
import type { Costs, Shop } from '../machines/shop.js';
import type { BendStep } from '../sequence/answer/plan.js';
import { equalSetting } from '../sequence/part/rear-edge.js';
import { difference } from '../sequence/search/fingers.js';
import { differs } from '../sequence/search/handling.js';

/** How a machine stands for an operation. */
export interface SetUp {
  /** Which one: the kind, and for a further leaf brake its name. */
  readonly machine: string;
  /** Fingers or tools that are on, by name: of a press the die too. */
  readonly pieces: readonly string[];
  /** Those that are on when a job begins. */
  readonly atFirst: readonly string[];
  /** Angle it is set to, degrees, and its set-back, mm; null where nothing is set. */
  readonly stop: number | null;
  readonly setBack: number | null;
  /** Rear stop or back gauge, mm; null where a line goes by itself. */
  readonly gauge: number | null;
}

/** As finely as a stop is set. */
const settingOf = (distance: number | null): number | null =>
  distance === null ? null : equalSetting(distance);

/** What has to be changed on a machine before an operation. */
export type SetUpChange = 'machine' | 'tools' | 'stop' | 'set-back' | 'gauge';

/** The set-up of an operation. */
export function setUpOf(
  { machine, machineName, press, tools, setAngle, setBack, stopDistance }: BendStep,
  shop: Shop,
): SetUp {
  const tooled = machine === 'brake' || machine === 'press';
  const rack = machine === 'brake' ? (brakeNamed(shop, machineName)?.fingers ?? []) : [];
  const named = (pieces: readonly number[]) =>
    pieces.toSorted((a, b) => b - a).map((p) => (press === null ? `${p}` : `${press.punch} ${p}`));
  const pieces = named(tools?.flatMap((t) => t.pieces) ?? rack);
  return {
    machine: shop.brakes.some((b) => b.name === machineName) ? `${machine} ${machineName}` : machine,
    pieces: press === null ? pieces : [press.die, ...pieces],
    atFirst: tooled && wholeAtFirst(machine) ? named(rack) : [],
    stop: setAngle,
    setBack,
    gauge: settingOf(press?.gauge ?? stopDistance),
  };
}

/**
 * What changes on a machine from one set-up to the next, and the seconds it takes; walking not counted. A value that is
 * not set stays as it was.
 * @param from null when the machine was not used yet: what is first set on it takes nothing more
 */
export function changeOf(
  from: SetUp | null,
  to: SetUp,
  costs: Costs,
): { readonly changes: readonly SetUpChange[]; readonly seconds: number } {
  const swapped = difference(from?.pieces ?? to.atFirst, to.pieces);
  const tools = swapped > 0;
  const stop = from !== null && differs(from.stop, to.stop);
  const setBack = from !== null && differs(from.setBack, to.setBack);
  const gauge = from !== null && differs(from.gauge, to.gauge);
  return {
    changes: [
      ...(tools ? (['tools'] as const) : []),
      ...(stop ? (['stop'] as const) : []),
      ...(setBack ? (['set-back'] as const) : []),
      ...(gauge ? (['gauge'] as const) : []),
    ],
    seconds:
      (tools ? costs.tools + costs.tool * swapped : 0) +
      (stop ? costs.stop : 0) +
      (setBack ? costs.setBack : 0) +
      (gauge ? costs.gauge : 0),
  };
}

/** How a machine stands after an operation: what it did not set stays. */
export function stood(from: SetUp | null, to: SetUp): SetUp {
  return {
    ...to,
    stop: to.stop ?? from?.stop ?? null,
    setBack: to.setBack ?? from?.setBack ?? null,
    gauge: to.gauge ?? from?.gauge ?? null,
  };
}
