import type { JobPlan, PartPlan } from '@tinwright/core';
import { quoted, suggestion } from '@tinwright/core/internal';

/** The parts of a job, or the one asked for; a sentence about it when there is none. */
export function chosenParts({ parts }: JobPlan, name: string | undefined): readonly PartPlan[] | string {
  const chosen = parts.filter((p) => name === undefined || p.name === name);
  if (chosen.length > 0) return chosen;
  return `part ${quoted(name ?? '')} given. ${suggestion(
    name ?? '',
    parts.map((p) => p.name),
  )}`;
}
