import { cite, leastRadiusOf } from '@tinwright/core';
import { plainCheck, type ShopCheck } from './check.js';
import { remark } from './check-findings.js';
import { bySources } from './profiles.js';

/**
 * Inside radius that the alloy's usual source allows and a stricter one does not; only where the shop takes the stricter
 * of sources that disagree. What the usual source forbids is told already.
 */
export const radiusStrict: ShopCheck = plainCheck(
  'radius-strict',
  ({ sheet, material, flat }, { profile }) => {
    const { leastRadius: usual, strictRadius: strict } = material;
    if (profile !== 'strict' || strict === undefined) return [];
    const limit = leastRadiusOf(strict, sheet.thickness);
    const between = flat.bends.filter(
      ({ hem, insideRadius, angle }) =>
        hem === null &&
        insideRadius < limit - 1e-9 &&
        insideRadius >= leastRadiusOf(usual, sheet.thickness, angle) - 1e-9,
    );
    const [worst] = between.toSorted((a, b) => a.insideRadius - b.insideRadius);
    if (worst === undefined) return [];
    return [
      remark('radius-strict', 'warning', {
        where: { at: worst.line[0], names: between.map((b) => b.id) },
        value: worst.insideRadius,
        limit,
        unit: 'mm',
        values: { material: material.name, thickness: sheet.thickness },
        source: bySources(profile, {
          strict: cite(strict.source),
          usual: cite(usual.source, { size: leastRadiusOf(usual, sheet.thickness, worst.angle) }),
        }),
      }),
    ];
  },
);
