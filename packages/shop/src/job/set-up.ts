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
  /** Punch and die of a press brake, '' on other machines. */
  readonly tooling: string;
  /** Widths of the fingers or lengths of the tools that are on, widest first. mm */
  readonly pieces: readonly number[];
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
  const rack =
    machine === 'brake'
      ? (brakeNamed(shop, machineName)?.fingers ?? [])
      : (shop.press?.punches.find((p) => p.name === press?.punch)?.lengths ?? []);
  const pieces = tools?.flatMap((t) => t.pieces) ?? (machine === 'brake' || machine === 'press' ? rack : []);
  return {
    machine: shop.brakes.some((b) => b.name === machineName) ? `${machine} ${machineName}` : machine,
    tooling: press === null ? '' : `${press.punch} / ${press.die}`,
    pieces: pieces.toSorted((a, b) => b - a),
    stop: setAngle,
    setBack,
    gauge: settingOf(press?.gauge ?? stopDistance),
  };
}

/**
 * What changes on a machine from one set-up to the next, and the seconds it takes; walking not counted. A value that is
 * not set stays as it was.
 * @param from null when the machine was not used yet: only what is set on it is counted by nobody
 */
export function changeOf(
  from: SetUp | null,
  to: SetUp,
  costs: Costs,
): { readonly changes: readonly SetUpChange[]; readonly seconds: number } {
  if (from === null) return { changes: [], seconds: 0 };
  const swapped = from.tooling === to.tooling ? difference(from.pieces, to.pieces) : 2;
  const tools = swapped > 0;
  const stop = differs(from.stop, to.stop);
  const setBack = differs(from.setBack, to.setBack);
  const gauge = differs(from.gauge, to.gauge);
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
