import type { Box } from '@tinwright/core';
import type { Item } from './page.js';

/** A drawing on a sheet. mm of the page, wherever its origin lies */
export interface Figure {
  readonly alt: string;
  readonly items: readonly Item[];
  readonly box: Box;
}
