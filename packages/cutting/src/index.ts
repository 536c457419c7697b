// The only door of @tinwright/cutting. Names, no `export *`.

export {
  type CuttingFinding,
  type CuttingFindings,
  cuttingFinding,
  type LeftWhy,
  type OnSheet,
  type Short,
} from './findings/cutting-findings.js';
export { type LeftPieces, leftOutFinding } from './findings/left-out.js';
export { type Contour, type CutStyle, LEAD_LENGTH } from './kerf/contour.js';
export { type CutRemark, cutFindings } from './kerf/cut-findings.js';
export { cutSheet, type SheetCuts } from './kerf/cut-sheet.js';
export { offsetLoop } from './kerf/offset-loop.js';
export type { PieceOrder } from './kerf/order.js';
export { type NestAsk, type NestPart, QUARTER_TURNS } from './nest/ask.js';
export type { Bench } from './nest/fill.js';
export { bestLayout, findNest, movesBudget } from './nest/find-nest.js';
export { type PackedStrip, packStrip, type StripPart } from './nest/pack-strip.js';
export { type MetalNest, metalsOf } from './nest/prepare.js';
export type { FilledBed, NestLayout, NestProblem } from './nest/problem.js';
export { type Nest, type NestedSheet, type NestMissing, type NestPiece, nestFrom } from './nest/result.js';
export { benchOf, type NestSearch, searchNest } from './nest/search-nest.js';
export type { Spend } from './nest/strip.js';
export { type NestFlaw, verifyNest } from './nest/verify-nest.js';
export { lowerBound } from './shear/bound/lower-bound.js';
export { NO_LIMITS, type ShearLimits } from './shear/plan/limits.js';
export { planShear, SHEAR_EFFORT, type ShearEffort } from './shear/plan/plan-shear.js';
export { type ShearAbility, type Sheared, shearBlanks } from './shear/plan/shear-blanks.js';
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
export { blankOf } from './stock/blank-of.js';
export { rackOf, readRack } from './stock/read-rack.js';
export {
  type Grain,
  NO_TRIM,
  type Rack,
  type StockSheet,
  type Trim,
  type UseOfOffcuts,
} from './stock/sheet.js';
export { type ShearReach, stockProblems } from './stock/stock-problems.js';
export { turnsAllowed } from './stock/turns.js';
