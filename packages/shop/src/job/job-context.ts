import type { JobContext } from '@tinwright/core';
import type { Shop } from '../machines/shop.js';

/** What a workshop brings to the reading of jobs: its test strips, and what it cuts with where they do not say. */
export function jobContext({ strips, cutBy, table }: Shop): JobContext {
  return { strips, usualCut: { by: cutBy, kerf: table?.kerf ?? null } };
}
