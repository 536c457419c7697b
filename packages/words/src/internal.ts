// What only sister packages use: no promise to anybody else.

export { claimText, duration } from './bends/claim.js';
export { sideWords } from './bends/tell-bend.js';
export { type ToolRow, toolRows } from './bends/tool-rows.js';
export type { ConsoleWords } from './console/words.js';
export { inDecimal, sayOf } from './decimal.js';
export type { DimsName } from './dims-name.js';
export { derivedWords } from './families/derived-words.js';
export { measuredLabel } from './families/measured-words.js';
export { familyTitle, parameterWords } from './families/tell-family.js';
export { findingEntry, severityWord, sourceWords, spotWords } from './findings/tell-finding.js';
export type { PaperWords } from './languages.js';
export { CONSOLE_WORDS, LANGUAGES } from './languages.js';
export { materialName } from './materials.js';
export type {
  CautionName,
  Has,
  JointFacts,
  OperationText,
  PacketWords,
  SizeSide,
} from './packet/words.js';
export type { PlanWords } from './plan/words.js';
export { fewMends } from './reasons/few-mends.js';
export type { ShearWords } from './shear/words.js';
export type { DrawnTool, StepWords } from './steps/words.js';
