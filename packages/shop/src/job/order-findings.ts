import { inWords, type Say, type Unsaid } from '@tinwright/core';
import type { Sequence } from '../sequence/plan.js';

const MOST_MENDS = 3; // told; all of them are in the sequence

/** A part that cannot be bent in a shop as a finding: the first reason, and what would change it. */
export function orderFindings({ part, shop, status, proved, reasons, mends }: Sequence): readonly Unsaid[] {
  const [reason] = reasons;
  if (status !== 'infeasible') return [];
  const which = proved ? 'no order of bends works' : 'no order of bends was found';
  const fix = (say: Say) =>
    mends.length === 0
      ? 'Make it from more pieces, bend it elsewhere, or change its sizes'
      : mends
          .slice(0, MOST_MENDS)
          .map((m) => inWords(m.message, say))
          .join('; or ');
  return [
    {
      code: 'bend-order',
      severity: 'error',
      part,
      ...(reason?.by == null ? {} : { value: reason.by, limit: 0, unit: 'mm' as const }),
      message: (say) =>
        `${which} in ${shop === '' ? 'the shop' : shop}${reason ? `: ${inWords(reason.message, say)}` : ''}`,
      source: 'every order tried on the machines of the shop',
      fix,
    },
  ];
}
