import { inWords, type Say, type Unsaid } from '@tinwright/core';
import { assumedWords } from '../machines/assumed.js';
import type { Reason, Sequence } from '../sequence/answer/plan.js';

const MOST_MENDS = 3; // told; all of them are in the sequence

/** Values of the shop a reason leans on that a shop file may leave out. */
const LEANS_ON: Partial<Readonly<Record<Reason['code'], readonly string[]>>> = {
  angle: ['brake.leaf.stop', 'brake.setBack'],
  beam: ['brake.finger', 'brake.clearHeight', 'brake.beam'],
  bed: ['brake.bed'],
  fingers: ['brake.finger', 'brake.gaps'],
  'flange-short': ['brake.lowestFlange', 'brake.setBack'],
  'hold-short': ['brake.setBack'],
  hook: ['brake.finger', 'brake.opening'],
  jaws: ['vise'],
  leaf: ['brake.leaf.width'],
  opening: ['brake.opening'],
  ram: ['press.ram'],
};

/** A part that cannot be bent in a shop as a finding: the first reason, and what would change it. @param assumed values of the shop */
export function orderFindings(
  { part, shop, status, proved, reasons, mends }: Sequence,
  assumed: readonly string[],
): readonly Unsaid[] {
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
      source: `every order tried on the machines of the shop${assumedWords(assumed, (reason && LEANS_ON[reason.code]) ?? [])}`,
      fix,
    },
  ];
}
