// The only door of @tinwright/cutting. Names, no `export *`.
export { lowerBound } from './shear/bound/lower-bound.js';
export { NO_LIMITS, type ShearLimits } from './shear/plan/limits.js';
export { planShear, SHEAR_EFFORT, type ShearEffort } from './shear/plan/plan-shear.js';
export type {
  Area,
  CutTree,
  Missing,
  PieceName,
  PlacedBlank,
  ShearPlan,
  ShearStep,
  SheetPlan,
} from './shear/plan/shear-plan.js';
export { type ShearFlaw, verifyShearPlan } from './shear/plan/verify-shear-plan.js';
export type { Bin, Item, Problem } from './shear/problem.js';
export type { Layout } from './shear/search/layout.js';
export type { Least } from './shear/search/offcut.js';
export {
  type Effort,
  type Filled,
  type Packed,
  type Progress,
  pack,
  type Stage,
} from './shear/search/pack.js';
export { type BestBlock, type Block, type Limited, limitedValue } from './shear/value/limited.js';
export type { Prized } from './shear/value/points.js';
export { type Split, splitOf, unlimitedValue, type ValueTable } from './shear/value/unlimited.js';
export { type Blank, pieceId, sameMetal } from './stock/blank.js';
export { type Grain, NO_TRIM, type Rack, type StockSheet, type Trim } from './stock/sheet.js';
export { turnsAllowed } from './stock/turns.js';
