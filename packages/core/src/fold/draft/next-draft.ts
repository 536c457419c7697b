import type { Draft } from './tree.js';

/** The draft after a step: what the step changed, and the rest as it was. */
export const nextDraft = (draft: Draft, changed: Partial<Draft>): Draft => ({
  sheet: draft.sheet,
  panels: changed.panels ?? draft.panels,
  corners: changed.corners ?? draft.corners,
  asked: changed.asked ?? draft.asked,
  sites: changed.sites ?? draft.sites,
  refused: changed.refused ?? draft.refused,
});
