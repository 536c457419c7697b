import type { PageContent } from './content.js';

const PLACE = '{"tinwright":"content"}';

/**
 * The page in one file.
 * @param template the package's `page.html`
 * @throws RangeError for a text that is no such template
 */
export function pageFile(template: string, content: PageContent): string {
  const [before, after] = template.split(PLACE);
  if (before === undefined || after === undefined)
    throw new RangeError('a template without a place for the job given');
  // in a script element only this sign could end it
  return `${before}${JSON.stringify(content).replaceAll('<', '\\u003c')}${after}`;
}
