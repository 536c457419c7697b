import { radians } from '../units/angle.js';
import { allowanceAtK, type BendRule, termsFromAllowance } from './rule.js';
import { workingLine, workingNumber } from './working.js';

/**
 * Neutral axis at K thicknesses from the inside face.
 * @param k 0 < k ≤ 1
 * @param source where this k comes from
 */
export function kFactor(k: number, source = 'k given in the job'): BendRule {
  return {
    name: 'k-factor',
    title: `k-factor, K = ${workingNumber(k)}`,
    source,
    compensates: true,
    terms: (bend) => {
      const { thickness: T, insideRadius: R, angle: A } = bend;
      const allowance = allowanceAtK(bend, k);
      const working = () => [
        workingLine('BA = π/180 × #° × (# + # × #)', [A, R, k, T], (a, r, f, t) => radians(a) * (r + f * t)),
      ];
      return termsFromAllowance(bend, allowance, working, source);
    },
  };
}
