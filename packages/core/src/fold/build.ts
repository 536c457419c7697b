import type { Part } from './part.js';
import { settle } from './settle.js';
import type { Draft, Sheet, Step } from './tree.js';

/**
 * Build a part: apply the steps in order to an empty draft, then resolve its corners.
 * @throws JobError when a step names what is not there, or no material is left on a panel
 */
export function fold(sheet: Sheet, ...steps: readonly Step[]): Part {
  const empty: Draft = { sheet, panels: [], corners: [], asked: [], sites: [] };
  return settle(steps.reduce((draft, step) => step(draft), empty));
}
