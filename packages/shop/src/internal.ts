// What only sister packages use: no promise to anybody else.

export { jobFindings, shopFindings, withChanges } from './checks/index.js';
export { joiningFindings } from './checks/joining.js';
export { thicknessLimit } from './machines/capacity.js';
export { shopSchema } from './machines/schema.js';
export { type Measure, SHOP_WORDS, type ShopWord } from './machines/words.js';
export {
  radiusRatio,
  SPRINGBACK_RATIOS,
  SPRINGBACK_TABLE,
  type SpringbackRow,
  setAngle,
  springbackFactor,
} from './metal/springback.js';
export { TOOLS, toolsOf } from './operations/operation.js';
export { usualOrder } from './operations/usual-order.js';
export { bentTo, type ReplayTurn, turned, turns } from './replay/part-bent.js';
export { FIT_METHOD } from './strip/fit.js';
export { fitFindings } from './strip/fit-findings.js';
export { BAR_LEGS } from './tools/jaw-tools.js';
export { LEAF_DEPTH } from './tools/leaf-tools.js';
export { TOOL_DEPTH } from './tools/margin.js';
export { FLATTENING_BAR } from './tools/press-tools.js';
export { REAR_STOP_WIDTH } from './tools/stop-tools.js';
