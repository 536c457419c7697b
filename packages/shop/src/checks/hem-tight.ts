import { cite, leastRadiusOf } from '@tinwright/core';
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
          limit: leastRadiusOf(material.leastRadius, sheet.thickness),
          names: [bend.id],
        })),
  values: (_, { material, sheet }) => ({ material: material.name, thickness: sheet.thickness }),
  source: (_, { material }) => [cite(material.leastRadius.source)],
});
