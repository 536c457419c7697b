import type { Remark } from '@tinwright/core';
import type { FastenerNeeds } from '@tinwright/core/family';
import type { ToldFinding } from '@tinwright/words';
import { sourceWords } from '@tinwright/words/internal';
import { told } from '../../../../tests/kit/told.js';

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
