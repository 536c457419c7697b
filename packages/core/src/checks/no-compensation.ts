import { type BendTerms, outsideSetback } from '../bending/rule.js';
import { remark } from '../errors/core-findings.js';
import { cite } from '../errors/source.js';
import type { Check } from './check.js';

/** A rule that takes nothing off for bends: says how much a bend adds at most, by what the metal does. */
export const noCompensation: Check = ({ sheet, flat }) => {
  const { rule, thickness } = sheet;
  if (rule.compensates || flat.bends.length === 0) return [];
  const grown = flat.bends.map(({ insideRadius, angle, terms }) => {
    const bend = { thickness, insideRadius, angle };
    const formed = (rule.forms ?? rule.terms)(bend);
    return { formed, by: 2 * outsideSetback(bend) - formed.allowance - terms.deduction };
  });
  const most = grown.reduce((a, b) => (b.by > a.by ? b : a));
  return [
    remark('no-compensation', 'note', {
      value: most.by,
      unit: 'mm',
      values: {},
      source: [cite((most.formed as BendTerms).source, { rule: rule.title })],
    }),
  ];
};
