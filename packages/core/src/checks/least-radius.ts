import type { Check } from './check.js';

/** Inside radius under the least the alloy's table gives for this thickness. Hems are folded flat on purpose. */
export const leastRadius: Check = ({ sheet, material, flat }) => {
  const limit = material.leastRadius.at(sheet.thickness);
  const tight = flat.bends.filter((b) => b.hem === null && b.insideRadius < limit - 1e-9);
  const worst = tight.toSorted((a, b) => a.insideRadius - b.insideRadius)[0];
  if (worst === undefined) return [];
  return [
    {
      code: 'radius-small',
      severity: 'warning',
      at: worst.line[0],
      value: worst.insideRadius,
      limit,
      unit: 'mm',
      message: (say) =>
        `inside radius ${say.size(worst.insideRadius)} at ${tight.map((b) => b.id).join(', ')}, ${say.least(limit)} is the least for ${material.title} of ${say.size(sheet.thickness)}`,
      source: material.leastRadius.source,
      fix: (say) =>
        `bend to ${say.least(limit)} inside, or try one on an offcut across the rolling direction`,
    },
  ];
};
