import {
  type BendInput,
  type BendRule,
  type BendTerms,
  JobError,
  MM_PER_INCH,
  type Unit,
} from '@tinwright/core';

/** Lines of working, and the unit their lengths are in. */
export interface Working {
  readonly unit: Unit;
  readonly lines: readonly string[];
}

/**
 * The working of a bend in a unit. Rules hold at any scale, so the rule is asked again with the numbers of the unit;
 * terms that are not the rule's own, such as those of a wired edge, keep their working in millimetres.
 */
export function workingIn(unit: Unit, rule: BendRule, bend: BendInput, terms: BendTerms): Working {
  const kept: Working = { unit: 'mm', lines: terms.working };
  if (unit === 'mm' || linesOf(rule, bend)?.join() !== terms.working.join()) return kept;
  const { thickness, insideRadius, angle } = bend;
  const inches = { thickness: thickness / MM_PER_INCH, insideRadius: insideRadius / MM_PER_INCH, angle };
  const lines = linesOf(rule, inches);
  return lines === null ? kept : { unit, lines };
}

/** Null where the rule must not be used. */
function linesOf(rule: BendRule, bend: BendInput): readonly string[] | null {
  try {
    return rule.terms(bend).working;
  } catch (error) {
    if (error instanceof JobError) return null;
    throw error;
  }
}
