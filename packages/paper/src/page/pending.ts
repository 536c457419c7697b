import type { Block, Page } from './page.js';

/**
 * A page laid out but not drawn yet. Sheets are set in several ways to find the one that takes fewest, and long documents
 * are written page by page: what stands on a page is made when it is drawn, and held by nobody after that.
 */
export interface PendingPage extends Omit<Page, 'blocks'> {
  readonly draw: () => readonly Block[];
}

/** A page that is drawn already. */
export const pending = ({ blocks, ...page }: Page): PendingPage => ({ ...page, draw: () => blocks });

/** A page with what stands on it. */
export const drawn = ({ draw, ...page }: PendingPage): Page => ({ ...page, blocks: draw() });

/** Pages drawn one by one as they are asked for, as often as they are; `seen` hears the number of each. */
export const oneByOne = (
  pages: readonly PendingPage[],
  seen: (page: number) => void = () => undefined,
): Iterable<Page> => ({
  *[Symbol.iterator]() {
    for (const [i, page] of pages.entries()) {
      yield drawn(page);
      seen(i + 1);
    }
  },
});
