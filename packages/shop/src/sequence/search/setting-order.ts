import { has, type Mask } from '../part/mask.js';
import type { Mounting, Station } from '../stations/station.js';
import { otherStations } from './other-stations.js';
import type { BendProblem } from './states.js';
import type { Way } from './ways.js';

/** What a machine is set to for a way: with other tools it is another setting; null for work by hand, which sets nothing. */
const settingOf = ({ station, stop, setBack }: Way): string | null =>
  station.rack.length === 0 ? null : `${station.id} ${stop} ${setBack}`;

/** The one setting that every machine way of a step has, by step; null where there are several or none. */
function settingsBy({ work, ways }: BendProblem): readonly (string | null)[] {
  return work.steps.map(({ index }) => {
    const own = ways.flat().filter((w) => w.operation.steps.includes(index));
    const names = new Set(own.map(settingOf).filter((s) => s !== null));
    const [only] = names;
    return names.size === 1 && only !== undefined ? only : null;
  });
}

/** Settings that a part needs, in the order of its steps. */
export const settingsOf = (problem: BendProblem): readonly string[] => [
  ...new Set(settingsBy(problem).filter((s) => s !== null)),
];

/**
 * The same part with its settings in an order: a machine way of a later setting waits until no step is left that needs an
 * earlier one. Every plan of it is a plan of the part, so what bounds these bounds those.
 */
export function inSettingOrder(problem: BendProblem, order: readonly string[]): BendProblem {
  const steps = settingsBy(problem);
  const rankOf = (step: number) => order.indexOf(steps[step] ?? '');
  const waits = (own: readonly number[], done: Mask): boolean => {
    const rank = Math.max(...own.map(rankOf));
    return steps.some((_, s) => !has(done, s) && rankOf(s) >= 0 && rankOf(s) < rank);
  };
  return otherStations(problem, (s) => (s.rack.length === 0 ? s : waiting(s, waits)));
}

function waiting(station: Station, waits: (own: readonly number[], done: Mask) => boolean): Station {
  return {
    ...station,
    mount: (operation, held, done): Mounting => {
      const mounting = station.mount(operation, held, done);
      if (mounting.obstacle !== null || !waits(operation.steps, done)) return mounting;
      return { ...mounting, obstacle: { code: 'angle', panel: -1 } };
    },
  };
}
