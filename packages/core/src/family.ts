// What the author of a part family, a fastener or a bend rule needs beside `@tinwright/core`. Names, no `export *`.

export { type HemFold, type HemSpec, hemFold, leastHemLength } from './bending/hem.js';
export { type NamedRuleKind, type RuleKind, type RuleStock, ruleKind } from './bending/kind.js';
export { type Curl, curlOf, type WiredEdge, wireAllowance } from './bending/wired-edge.js';
export { type DerivedSize, derivedSize } from './families/derived.js';
export { type Description, defineFamily, type Family } from './families/family.js';
export { CORNER_GAP, type Complaint, need, setback } from './families/limits.js';
export { fold } from './fold/build.js';
export { lap } from './fold/corners/lap.js';
export { mitre } from './fold/corners/mitre.js';
export { reliefHole, reliefSlot } from './fold/corners/relief.js';
export { slant } from './fold/corners/slant.js';
export { square } from './fold/corners/square.js';
export { vNotch } from './fold/corners/v-notch.js';
export type { ArmCut, CornerArm, CornerStyle, Relief } from './fold/draft/corner-style.js';
export { reaches } from './fold/draft/least.js';
export type { NameOf, NamesIn } from './fold/draft/names.js';
export { nip, polygon, rectangle } from './fold/draft/outline.js';
export { type SlotSpec, slot } from './fold/draft/slot.js';
export type {
  Asked,
  Bend,
  BentMetal,
  CornerRequest,
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
  Slot,
  Step,
} from './fold/draft/tree.js';
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
  scribe,
  site,
  wired,
} from './fold/draft/verbs.js';
export type { FastenerPlace } from './joining/fastener.js';
export {
  type AnyFastenerKind,
  type FastenerAsk,
  type FastenerEnds,
  type FastenerFacts,
  type FastenerKind,
  type FastenerNeeds,
  type FastenerTool,
  type FastenerWords,
  fastenerKind,
  type KnownFastener,
  type NamedFastenerKind,
  type StackSheet,
} from './joining/fastener.js';
export {
  type Gives,
  type ParamKit,
  paramKit,
  type SchemaShape,
  type SizeRange,
  strictGroup,
} from './schema/kit.js';
export { type Given, type Value, type Values, value } from './schema/value.js';
