// What only sister packages use: no promise to anybody else.

export { cuttingFinding } from './findings/cutting-findings.js';
export { type LeftPieces, leftOutFinding } from './findings/left-out.js';
export { LEAD_LENGTH } from './kerf/contour.js';
export { cutFindings } from './kerf/cut-findings.js';
export { torchMinutes } from './kerf/torch-minutes.js';
export type { Bench } from './nest/fill.js';
export { bestLayout, movesBudget } from './nest/find-nest.js';
export { type PackedStrip, packStrip, type StripPart } from './nest/pack-strip.js';
export { type MetalNest, metalsOf } from './nest/prepare.js';
export type { FilledBed, NestLayout, NestProblem } from './nest/problem.js';
export { nestFrom } from './nest/result.js';
export { benchOf, type NestSearch, searchNest } from './nest/search-nest.js';
export type { Spend } from './nest/strip.js';
export { lowerBound } from './shear/bound/lower-bound.js';
export { type ShearAbility, type Sheared, shearBlanks } from './shear/plan/shear-blanks.js';
export type { Bin, ShearItem, ShearProblem } from './shear/problem.js';
export type { Layout } from './shear/search/layout.js';
export type { Least } from './shear/search/offcut.js';
export { type Effort, type Filled, type Packed, pack } from './shear/search/pack.js';
export { type BestBlock, type JoinedBlock, type Limited, limitedValue } from './shear/value/limited.js';
export type { Prized } from './shear/value/points.js';
export { type Split, unlimitedValue, type ValueTable } from './shear/value/unlimited.js';
export { sameMetal } from './stock/blank.js';
export { piecesProblem } from './stock/check-blanks.js';
export { rackOf } from './stock/read-rack.js';
export { type ShearReach, stockProblems } from './stock/stock-problems.js';
export { turnsAllowed } from './stock/turns.js';
