// What a program that embeds @tinwright/core needs. Names, no `export *`.

export type { Assembly } from './assembly/assemble.js';
export type { Bought, Fitted, HardwareSpec, HardwareTools, JobHardware } from './assembly/bought.js';
export type { Fastened } from './assembly/fasten.js';
export type { Fastener, FastenerEnd } from './assembly/fastener.js';
export type { FitRow } from './assembly/fit.js';
export type { StandingSheet } from './assembly/layers.js';
export type { AssemblyPart, JointEnd, JointPlaces, JointSpec, Placed, Seated } from './assembly/types.js';
export { din6935 } from './bending/din-6935.js';
export { HANDBOOK_GROUPS, type HandbookGroup, handbook } from './bending/handbook.js';
export { kFactor } from './bending/k-factor.js';
export { RULE_KINDS } from './bending/kinds.js';
export { linear } from './bending/linear.js';
export { nominal, nominalFor } from './bending/nominal.js';
export {
  type BendInput,
  type BendRule,
  type BendTerms,
  outsideSetback,
  type RuleMade,
} from './bending/rule.js';
export type { StripBend } from './bending/strip-bend.js';
export type { Check, Subject } from './checks/check.js';
export { CHECKS } from './checks/index.js';
export type { CutoutInput } from './cutouts/params.js';
export type { EdgeInput } from './edges/params.js';
export type { CoreFinding, CoreFindings, Spot } from './errors/core-findings.js';
export {
  type Change,
  type Finding,
  type FindingsOf,
  type OwnWords,
  type Remark,
  type RemarkData,
  remarkOf,
  type Severity,
  type Where,
} from './errors/finding.js';
export {
  JobError,
  type JobErrorData,
  type Path,
  type Problem,
  pathText,
  placeText,
  problemText,
  type Refusal,
  type Say,
  type Wording,
} from './errors/problem.js';
export { PROGRAM } from './errors/program.js';
export { type Basis, cite, type Source, type SourceKind } from './errors/source.js';
export { bentStrip } from './families/bent-strip/build.js';
export { bracket } from './families/bracket/build.js';
export { cover } from './families/cover/build.js';
export { divider } from './families/divider/build.js';
export { drawer } from './families/drawer/build.js';
export { duct } from './families/duct/build.js';
export type { AnyFamily, NamedFamily } from './families/family.js';
export { flaredPan } from './families/flared-pan/build.js';
export { gussetEnd } from './families/gusset-end/build.js';
export { handle } from './families/handle/build.js';
export { hemmedChannel } from './families/hemmed-channel/build.js';
export { hingedBox } from './families/hinged-box/build.js';
export { hopper } from './families/hopper/build.js';
export { type BuiltInFamily, FAMILIES } from './families/index.js';
export { lid } from './families/lid/build.js';
export { offsetCheek } from './families/offset-cheek/build.js';
export { openBox } from './families/open-box/build.js';
export { scoop } from './families/scoop/build.js';
export { shelf } from './families/shelf/build.js';
export { toteEnd } from './families/tote-end/build.js';
export { tray } from './families/tray/build.js';
export type { Hinge } from './fold/draft/hinge.js';
export type { Pose, Vec3 } from './fold/draft/space.js';
export type { CutBy, CutTool } from './fold/flat/cut-back.js';
export { type BlankDimension, type BlankTerm, explainBlank } from './fold/flat/explain-blank.js';
export type { FlatBend, FlatMark, FlatPanel, FlatPattern, Line } from './fold/flat/flat.js';
export { type Flaw, verifyFlat } from './fold/flat/verify-flat.js';
export type { Box3, Formed, FormedBend, FormedPanel } from './fold/formed/formed.js';
export { verifyForm } from './fold/formed/verify-form.js';
export type { Part, PartPanel, RootHole, Zone } from './fold/settle/part.js';
export type { Body, BodyHole, HardwareBlock } from './hardware/body.js';
export type { HardwareParams, HardwareType } from './hardware/params.js';
export type { UsualCut } from './job/cut-by.js';
export type {
  BendingInput,
  FasteningInput,
  HardwareInput,
  JobHead,
  JobInput,
  JobSource,
  JointInput,
  MaterialInput,
  ParamsInput,
  PartHead,
  PartInput,
  SignedSize,
  StockInput,
} from './job/input.js';
export type { Job, JobPart } from './job/job.js';
export { type JobBuilder, type JointOf, job } from './job/job-builder.js';
export { jobReader, readJob } from './job/job-reader.js';
export { makePart, type PartSheet } from './job/make-part.js';
export type { MeasuredSize } from './job/measured.js';
export { type JobPlan, type PlanJobOptions, planJob, planJobAsync } from './job/plan.js';
export type { PartPlan, PlanPartsOptions } from './job/plan-parts.js';
export type { JobContext } from './job/read.js';
export type { JobReader } from './job/reader.js';
export { type Refit, type RefitAsk, type RefitChange, refit } from './job/refit.js';
export type { OwnCode } from './job/revive.js';
export { revivePlan } from './job/revive-plan.js';
export { type FollowedSize, type KnownSize, sizesOf } from './job/sizes.js';
export type { OwnTables } from './job/tables.js';
export type { BlindRivetAsk } from './joining/blind-rivet.js';
export { FASTENER_KINDS } from './joining/kinds.js';
export type { PlugWeldAsk } from './joining/plug-weld.js';
export type { ScrewAsk } from './joining/screw.js';
export type { SpotWeldAsk } from './joining/spot-weld.js';
export type { Frame } from './plane/frame.js';
export { type Arc, type Box, isArc, type Loop, type Segment, segments, type Vertex } from './plane/loop.js';
export type { Point } from './plane/point.js';
export type { Grain, MetalRow, OffcutRow, Price, RackRows, SheetRow, Trim } from './schema/rack-rows.js';
export type { Follow, HemWritten, Length, LengthText, Size, Written } from './schema/value.js';
export { GAUGE_SYSTEMS, type GaugeSystem, type GaugeSystemName, gaugeThickness } from './stock/gauges.js';
export { linearTolerance, type ToleranceClass } from './stock/iso-2768.js';
export {
  leastRadiusOf,
  type RadiusRow,
  type RadiusRule,
  timesThickness,
} from './stock/least-radius.js';
export { MATERIAL_NAMES, MATERIALS, type Material, type MaterialName } from './stock/materials.js';
export { MM_PER_INCH, type ParsedLength, parseLength, type Unit } from './units/length.js';
export type { StopSignal } from './units/pieces.js';
