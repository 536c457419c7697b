// What only sister packages use: no promise to anybody else.

export {
  type Advice,
  type SizeAdvice,
  sizeAdvice,
  type Trial,
  type WordAdvice,
  wordAdvice,
} from './advice/advice.js';
export {
  changeOf,
  type Found,
  nearestSize,
  passing,
  type Room,
  type SearchBudget,
  stepOf,
} from './advice/nearest-size.js';
export { type Leaf, sizesIn, valueAt, withValue, wordsIn } from './advice/values.js';
export { cutPose } from './assembly/as-cut.js';
export { assemble, sameMark } from './assembly/assemble.js';
export { reachTo } from './assembly/reach.js';
export { type SiteFrame, siteFrame } from './assembly/site-frame.js';
export { allowanceAtK } from './bending/rule.js';
export { stripOf } from './bending/test-strip.js';
export { findingsOf } from './checks/index.js';
export { ofDrawing } from './cutouts/of-drawing.js';
export type { CutoutParams } from './cutouts/params.js';
export { sortFindings, worseFirst } from './errors/finding.js';
export { nearest, suggestion } from './errors/nearest.js';
export { fail, inWords, sayIn } from './errors/problem.js';
export { quoted, safeText, shownText } from './errors/quote.js';
export { COMMON_PRACTICE } from './errors/source.js';
export { COMMON, PART_KEYS } from './families/common.js';
export { bendAxis, bentPose, type Turn } from './fold/draft/hinge.js';
export {
  add3,
  compose3,
  cross3,
  dot3,
  homePose,
  length3,
  place3,
  scale3,
  sub3,
  turn3,
  unit3,
} from './fold/draft/space.js';
export { lineOnMetal } from './fold/flat/line-on-metal.js';
export { unfold } from './fold/flat/unfold.js';
export { measuredBox, measuredSize } from './fold/formed/extent.js';
export { form } from './fold/formed/form.js';
export { type Prism, panelPrisms, prismBetween, type Vectors } from './fold/formed/prism.js';
export { prismDistanceUpTo } from './fold/formed/prism-distance.js';
export { overlapDepth } from './fold/formed/prism-overlap.js';
export { type Standing, stand } from './fold/formed/stand.js';
export { type FormedSize, formedSizes } from './job/formed-sizes.js';
export { isDeviceName, isPlainName } from './job/name.js';
export { ownMaterials, ownMaterialsSchema } from './job/own-materials.js';
export { type BendingData, bendingSchema, type StockData, stockSchema } from './job/part-schema.js';
export { asFile } from './job/piece-named.js';
export { planPart } from './job/plan-parts.js';
export { named } from './job/read.js';
export { revivePart } from './job/revive.js';
export { jobSchema } from './job/schema.js';
export { type SheetMetal, sheetOf } from './job/sheet.js';
export { rivetLength } from './joining/rivet-length.js';
export { RIVET_RULES, RIVET_SIZES, type RivetSize, rivetSize } from './joining/rivet-tables.js';
export {
  SPOT_WELD_TABLES,
  type SpotWeldRow,
  type SpotWeldTable,
  WELD_EDGE_TABLE,
} from './joining/spot-weld-tables.js';
export { closest, nearestOn } from './plane/closest.js';
export { clipPolygon, convexHull, convexPieces, polygonArea } from './plane/convex.js';
export { crossesItself } from './plane/crosses-itself.js';
export { place } from './plane/frame.js';
export { contains, distanceToLoop, distanceToSegment } from './plane/inside.js';
export { leastEdges } from './plane/least-edges.js';
export { linesCross } from './plane/lines-cross.js';
export {
  arcOf,
  boxOf,
  bulgeAround,
  circleLoop,
  corner,
  loopArea,
  loopBox,
  loopLength,
  reach,
  segmentLength,
} from './plane/loop.js';
export { meetings } from './plane/meet.js';
export { nearPairs } from './plane/near-pairs.js';
export { distance } from './plane/point.js';
export { segmentDistance } from './plane/segment-distance.js';
export { flattened, keyholeLoop, placeLoop, roundedRectangle, roundOf, slotLoop } from './plane/shapes.js';
export { UNSOUND } from './schema/in-range.js';
export { LONGEST, MOST_CORNERS } from './schema/kit.js';
export { problemsOf, withWords } from './schema/problems.js';
export {
  rackShape,
  sheetRowsSchema,
} from './schema/rack-rows.js';
export { textLine, textName } from './schema/text-line.js';
export { declaredAt, wordsOf } from './schema/value.js';
export { gaugeMeanings } from './stock/gauges.js';
export { ISO_2768_BANDS, ISO_2768_LINEAR } from './stock/iso-2768.js';
export { degrees, radians } from './units/angle.js';
export { breath } from './units/breath.js';
export { formatApart, plainNumber } from './units/format.js';
export { frozen } from './units/frozen.js';
export { isGroup } from './units/is-group.js';
export { lazy } from './units/lazy.js';
export { massText } from './units/mass.js';
export { atOnce, inTurns, type Pieces } from './units/pieces.js';
export { numberAbove, numberBetween } from './units/range.js';
export { withMethods } from './units/with-methods.js';
