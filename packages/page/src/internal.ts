// What sister packages need of @tinwright/page. Names, no `export *`.
export { LONGEST_TEXT } from './app/job-text.js';
export { checkStructure, dataOf, documentOf, OTHER_SPACE, startOf } from './text/text-structure.js';
