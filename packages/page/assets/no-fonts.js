// In place of the reader of font files in the page, which has the standard fonts alone.

/** @throws always */
export function create() {
  throw new Error('a page opens no font file');
}
