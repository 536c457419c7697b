export {
  findingEntry,
  sourceWords,
  spotWords,
  type ToldFinding,
  tellFinding,
  tellFindings,
} from './findings/tell-finding.js';
export type { Language } from './language.js';
export { MATERIALS } from './materials.js';
export { mendWords, reasonWords } from './reasons/tell-reason.js';
