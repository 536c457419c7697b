import type { PartPlan } from '@tinwright/core';
import { measuredSize } from '@tinwright/core/internal';
import { measuredLabel, type PlanWords, type SizeSide } from '@tinwright/words/internal';

/** A finished size to inspect. mm */
export interface FinishedSize {
  /** What it is, in the words of its family. */
  readonly what: string;
  /** As the part will be, whatever it was laid out for. */
  readonly value: number;
  readonly side: SizeSide;
}

/** The finished sizes of a part: measured on the formed part between the faces each names, not taken from the job. */
export function finishedSizes(
  { part, formed, flat, family }: PartPlan,
  plans: PlanWords,
): readonly FinishedSize[] {
  return part.asked.map(({ name, axis, over }) => {
    const side =
      typeof over === 'object' && 'between' in over
        ? 'inside'
        : typeof over === 'object' && 'moulds' in over
          ? 'mould'
          : flat.bends.length === 0
            ? 'flat'
            : 'outside';
    return {
      what: measuredLabel(family, name, plans.language),
      value: measuredSize(formed, { axis, over }),
      side,
    };
  });
}
