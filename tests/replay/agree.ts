// Whether the checks of a shop and its bend orders say the same of a part.
import type { JobPlan } from '@tinwright/core';
import { sayIn } from '@tinwright/core/internal';
import { planShop, type Shop } from '@tinwright/shop';
import { reasonWords } from '@tinwright/words';

const SIZES = ['blank-large', 'cut-large']; // of the shear and the table, which bend nothing

/** What does not agree; empty when all does. */
export function disagreement(plan: JobPlan, shop: Shop): readonly string[] {
  const { sequences, findings } = planShop(plan, shop);
  return sequences.flatMap(({ part, status, reasons, mends }) => {
    const errors = findings.filter(
      (f) => f.part === part && f.severity === 'error' && !SIZES.includes(f.code),
    );
    const codes = errors.map((f) => f.code);
    if (status !== 'infeasible') return codes.map((c) => `${c} is an error of a part that is planned`);
    return [
      ...(codes.includes('bend-order') ? [] : ['no error of a part that cannot be bent']),
      ...(reasons.length === 0 ? ['no reason'] : []),
      ...reasons.flatMap((r) =>
        reasonWords(r, sayIn('mm')).trim() === '' ? ['a reason without words'] : [],
      ),
      ...mends.flatMap((m) => (m.given === m.found ? [`${m.parameter} changed into itself`] : [])),
    ];
  });
}
