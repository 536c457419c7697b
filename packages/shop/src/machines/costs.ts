import { frozen } from '@tinwright/core/internal';
import type { Costs } from './shop.js';

/** Seconds when a shop file gives none. Judgement, no source: time your own. */
export const DEFAULT_COSTS: Costs = frozen({
  bend: 8,
  slide: 5,
  turn90: 5,
  turn180: 6,
  flip: 8,
  stop: 10,
  setBack: 120,
  tools: 30,
  tool: 20,
  hook: 10,
  flatten: 10,
  swing: 10,
  hand: 60,
  seamer: 20,
  dress: 20,
  walk: 30,
});
