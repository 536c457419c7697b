import type { Finding, Remark, Unit } from '@tinwright/core';
import { type ToldFinding, tellFinding } from '@tinwright/words';

/** A finding, or a remark of no part yet, in English; of none, none. */
export function told<F extends Finding | Remark | undefined>(
  finding: F,
  unit: Unit = 'mm',
): F extends undefined ? ToldFinding | undefined : ToldFinding {
  const words = finding === undefined ? undefined : tellFinding({ part: null, ...finding }, unit, 'en');
  return words as F extends undefined ? ToldFinding | undefined : ToldFinding;
}
