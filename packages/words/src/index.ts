// The only door of @tinwright/words. Names, no `export *`.
export type { DimsName } from './dims-name.js';
export { familyTitle, parameterWords } from './families/tell-family.js';
export {
  findingEntry,
  sourceWords,
  spotWords,
  type ToldFinding,
  tellFinding,
  tellFindings,
} from './findings/tell-finding.js';
export type { Language } from './language.js';
export { LANGUAGES, type PaperWords } from './languages.js';
export { materialName } from './materials.js';
export type {
  BendFacts,
  CautionName,
  Has,
  JointFacts,
  OperationText,
  PacketWords,
  SizeSide,
} from './packet/words.js';
export type { PlanWords } from './plan/words.js';
export { mendWords, reasonWords } from './reasons/tell-reason.js';
export type { ShearWords } from './shear/words.js';
export type { DrawnTool, RowName, StepWords } from './steps/words.js';
