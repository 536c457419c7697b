import type { JobContext } from '@tinwright/core';
import type { Shop } from '../machines/shop.js';

/** What a workshop brings to the reading of jobs: its metals and test strips, and what it cuts with where they do not say. */
export function jobContext({ materials, strips, cutBy, table }: Shop): JobContext {
  return { shopMaterials: materials, strips, usualCut: { by: cutBy, kerf: table?.kerf ?? null } };
}
