// What a program that embeds @tinwright/shop needs. Names, no `export *`.

export type { ShopCheck, ShopSubject } from './checks/check.js';
export type { CheckFindings, ExpectedSize } from './checks/check-findings.js';
export { SHOP_CHECKS } from './checks/index.js';
export { JOINT_CHECKS, type JointCheck, type JointSubject } from './checks/joining.js';
export type { Batch, BatchStep } from './job/batch.js';
export { jobContext } from './job/job-context.js';
export type { DieFinding, ShopFinding, ShopFindings } from './job/order-findings.js';
export { type PlanShopOptions, planShop, planShopAsync, type ShopPlan } from './job/plan-shop.js';
export type { SetUpChange } from './job/set-up.js';
export { type Brakes, brakeNamed, brakesOf } from './machines/brakes.js';
export type { Capacity, Limit } from './machines/capacity.js';
export { DEFAULT_COSTS } from './machines/costs.js';
export { DEFAULT_SHOP } from './machines/default-shop.js';
export { EXAMPLE_PRESS } from './machines/example-press.js';
export { readShop } from './machines/read-shop.js';
export type {
  BackGauge,
  Brake,
  Costs,
  Die,
  Finger,
  FormerBlock,
  GaugeFinger,
  HandSeamer,
  Horns,
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
export { type SheetSpringback, type Springback, springbackOf } from './metal/springback.js';
export { jobOperations } from './operations/job-operations.js';
export type {
  BendOrder,
  BendWork,
  HoleWork,
  JointWork,
  OnObject,
  OnPart,
  Operation,
  Operations,
  ReasonName,
  ToolName,
} from './operations/operation.js';
export { type StepState, stateAt } from './replay/state-at.js';
export type { Along } from './replay/tool-solids.js';
export { type SequenceFlaw, verifySequence } from './replay/verify-sequence.js';
export type {
  BendStep,
  BendStroke,
  Handling,
  Mend,
  PatternSide,
  PressSetting,
  Reason,
  Sequence,
  ToolGroup,
} from './sequence/answer/plan.js';
export {
  type PlanSequenceOptions,
  planSequence,
  planSequenceAsync,
} from './sequence/answer/plan-sequence.js';
export type { Action } from './sequence/part/operations.js';
export type { Touches } from './sequence/part/rear-edge.js';
export type { RemovalWay } from './sequence/stations/station.js';
export { type Estimate, fitStrips, type StripFit, type StripResidual } from './strip/fit.js';
export type { MeasuredStrip, MeasuredStrips, Reading } from './strip/measured.js';
export { readMeasured } from './strip/read-measured.js';
export { type StripSample, stripSample } from './strip/sample.js';
