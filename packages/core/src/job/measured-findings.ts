import { remark } from '../errors/core-findings.js';
import type { Finding } from '../errors/finding.js';
import { cite } from '../errors/source.js';
import { linearTolerance } from '../stock/iso-2768.js';
import type { JobPart } from './job.js';
import { sizesOf } from './sizes.js';

const SHARE = 0.03;

/** A measured size far from the computed one, by more than ISO 2768-1 class c or 3 %, asks whether the rule was read right. */
export function measuredFindings({ name, family, params, sheet, measured }: JobPart): readonly Finding[] {
  return measured.flatMap(({ size, value }): readonly Finding[] => {
    const computed = sizesOf(family, params, sheet).find((s) => s.name === size)?.value ?? value;
    const limit = Math.min(linearTolerance(computed, 'c') ?? Infinity, SHARE * computed);
    const away = Math.abs(value - computed);
    if (away <= limit) return [];
    return [
      {
        part: name,
        ...remark('measured-far', 'warning', {
          value: away,
          limit,
          unit: 'mm',
          values: { size, measured: value, computed },
          source: [cite('ISO 2768-1 class c'), cite(null, { rule: '3 %', basis: 'common-practice' })],
        }),
      },
    ];
  });
}
