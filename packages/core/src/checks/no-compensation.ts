import { allowanceAtK, outsideSetback } from '../bending/rule.js';
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
    {
      code: 'no-compensation',
      severity: 'note',
      value: growth,
      unit: 'mm',
      message: (say) =>
        `laid out at nominal sizes: finished sizes come out larger, by up to ${say.size(growth)} a bend`,
      source: `bend deduction at the K of ${material.name}: ${material.kSource}`,
      fix: 'use another bending rule where sizes matter',
    },
  ];
};
