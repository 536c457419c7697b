// The door of @tinwright/page. Names, no `export *`.
export type { PageContent } from './content.js';
export { definePageElement } from './element.js';
export { pageFile } from './page-file.js';
