import type { JobPlan } from '@tinwright/core';
import { frozen } from '@tinwright/core/internal';

/** A section of a packet; cover and cautions are in every one. */
export type Section = 'cautions' | 'cuts' | 'plans' | 'operations' | 'joints' | 'inspection' | 'templates';

/** Sections of a packet, in their order. */
export const SECTIONS: readonly Section[] = frozen([
  'cautions',
  'cuts',
  'plans',
  'operations',
  'joints',
  'inspection',
  'templates',
]);

interface Asked {
  readonly sections?: readonly Section[];
  readonly worksheet?: boolean;
}

/** Cautions stand in every packet, whatever else was asked for. */
export function wantedSections({ assembly }: JobPlan, { sections, worksheet }: Asked): readonly Section[] {
  if (worksheet) return ['cautions'];
  if (sections !== undefined) return SECTIONS.filter((s) => s === 'cautions' || sections.includes(s));
  return SECTIONS.filter((s) => s !== 'joints' || assembly !== null);
}

/** In how many pieces `packetSheets` sets a packet: one for each section, and for each part's plan and template. */
export function piecesOf(plan: JobPlan, asked: Asked): number {
  return wantedSections(plan, asked).reduce(
    (sum, name) => sum + (name === 'plans' || name === 'templates' ? plan.parts.length : 1),
    0,
  );
}
