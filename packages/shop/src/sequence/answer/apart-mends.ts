import type { Part, PartPlan } from '@tinwright/core';
import type { Shop } from '../../machines/shop.js';
import { splitOff } from '../part/split.js';
import { trialOf } from './feasible.js';
import type { Mend } from './plan.js';
import { partToBend } from './planned-sequence.js';
import { choose } from './smallest-core.js';

const LAP = 15; // mm of a flange to rivet or weld through, up to the outside of the wall on it; judgement
const MOST_TRIED = 12;
const MOST_WHOLE = 1000; // states looked at for a piece

/**
 * Panels that might be joined on instead of bent: one, or two, each a piece of its own on a flange. The part without them
 * and every piece are planned as bodies before it is told.
 * @param cores panels whose bends cannot all be made
 */
export function apartMends(
  plan: PartPlan,
  shop: Shop,
  cores: readonly (readonly string[])[],
  stop: () => void,
): readonly Mend[] {
  const { part } = plan;
  const parents = new Set(
    part.panels.flatMap((p) => (cores.flat().includes(p.id) ? [p.hang?.bend.parent] : [])),
  );
  const loose = part.panels.flatMap(({ id, hang }) =>
    hang !== null && hang.bend.hem === null && parents.has(hang.bend.parent) ? [id] : [],
  );
  const tries = [...choose(loose, 1), ...choose(loose, 2)].filter((ids) => !nested(part, ids));
  const found = tries.slice(0, MOST_TRIED).find((ids) => {
    stop();
    return splitOff(part, ids, LAP).every((piece) => goes(plan, piece, shop));
  });
  if (found === undefined) return [];
  return [
    {
      of: 'part',
      parameter: found.join(', '),
      given: null,
      found: LAP,
      bound: 'tried',
      unit: 'mm',
      instead: null,
      thickness: null,
    },
  ];
}

/** True where one of two panels hangs on the other, whose strip it would go with. */
const nested = ({ panels }: Part, ids: readonly string[]): boolean =>
  panels.some((p) => ids.includes(p.id) && p.hang !== null && ids.includes(p.hang.bend.parent));

function goes(plan: PartPlan, part: Part, shop: Shop): boolean {
  if (part.panels.length === 1) return true;
  const input = { cores: [], dies: 'all', most: MOST_WHOLE } as const;
  return trialOf({ ...partToBend(plan), part }, input).planIn(shop) !== null;
}
