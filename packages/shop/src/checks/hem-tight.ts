import type { ShopCheck } from './check.js';
import { middleOf } from './geometry/panels.js';
import { isLowCarbon } from './hard.js';
import { isHem } from './hem-short.js';
import { limitCheck } from './limit-check.js';

/** A hem folded tighter than its metal bends without cracking. Low-carbon steel is folded flat as a matter of course. */
export const hemTight: ShopCheck = limitCheck({
  code: 'hem-tight',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: ({ flat, sheet, material }) =>
    isLowCarbon(material)
      ? []
      : flat.bends.filter(isHem).map((bend) => ({
          at: middleOf(bend),
          value: bend.insideRadius,
          limit: material.leastRadius.at(sheet.thickness),
          what: bend.id,
        })),
  message: ({ value, limit, what }, say, { material, sheet }) =>
    `${what} is folded to ${say.size(value)} inside, ${material.title} of ${say.size(sheet.thickness)} takes ${say.least(limit)}: it may crack`,
  source: (_, { material }) => material.leastRadius.source,
  aim: ({ limit }, say) => `take an open hem with a gap of ${say.least(2 * limit)} or more`,
  remedy: () => 'try one on an offcut',
});
