// What a program that embeds @tinwright/words needs. Names, no `export *`.

export { type ToldFinding, tellFinding, tellFindings } from './findings/tell-finding.js';
export type { Language } from './language.js';
export { LANGUAGES } from './languages.js';
export { mendWords, reasonWords } from './reasons/tell-reason.js';
