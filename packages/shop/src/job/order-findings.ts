import { cite, type Finding, type FindingsOf, remarkOf } from '@tinwright/core';
import type { CheckFindings } from '../checks/check-findings.js';
import { assumedOf } from '../machines/assumed.js';
import type { Mend, Reason, Sequence } from '../sequence/answer/plan.js';

/** A die that a bend order uses: its opening in thicknesses, and the usual one in mm. */
export interface DieFinding {
  readonly die: string;
  readonly times: number;
  readonly usual: number;
}

/** What the words of every finding of a shop need besides value, limit and place, by its code. Lengths mm. */
export interface ShopFindings extends CheckFindings {
  readonly 'die-narrow': DieFinding;
  readonly 'die-wide': DieFinding;
  readonly 'bend-order': {
    readonly shop: string | null;
    /** True when every order was looked at. */
    readonly proved: boolean;
    readonly reason: Reason | null;
    readonly mends: readonly Mend[];
  };
}

/** A finding of a shop. */
export type ShopFinding = FindingsOf<ShopFindings>;

/** Values of the shop a reason leans on that a shop file may leave out. */
const LEANS_ON: Partial<Readonly<Record<Reason['code'], readonly string[]>>> = {
  angle: ['brake.leaf.stop', 'brake.setBack'],
  beam: ['brake.finger', 'brake.clearHeight', 'brake.beam'],
  bed: ['brake.bed', 'press.bed'],
  fingers: ['brake.finger', 'brake.gaps'],
  'flange-short': ['brake.lowestFlange', 'brake.setBack'],
  'hold-short': ['brake.setBack'],
  jaws: ['vise'],
  leaf: ['brake.leaf.width'],
  opening: ['brake.opening'],
  'put-in': ['brake.finger', 'brake.opening'],
  'take-off': ['brake.finger', 'brake.opening', 'brake.beam'],
  ram: ['press.ram'],
};

/** A part that cannot be bent in a shop as a finding: the first reason, and what would change it. @param assumed values of the shop */
export function orderFindings(
  { part, shop, status, proved, reasons, mends }: Sequence,
  assumed: readonly string[],
): readonly Finding[] {
  const [reason = null] = reasons;
  if (status !== 'infeasible') return [];
  return [
    {
      part,
      ...remarkOf('bend-order', 'error', {
        ...(reason === null || reason.by === null ? {} : { value: reason.by, limit: 0, unit: 'mm' }),
        values: {
          shop: shop === '' ? null : shop,
          proved,
          reason,
          mends,
        } satisfies ShopFindings['bend-order'],
        source: [
          cite('planner'),
          ...assumedOf(assumed, reason === null ? [] : (LEANS_ON[reason.code] ?? [])),
        ],
      }),
    },
  ];
}
