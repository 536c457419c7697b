import { allowanceAtK, outsideSetback } from '../bending/rule.js';
import { remark } from '../errors/core-findings.js';
import { cite } from '../errors/source.js';
import type { Check } from './check.js';

/** A rule that takes nothing off for bends: says what to expect at most over the whole blank. */
export const noCompensation: Check = ({ sheet, material, flat }) => {
  if (sheet.rule.compensates || flat.bends.length === 0) return [];
  const growth = Math.max(
    ...flat.bends.map(({ insideRadius, angle }) => {
      const bend = { thickness: sheet.thickness, insideRadius, angle };
      return 2 * outsideSetback(bend) - allowanceAtK(bend, material.k);
    }),
  );
  return [
    remark('no-compensation', 'note', {
      value: growth,
      unit: 'mm',
      values: {},
      source: [cite(material.kSource, { rule: `K (${material.name})` })],
    }),
  ];
};
