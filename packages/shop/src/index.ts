// The only door of @tinwright/shop. Names, no `export *`.
export type { ShopCheck, Subject as ShopSubject } from './checks/check.js';
export type { CheckFindings, ExpectedSize } from './checks/check-findings.js';
export { jobFindings, SHOP_CHECKS, shopFindings, withChanges } from './checks/index.js';
export { JOINT_CHECKS, type JointCheck, type JointSubject, joiningFindings } from './checks/joining.js';
export type { Batch, BatchStep } from './job/batch.js';
export type { ShopFinding, ShopFindings } from './job/order-findings.js';
export { planShop, type ShopPlan } from './job/plan-shop.js';
export type { SetUpChange } from './job/set-up.js';
export { type Capacity, type Limit, thicknessLimit } from './machines/capacity.js';
export { DEFAULT_COSTS } from './machines/costs.js';
export { DEFAULT_SHOP } from './machines/default-shop.js';
export { EXAMPLE_PRESS } from './machines/example-press.js';
export { readShop } from './machines/read-shop.js';
export { shopSchema } from './machines/schema.js';
export type {
  Brake,
  Costs,
  Die,
  Finger,
  HandSeamer,
  Margin,
  Press,
  PressTool,
  Profile,
  Punch,
  Rates,
  Riveter,
  Shear,
  Shop,
  SpotWelder,
  Table,
  Vise,
} from './machines/shop.js';
export type { StripRow } from './machines/strip-row.js';
export { type Measure, SHOP_WORDS, type ShopWord } from './machines/words.js';
export {
  radiusRatio,
  type SheetSpringback,
  SPRINGBACK_RATIOS,
  SPRINGBACK_TABLE,
  type Springback,
  type SpringbackRow,
  setAngle,
  springbackFactor,
  springbackOf,
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
export { type StepState, stateAt } from './replay/state-at.js';
export { type SequenceFlaw, verifySequence } from './replay/verify-sequence.js';
export type {
  BendStep,
  Mend,
  PressSetting,
  Reason,
  Sequence,
  ToolGroup,
  Touches,
} from './sequence/answer/plan.js';
export { planSequence } from './sequence/answer/plan-sequence.js';
export { type Estimate, FIT_METHOD, fitStrips, type StripFit, type StripResidual } from './strip/fit.js';
export { fitFindings } from './strip/fit-findings.js';
export { type MeasuredStrip, type MeasuredStrips, type Reading, USUAL_READING } from './strip/measured.js';
export { measuredSchema, readMeasured } from './strip/read-measured.js';
export { type StripSample, stripSample } from './strip/sample.js';
