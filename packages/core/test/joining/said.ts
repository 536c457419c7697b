import { type Finding, type Remark, saidIn } from '../../src/errors/finding.js';
import { inWords, sayIn } from '../../src/errors/problem.js';
import type { FastenerNeeds } from '../../src/joining/fastener.js';

/** Remarks as a job in millimetres says them. */
export function said(remarks: readonly Remark[]): readonly Omit<Finding, 'part'>[] {
  return remarks.map((remark) => {
    const { part: _, ...rest } = saidIn('mm', { ...remark, part: '' });
    return rest;
  });
}

/** What a fastener needs, its sources as a job in millimetres says them. */
export function saidNeeds(needs: FastenerNeeds): Omit<
  FastenerNeeds,
  'edgeSource' | 'pitchSource' | 'bendSource'
> & {
  readonly edgeSource: string;
  readonly pitchSource: string;
  readonly bendSource: string;
} {
  const say = sayIn('mm');
  return {
    ...needs,
    edgeSource: inWords(needs.edgeSource, say),
    pitchSource: inWords(needs.pitchSource, say),
    bendSource: inWords(needs.bendSource, say),
  };
}
