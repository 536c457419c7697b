import { radians } from '@tinwright/core';
import { leafTools } from '../tools/leaf-tools.js';
import type { ShopCheck } from './check.js';
import { middleOf } from './geometry/panels.js';
import { panelNamed } from './geometry/sides.js';
import { isHem } from './hem-short.js';
import { limitCheck } from './limit-check.js';

/** A folded hem that stands too high to go under the lifted jaw for closing. Only where the leaf brake has to do it. */
export const hemOpening: ShopCheck = limitCheck({
  code: 'hem-opening',
  leansOn: ['brake.opening', 'brake.leaf.stop'],
  severity: 'error',
  unit: 'mm',
  bound: 'most',
  places: ({ flat, part, sheet }, { brake, press }) => {
    if (brake === null || press !== null) return [];
    const { thickness, insideRadius } = sheet;
    const { most } = leafTools(brake, thickness, insideRadius);
    return flat.bends.filter(isHem).map((bend) => {
      const leg = Math.max(...panelNamed(part, bend.id).outline.map((e) => e.from[1]));
      const fold = Math.min(most, bend.angle);
      return {
        at: middleOf(bend),
        value: leg * Math.sin(radians(fold)) + thickness,
        limit: brake.opening,
        what: bend.id,
      };
    });
  },
  message: ({ value, limit, what }, say, _, { brake }) =>
    `${what} stands ${say.size(value)} high once folded past, the jaw of the ${brake?.name} lifts ${say.most(limit)}`,
  source: () => 'length × sin of the greatest angle + T against the opening in the shop file, derived',
  aim: ({ limit }, say) => `keep it within ${say.most(limit)}`,
  remedy: () => 'close it with a mallet over a strip of sheet',
});
