import { JobError, type Refusal } from '../errors/problem.js';
import { shortLegs } from './draft/least.js';
import { lookupOf } from './draft/lookup.js';
import { sound, verbs } from './draft/sound.js';
import type { Draft, Sheet, Step } from './draft/tree.js';
import { openingProblems } from './settle/opening-problems.js';
import type { Part } from './settle/part.js';
import { settle } from './settle/settle.js';
import { thinWebs } from './settle/web.js';

/**
 * Build a part: apply the steps in order to an empty draft, then resolve its corners.
 * @throws JobError when a step names what is not there, a leg is too short for its bends, a hem too long for its
 *   wall, too little metal left beside a hole or a slot, no material on a panel, or an opening does not lie on its panel;
 *   `code-unsound` for what is no verb, a number that is none or out of reach, and panels that hang on nothing
 */
export function fold(sheet: Sheet, ...steps: readonly Step[]): Part {
  const draft = drafted(sheet, steps);
  const lookup = lookupOf(draft);
  const refused = firstOfEach([...draft.refused, ...shortLegs(draft, lookup), ...thinWebs(draft, lookup)]);
  // a parameter is to blame for what follows from it, too; else the code that gave the numbers may be
  if (refused.every((r) => r.path.length === 0)) sound(draft);
  if (refused.length > 0) throw new JobError(refused);
  const part = settle(draft, lookup);
  const misplaced = openingProblems(part);
  if (misplaced.length > 0) throw new JobError(firstOfEach(misplaced));
  return part;
}

/** Steps applied in order to an empty draft. */
export function drafted(sheet: Sheet, steps: readonly Step[]): Draft {
  const empty: Draft = { sheet, panels: [], corners: [], asked: [], sites: [], refused: [] };
  return verbs(steps).reduce<Draft>((d, step) => step(d), empty);
}

/** A parameter that shapes several panels is told once, and what has none only where nothing else is wrong. */
function firstOfEach(refused: readonly Refusal[]): readonly Refusal[] {
  const key = ({ path, code }: Refusal) => (path.length === 0 ? code : path.join('.'));
  const named = refused.filter((r) => r.path.length > 0);
  const told = named.length > 0 ? named : refused;
  return told.filter((r, i) => told.findIndex((q) => key(q) === key(r)) === i);
}
