// What a program that embeds @tinwright/cutting needs. Names, no `export *`.

export type {
  CuttingFinding,
  CuttingFindings,
  LeftWhy,
  OnSheet,
  Short,
} from './findings/cutting-findings.js';
export { type Contour, CUT_STYLE, type CutRun, type CutStyle } from './kerf/contour.js';
export type { CutRemark } from './kerf/cut-findings.js';
export { cutSheet, type SheetCuts } from './kerf/cut-sheet.js';
export { offsetLoop } from './kerf/offset-loop.js';
export type { PieceOrder } from './kerf/order.js';
export type { TorchRates } from './kerf/torch-minutes.js';
export { type TorchWork, torchWork } from './kerf/torch-work.js';
export { type CutFlaw, verifyCuts } from './kerf/verify-cuts.js';
export { type NestAsk, type NestPart, QUARTER_TURNS } from './nest/ask.js';
export { drawTogether } from './nest/draw-together.js';
export { findNest } from './nest/find-nest.js';
export type { Nest, NestedSheet, NestMissing, NestPiece } from './nest/result.js';
export { type NestFlaw, verifyNest } from './nest/verify-nest.js';
export type { Cover, CoverAnswer, CoverColumn, CoverSolver } from './shear/lp/cover.js';
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
export type { PackGoal, Progress } from './shear/search/pack.js';
export type { Blank } from './stock/blank.js';
export type { Planned } from './stock/blank-of.js';
export { blankOf } from './stock/blank-of.js';
export { readRack } from './stock/read-rack.js';
export {
  type Grain,
  NO_TRIM,
  type Rack,
  type StockSheet,
  type Trim,
  type UseOfOffcuts,
} from './stock/sheet.js';
