import type { Unsaid } from '../errors/finding.js';
import { linearTolerance } from '../stock/iso-2768.js';
import type { JobPart } from './read.js';
import { sizesOf } from './sizes.js';

const SHARE = 0.03;

/** A measured size far from the computed one, by more than ISO 2768-1 class c or 3 %, asks whether the rule was read right. */
export function measuredFindings({ name, family, params, sheet, measured }: JobPart): readonly Unsaid[] {
  return measured.flatMap(({ size, value }): readonly Unsaid[] => {
    const computed = sizesOf(family, params, sheet).find((s) => s.name === size)?.value ?? value;
    const limit = Math.min(linearTolerance(computed, 'c') ?? Infinity, SHARE * computed);
    const away = Math.abs(value - computed);
    if (away <= limit) return [];
    return [
      {
        code: 'measured-far',
        severity: 'warning',
        part: name,
        value: away,
        limit,
        unit: 'mm',
        message: (say) =>
          `${size} measured at ${say.size(value)}, computed ${say.size(computed)}: ${say.size(away)} apart`,
        source: 'ISO 2768-1 class c, or 3 % (common practice, no source)',
        fix: 'measure again; if it is right, check stock and bends',
      },
    ];
  });
}
