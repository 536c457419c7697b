import * as z from 'zod/mini';
import type { CutBy, CutTool } from '../fold/flat/cut-back.js';
import { type Gives, type ParamKit, strictGroup } from '../schema/kit.js';

/** `cutBy:` of a job as read, mm. */
export type CutByData = CutTool | { readonly table: { readonly leastEdge: number } };

/** How a workshop cuts where a job does not say: its way, null for none, and how wide its table cuts, mm. */
export interface UsualCut {
  readonly by: CutTool | null;
  readonly kerf: number | null;
}

/** Width of a plasma cut in thin mild steel, mm: 1.3 to 1.5 at 25 to 30 A (course slides of a community college). */
const USUAL_KERF = 1.5;
const MOST_EDGE = 20;

export const cutBySchema = (kit: ParamKit): Gives<unknown> =>
  kit.either(
    z.enum(['hand', 'table']),
    strictGroup({ table: strictGroup({ leastEdge: kit.size({ min: 0, max: MOST_EDGE }) }) }),
    'hand, table or { table: { leastEdge } },',
  );

/** What a job says, or else what is usual in the workshop; null where neither does. */
export function cutByOf(data: CutByData | undefined, usual: UsualCut): CutBy | null {
  const said = data ?? usual.by;
  if (said === null) return null;
  if (said === 'hand') return { by: 'hand' };
  return { by: 'table', leastEdge: said === 'table' ? (usual.kerf ?? USUAL_KERF) : said.table.leastEdge };
}
