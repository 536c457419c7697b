// What a program that embeds @tinwright/words needs. Names, no `export *`.

export { plainPrint, stepLine, type ToldBend, tellBend, tellStep } from './bends/tell-bend.js';
export type { BendPrint, SettingName, ToldSetting } from './bends/words.js';
export { type ToldFinding, tellFinding, tellFindings } from './findings/tell-finding.js';
export type { Language } from './language.js';
export { mendWords, reasonWords } from './reasons/tell-reason.js';
