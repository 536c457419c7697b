import { plainNumber } from '../units/format.js';
import type { Check } from './check.js';

/** Inside radius under the least the alloy's table gives for this thickness. Hems are folded flat on purpose. */
export const leastRadius: Check = ({ sheet, material, flat }) => {
  const limit = material.leastRadius.at(sheet.thickness);
  const tight = flat.bends.filter((b) => b.hem === null && b.insideRadius < limit - 1e-9);
  const worst = tight.toSorted((a, b) => a.insideRadius - b.insideRadius)[0];
  if (worst === undefined) return [];
  const [found, least] = [plainNumber(worst.insideRadius, 2), plainNumber(limit, 2)];
  return [
    {
      code: 'radius-small',
      severity: 'warning',
      at: worst.line[0],
      value: worst.insideRadius,
      limit,
      unit: 'mm',
      message: `inside radius ${found} mm at ${tight.map((b) => b.id).join(', ')}, ${least} mm is the least for ${material.title} of ${plainNumber(sheet.thickness, 2)} mm`,
      source: material.leastRadius.source,
      fix: `bend to ${least} mm inside, or try one on an offcut across the rolling direction`,
    },
  ];
};
