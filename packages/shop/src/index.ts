// The only door of @tinwright/shop. Names, no `export *`.
export type { ShopCheck, Subject as ShopSubject } from './checks/check.js';
export { jobFindings, SHOP_CHECKS, shopFindings } from './checks/index.js';
export { JOINT_CHECKS, type JointCheck, type JointSubject, joiningFindings } from './checks/joining.js';
export { type Capacity, type Limit, thicknessLimit } from './machines/capacity.js';
export { DEFAULT_COSTS } from './machines/costs.js';
export { DEFAULT_SHOP } from './machines/default-shop.js';
export { readShop } from './machines/read-shop.js';
export { shopSchema } from './machines/schema.js';
export type {
  Brake,
  Costs,
  Die,
  Finger,
  Press,
  PressTool,
  Profile,
  Punch,
  Riveter,
  Shear,
  Shop,
  SpotWelder,
  Table,
  Vise,
} from './machines/shop.js';
export type { StripRow } from './machines/strip-row.js';
export {
  radiusRatio,
  SPRINGBACK_RATIOS,
  SPRINGBACK_TABLE,
  type Springback,
  type SpringbackRow,
  setAngle,
  springbackFactor,
} from './metal/springback.js';
export { jobOperations } from './operations/job-operations.js';
export {
  type BendOrder,
  type BendWork,
  type HoleWork,
  type JointWork,
  type Operation,
  type Operations,
  type ReasonName,
  TOOLS,
  type ToolName,
  toolsOf,
  type Work,
} from './operations/operation.js';
export { usualOrder } from './operations/usual-order.js';
export { type SequenceFlaw, verifySequence } from './replay/verify-sequence.js';
export type { BendStep, Mend, PressSetting, Reason, Sequence, ToolGroup } from './sequence/plan.js';
export { planSequence } from './sequence/plan-sequence.js';
