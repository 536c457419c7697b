import { atOnce } from '@tinwright/core/internal';
import type { Shop } from '../../machines/shop.js';
import type { DieChoice } from '../../tools/press-setting.js';
import type { Mask } from '../part/mask.js';
import type { Work } from '../part/operations.js';
import { setOnMachines } from '../search/at-machines.js';
import { anyPlan } from '../search/find-plan.js';
import { type FromEnd, fromEnd } from '../search/from-end.js';
import type { PartToBend } from '../search/problem.js';
import type { Move } from '../search/states.js';
import { diesFor, problemsOf } from './problems.js';
import { stepsWith } from './smallest-core.js';

/** Whether a part can be bent, asked in one shop after another: what is the same in them is set up once. */
export interface BendTrial {
  /** True when what could not be made can be, the other bends left flat: a quick look before a whole plan is tried. */
  readonly someGo: (shop: Shop) => boolean;
  /** A plan, whatever it costs; null where none is soon found. */
  readonly planIn: (shop: Shop) => readonly Move[] | null;
}

/** How hard is tried, and with what. */
export interface BendTrialInput {
  /** Bends that could not all be made before, by their ids; none where nothing is known. */
  readonly cores: readonly (readonly string[])[];
  /** Dies that may change that. */
  readonly dies: DieChoice;
  /** States looked at for a whole plan with each choice of dies: what is told has to be found soon. */
  readonly most: number;
}

const MOST_STATES = 500; // of a quick look

/** Whether a part can be bent. */
export function trialOf(part: PartToBend, { cores, dies, most }: BendTrialInput): BendTrial {
  const input = { dies, most: MOST_STATES };
  const looks = cores.map((core) => quickLook(part, input, (work) => stepsWith(work, panelsOf(work, core))));
  const whole = quickLook(part, input);
  const goes = (found: FromEnd) => found !== 'none' && found !== 'unknown';
  const someGo = (shop: Shop) => looks.every((look) => goes(look(shop)));
  return {
    someGo,
    planIn: (shop) => {
      if (!someGo(shop) || !goes(whole(shop))) return null;
      for (const next of problemsOf(part, shop, dies)) {
        const { moves } = anyPlan(next(), most);
        if (moves !== null) return moves;
      }
      return null;
    },
  };
}

/**
 * Whether steps of a part go in one shop or another, looked at from the end with the widest choice of dies: no plan does
 * without what is asked, but it takes more.
 * @param most states looked at
 */
export function quickLook(
  { part, material, blank }: PartToBend,
  { dies, most }: Pick<BendTrialInput, 'dies' | 'most'>,
  steps: (work: Work) => Mask = (work) => work.all,
): (shop: Shop) => FromEnd {
  const on = setOnMachines({ part, material, longest: Math.max(...blank) }, steps);
  return (shop) => {
    const widest = diesFor(shop.press, part.sheet.thickness, dies).at(-1) as DieChoice;
    const at = on(shop, widest);
    return atOnce(fromEnd(at, at.work.all, most));
  };
}

const panelsOf = ({ tree }: Work, ids: readonly string[]): readonly number[] =>
  tree.panels.flatMap((p, i) => (ids.includes(p.id) ? [i] : []));
