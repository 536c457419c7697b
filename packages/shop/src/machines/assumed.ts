import { cite, type Source } from '@tinwright/core';
import { isGroup } from '@tinwright/core/internal';
import { DEFAULT_COSTS } from './costs.js';
import type { Brake, Costs, FormerBlock, HandSeamer, Margin, Press, Rates, Riveter, Vise } from './shop.js';

/** What of a shop a file may leave out. */
export interface Assumed {
  readonly brake: Omit<Brake, 'name' | 'length' | 'capacity' | 'fingers' | 'rearStop' | 'rearStopHeight'>;
  readonly press: Pick<Press, 'ram' | 'bed' | 'backGauge' | 'gaps' | 'overbend'>;
  readonly vise: Pick<Vise, 'depth' | 'grip' | 'bar' | 'jaw' | 'bench'>;
  readonly handSeamer: Pick<HandSeamer, 'jaw'>;
  readonly formerBlock: Pick<FormerBlock, 'width' | 'height'>;
  readonly riveter: Pick<Riveter, 'nose'>;
  readonly costs: Costs;
  readonly rates: Rates;
  readonly margin: Margin;
}

/** Half a millimetre and two thousandths of the part. Judgement. */
export const USUAL_MARGIN: Margin = { least: 0.5, share: 0.002 };

/** Judgement, no source: time your own. mm, seconds */
export const USUAL_RATES: Rates = { stroke: 20, setting: 30, speed: 4000, pierce: 1, fastener: 20 };

/**
 * Values a shop file may leave out: usual ones, by judgement or from memory, none with a source. mm, degrees; set-back
 * in thicknesses.
 */
export const ASSUMED: Assumed = {
  brake: {
    finger: { foot: 60, upright: 35, noseAngle: 45, noseRadius: 0.5 },
    clearHeight: 75,
    beam: 35,
    opening: 32,
    leaf: { width: 100, stop: 135 },
    bed: 120,
    setBack: [1, 2.5],
    lowestFlange: 6,
    hold: 6,
    ratedFlange: 25.4, // source: a 4 ft brake's printed manual
    gaps: { end: 10, inner: 6 },
    overbend: 3,
  },
  press: {
    ram: { half: 30, height: 150 },
    bed: { half: 30 },
    // a finger as thick as a thumb that is drawn over the die's top where it stands nearer than the die is wide
    backGauge: { least: 8, most: 600, finger: { over: 8, under: 6, length: 60, width: 30 } },
    gaps: { end: 5, inner: 2 },
    overbend: 3,
  },
  vise: { depth: 60, grip: 12, bar: 25, jaw: 35, bench: 120 },
  handSeamer: { jaw: 8 },
  formerBlock: { width: 40, height: 60 },
  riveter: { nose: 20 },
  costs: DEFAULT_COSTS,
  rates: USUAL_RATES,
  margin: USUAL_MARGIN,
};

/** What every shop has, whether its file says so or not. */
const WHOLE: readonly string[] = ['costs', 'rates', 'margin'];

type Group = Readonly<Record<string, unknown>>;

/** Paths of the values a shop file leaves to be assumed, `brake.leaf.width`; machines it does not have are left out. */
export function assumedIn(data: unknown): readonly string[] {
  const shop = isGroup(data) ? data : {};
  const own = Object.entries(ASSUMED).flatMap(([machine, values]) =>
    isGroup(shop[machine])
      ? missing(values as Group, shop[machine], machine)
      : WHOLE.includes(machine)
        ? [machine]
        : [],
  );
  const { brakes } = shop;
  // what one of them leaves out goes by the first one's name
  const others = (Array.isArray(brakes) ? brakes.filter(isGroup) : []).flatMap((b) =>
    missing(ASSUMED.brake as unknown as Group, b, 'brake'),
  );
  return [...new Set([...own, ...others])];
}

function missing(values: Group, given: Group, path: string): readonly string[] {
  return Object.entries(values).flatMap(([key, value]): readonly string[] => {
    const at = `${path}.${key}`;
    if (given[key] === undefined) return [at];
    return isGroup(value) && isGroup(given[key]) ? missing(value, given[key], at) : [];
  });
}

/** Those of a rule's values that a shop leaves to be assumed, as a source of a finding; none when it gives all. */
export function assumedOf(assumed: readonly string[], leansOn: readonly string[]): readonly Source[] {
  const guessed = assumed.filter((a) =>
    leansOn.some((p) => a === p || a.startsWith(`${p}.`) || p.startsWith(`${a}.`)),
  );
  return guessed.length === 0 ? [] : [cite(null, { assumed: guessed })];
}
