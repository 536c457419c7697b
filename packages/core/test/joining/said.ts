import { sourceWords, type ToldFinding } from '@tinwright/words';
import { told } from '../../../../tests/kit/told.js';
import type { Remark } from '../../src/errors/finding.js';
import type { FastenerNeeds } from '../../src/joining/fastener.js';

/** Remarks as a job in millimetres says them. */
export const said = (remarks: readonly Remark[]): readonly ToldFinding[] => remarks.map((r) => told(r));

const SOURCES = ['edgeSource', 'pitchSource', 'bendSource'] as const;

/** What a fastener needs, its sources as a job in millimetres says them. */
export function saidNeeds(
  needs: FastenerNeeds,
): Omit<FastenerNeeds, (typeof SOURCES)[number]> & Readonly<Record<(typeof SOURCES)[number], string>> {
  const [edgeSource, pitchSource, bendSource] = SOURCES.map((s) => sourceWords(needs[s], 'mm', 'en')) as [
    string,
    string,
    string,
  ];
  return { ...needs, edgeSource, pitchSource, bendSource };
}
