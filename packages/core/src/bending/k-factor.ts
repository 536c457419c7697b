import { allowanceAtK, type BendRule, workingNumber as n, termsFromAllowance } from './rule.js';

/**
 * Neutral axis at K thicknesses from the inside face.
 * @param k 0 < k ≤ 1
 * @param source where this k comes from
 */
export function kFactor(k: number, source = 'k given in the job'): BendRule {
  return {
    name: 'k-factor',
    title: `k-factor, K = ${n(k)}`,
    source,
    compensates: true,
    terms: (bend) => {
      const { thickness: T, insideRadius: R, angle: A } = bend;
      const allowance = allowanceAtK(bend, k);
      return termsFromAllowance(
        bend,
        allowance,
        [`BA = π/180 × ${n(A)}° × (${n(R)} + ${n(k)} × ${n(T)}) = ${n(allowance)}`],
        source,
      );
    },
  };
}
