export {
  type Advice,
  type SizeAdvice,
  sizeAdvice,
  type Trial,
  type WordAdvice,
  wordAdvice,
} from './advice/advice.js';
export {
  type Found,
  nearestSize,
  passing,
  type Room,
  type SearchBudget,
  stepOf,
} from './advice/nearest-size.js';
export { type Leaf, sizesIn, valueAt, withValue, wordsIn } from './advice/values.js';
// The only door of @tinwright/core. Names, no `export *`.
export { type Assembly, assemble, sameMark } from './assembly/assemble.js';
export type { Fastener, FastenerEnd } from './assembly/fastener.js';
export type { FitRow } from './assembly/fit.js';
export { reachTo } from './assembly/reach.js';
export { type SiteFrame, siteFrame } from './assembly/site-frame.js';
export type {
  AssemblyPart,
  JointEnd,
  JointSpec,
  Placed,
  Seated,
} from './assembly/types.js';
export { din6935 } from './bending/din-6935.js';
export { HANDBOOK_GROUPS, type HandbookGroup, handbook } from './bending/handbook.js';
export { type HemFold, type HemSpec, hemFold, leastHemLength } from './bending/hem.js';
export { kFactor } from './bending/k-factor.js';
export type { NamedRuleKind, RuleKind, RuleStock } from './bending/kind.js';
export { RULE_KINDS } from './bending/kinds.js';
export { linear } from './bending/linear.js';
export { nominal } from './bending/nominal.js';
export {
  allowanceAtK,
  type BendInput,
  type BendRule,
  type BendTerms,
  outsideSetback,
} from './bending/rule.js';
export { type StripBend, stripOf } from './bending/test-strip.js';
export { type Curl, curlOf, type WiredEdge, wireAllowance } from './bending/wired-edge.js';
export type { Check, Subject } from './checks/check.js';
export { CHECKS, findingsOf } from './checks/index.js';
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
  sortFindings,
  type Where,
} from './errors/finding.js';
export { nearest, suggestion } from './errors/nearest.js';
export {
  fail,
  inWords,
  JobError,
  type JobErrorData,
  type Path,
  type Problem,
  pathText,
  placeText,
  problemText,
  type Refusal,
  type Say,
  sayIn,
  type Wording,
} from './errors/problem.js';
export { PROGRAM } from './errors/program.js';
export { quoted, safeText } from './errors/quote.js';
export {
  type Basis,
  COMMON_PRACTICE,
  COMPUTED,
  cite,
  type Source,
  type SourceKind,
} from './errors/source.js';
export { COMMON } from './families/common.js';
export { type DerivedSize, derivedSize } from './families/derived.js';
export {
  type AnyFamily,
  type Description,
  defineFamily,
  type Family,
  type NamedFamily,
} from './families/family.js';
export {
  type BuiltInFamily,
  bentStrip,
  bracket,
  cover,
  divider,
  drawer,
  FAMILIES,
  flaredPan,
  gussetEnd,
  handle,
  hemmedChannel,
  lid,
  openBox,
  shelf,
  toteEnd,
  tray,
} from './families/index.js';
export { CORNER_GAP, type Complaint, need, setback } from './families/limits.js';
export { fold } from './fold/build.js';
export type { ArmCut, CornerArm, CornerStyle, Relief } from './fold/corner-style.js';
export { lap } from './fold/corners/lap.js';
export { mitre } from './fold/corners/mitre.js';
export { reliefHole, reliefSlot } from './fold/corners/relief.js';
export { slant } from './fold/corners/slant.js';
export { square } from './fold/corners/square.js';
export { vNotch } from './fold/corners/v-notch.js';
export { type BlankDimension, type BlankTerm, explainBlank } from './fold/explain-blank.js';
export { measuredBox } from './fold/extent.js';
export type { FlatBend, FlatMark, FlatPanel, FlatPattern, Line } from './fold/flat.js';
export { form } from './fold/form.js';
export type { Box3, Formed, FormedBend, FormedPanel } from './fold/formed.js';
export { bendAxis, bentPose, type Hinge, type Turn } from './fold/hinge.js';
export { reaches } from './fold/least.js';
export { nip, polygon, rectangle } from './fold/outline.js';
export type { Part, PartPanel } from './fold/part.js';
export { type Prism, panelPrisms, prismBetween, type Vectors } from './fold/prism.js';
export { prismDistanceUpTo } from './fold/prism-distance.js';
export { overlapDepth } from './fold/prism-overlap.js';
export { type SlotSpec, slot } from './fold/slot.js';
export {
  add3,
  compose3,
  cross3,
  dot3,
  HOME,
  length3,
  type Pose,
  place3,
  scale3,
  sub3,
  turn3,
  unit3,
  type Vec3,
} from './fold/space.js';
export { type Standing, stand } from './fold/stand.js';
export type {
  Asked,
  Bend,
  Cutout,
  Draft,
  Edge,
  EdgeFold,
  Face,
  Hole,
  Mark,
  Measured,
  Outline,
  Panel,
  Seat,
  Sheet,
  Site,
  Step,
} from './fold/tree.js';
export { unfold } from './fold/unfold.js';
export {
  asked,
  corners,
  cutout,
  type FlangeSpec,
  flange,
  hem,
  hole,
  type Inset,
  mark,
  type On,
  panel,
  type SeatSpec,
  site,
  wired,
} from './fold/verbs.js';
export { type Flaw, verifyFlat } from './fold/verify-flat.js';
export { verifyForm } from './fold/verify-form.js';
export type {
  BendingInput,
  FasteningInput,
  JobHead,
  JobInput,
  JobSource,
  JointInput,
  ParamsInput,
  PartHead,
  PartInput,
  StockInput,
} from './job/input.js';
export { type JobBuilder, job } from './job/job-builder.js';
export { makePart, type PartSheet } from './job/make-part.js';
export type { MeasuredSize } from './job/measured.js';
export { type JobPlan, type PartPlan, planJob, planPart } from './job/plan.js';
export { type Job, type JobContext, type JobPart, type JobReader, jobReader, readJob } from './job/read.js';
export { type Refit, type RefitAsk, type RefitChange, refit } from './job/refit.js';
export { type BendingData, bendingSchema, jobSchema, type StockData, stockSchema } from './job/schema.js';
export { type SheetMetal, sheetOf } from './job/sheet.js';
export { type KnownSize, sizesOf } from './job/sizes.js';
export {
  type AnyFastenerKind,
  type FastenerAsk,
  type FastenerKind,
  type FastenerNeeds,
  fastenerKind,
  type NamedFastenerKind,
  type StackSheet,
} from './joining/fastener.js';
export { FASTENER_KINDS } from './joining/kinds.js';
export { rivetLength } from './joining/rivet-length.js';
export { RIVET_RULES, RIVET_SIZES, type RivetSize, rivetSize } from './joining/rivet-tables.js';
export {
  SPOT_WELD_TABLES,
  type SpotWeldRow,
  type SpotWeldTable,
  WELD_EDGE_TABLE,
} from './joining/spot-weld-tables.js';
export { convexHull, convexPieces, polygonArea } from './plane/convex.js';
export { type Frame, place } from './plane/frame.js';
export { contains, distanceToLoop, distanceToSegment } from './plane/inside.js';
export {
  type Arc,
  arcOf,
  type Box,
  boxOf,
  bulgeAround,
  circleLoop,
  corner,
  isArc,
  type Loop,
  loopArea,
  loopBox,
  loopLength,
  reach,
  type Segment,
  segmentLength,
  segments,
  type Vertex,
} from './plane/loop.js';
export { meetings } from './plane/meet.js';
export { nearPairs } from './plane/near-pairs.js';
export type { Point } from './plane/point.js';
export { segmentDistance } from './plane/segment-distance.js';
export { flattened, keyholeLoop, placeLoop, roundedRectangle, roundOf, slotLoop } from './plane/shapes.js';
export {
  type Gives,
  type ParamKit,
  paramKit,
  type Shape,
  type SizeRange,
  strictGroup,
} from './schema/kit.js';
export { problemsOf } from './schema/problems.js';
export {
  type Grain,
  type MetalRow,
  type OffcutRow,
  type Price,
  type RackRows,
  rackShape,
  type SheetRow,
  sheetRowsSchema,
  type Trim,
} from './schema/rack-rows.js';
export {
  declaredAt,
  type Follow,
  type Given,
  type HemWritten,
  type Length,
  type LengthText,
  type Size,
  type Value,
  type Values,
  value,
  type Written,
  wordsOf,
} from './schema/value.js';
export {
  GAUGE_SYSTEMS,
  type GaugeSystem,
  type GaugeSystemName,
  gaugeMeanings,
  gaugeThickness,
} from './stock/gauges.js';
export { ISO_2768_BANDS, ISO_2768_LINEAR, linearTolerance, type ToleranceClass } from './stock/iso-2768.js';
export type { RadiusRule } from './stock/least-radius.js';
export { MATERIAL_NAMES, MATERIALS, type Material, type MaterialName } from './stock/materials.js';
export { degrees, radians } from './units/angle.js';
export { formatApart, plainNumber } from './units/format.js';
export { MM_PER_INCH, type ParsedLength, parseLength, type Unit } from './units/length.js';
export { numberAbove, numberBetween } from './units/range.js';
