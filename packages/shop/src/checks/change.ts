import type { Unit } from '@tinwright/core';
import {
  declaredAt,
  form,
  type Leaf,
  type SizeAdvice,
  sizeAdvice,
  sizesIn,
  stepOf,
  unfold,
  type WordAdvice,
  wordAdvice,
} from '@tinwright/core/internal';
import type { ShopSubject } from './check.js';

const RUNGS = 8; // steps towards the size that passes
const MOST = 2; // changes told
const THICKNESSES = 5; // a size may grow or shrink by this much, or by half of itself; more is another part

/**
 * Sizes of the job with which a part passes, the least change first. What is not a length is left alone.
 * @param slack how much room a part leaves, negative while it fails
 * @param unit of the job: sizes found are steps of it
 */
export function changesFor(
  subject: ShopSubject,
  slack: (s: ShopSubject) => number,
  unit: Unit,
): readonly SizeAdvice[] {
  const lengths = sizesIn(subject.params).filter((l) => {
    return l.given !== 0 && declaredAt(subject.family.values, l.path)?.unit === 'mm';
  });
  const room = (params: unknown) => {
    if (params === subject.params) return slack(subject);
    const other = altered(subject, params);
    return other === null ? null : slack(other);
  };
  const budget = ({ given }: Leaf<number>) => {
    const far = Math.max(given / 2, THICKNESSES * subject.sheet.thickness);
    return { step: stepOf(unit), rungs: RUNGS, least: given - far, most: given + far };
  };
  return sizeAdvice(subject.params, room, budget, lengths).slice(0, MOST);
}

/** The part with other parameters; null where it cannot be made so. */
function altered(subject: ShopSubject, params: unknown): ShopSubject | null {
  const { family, sheet } = subject;
  try {
    const part = family.part(params, sheet);
    return { ...subject, params, part, flat: unfold(part), formed: form(part) };
  } catch {
    return null; // corners leave nothing of a panel at this size
  }
}

/** Words of the job with which a part passes, `relief: hole`: those of a list that a parameter takes. */
export function wordsFor(
  subject: ShopSubject,
  words: readonly string[],
  slack: (s: ShopSubject) => number,
): readonly WordAdvice[] {
  const room = (params: unknown) => {
    const other = altered(subject, params);
    return other === null ? null : slack(other) + 1e-9;
  };
  const taken = ({ path }: Leaf<string>) =>
    words.filter((w) => declaredAt(subject.family.values, path)?.options.includes(w));
  return wordAdvice(subject.params, room, taken);
}
