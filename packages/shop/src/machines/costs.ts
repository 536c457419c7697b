import { frozen } from '@tinwright/core/internal';
import type { Costs } from './shop.js';

/** What handling costs where a shop file does not say, in seconds. Judgement, no source: time your own. */
export const DEFAULT_COSTS: Costs = frozen({
  bend: 8,
  slide: 5,
  turn90: 5,
  turn180: 6,
  flip: 8,
  stop: 10,
  gauge: 15,
  line: 20,
  setBack: 120,
  tools: 30,
  tool: 20,
  hook: 10,
  flatten: 10,
  swing: 10,
  hand: 60,
  seamer: 20,
  former: 90,
  dress: 20,
  walk: 30,
});

/** What handling costs for one piece of several. Seconds */
export interface PieceCosts extends Costs {
  /** Tools loosened and put back for a piece that comes in or off no other way: once, and for each of them. */
  readonly loosen: number;
  readonly loosenEach: number;
}

/**
 * Costs of a piece where so many are made: every operation is done on all of them before the next, so what is set on a
 * machine, and the way to it, is shared among them; what is done to a piece is not.
 */
export const pieceCosts = (costs: Costs, quantity: number): PieceCosts => ({
  ...costs,
  loosen: costs.tools,
  loosenEach: costs.tool,
  tools: costs.tools / quantity,
  tool: costs.tool / quantity,
  stop: costs.stop / quantity,
  gauge: costs.gauge / quantity,
  setBack: costs.setBack / quantity,
  walk: costs.walk / quantity,
});
