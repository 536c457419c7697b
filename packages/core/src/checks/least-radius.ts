import { remark } from '../errors/core-findings.js';
import { cite } from '../errors/source.js';
import type { FlatBend } from '../fold/flat/flat.js';
import { leastRadiusOf } from '../stock/least-radius.js';
import type { Check } from './check.js';

/** Inside radius under the least the alloy's table gives for this thickness. Hems are folded flat on purpose. */
export const leastRadius: Check = ({ sheet, material, flat }) => {
  const least = ({ angle }: FlatBend) => leastRadiusOf(material.leastRadius, sheet.thickness, angle);
  const tight = flat.bends.filter((b) => b.hem === null && b.insideRadius < least(b) - 1e-9);
  const worst = tight.toSorted((a, b) => a.insideRadius - least(a) - (b.insideRadius - least(b)))[0];
  if (worst === undefined) return [];
  const limit = least(worst);
  return [
    remark('radius-small', 'warning', {
      where: { at: worst.line[0], names: tight.map((b) => b.id) },
      value: worst.insideRadius,
      limit,
      unit: 'mm',
      values: { material: material.name, thickness: sheet.thickness },
      source: [cite(material.leastRadius.source)],
    }),
  ];
};
