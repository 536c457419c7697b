import { fail } from '../errors/problem.js';
import { foldedFlat } from './folded-flat.js';
import { type BendRule, outsideSetback, termsFromAllowance } from './rule.js';
import { workingNumber as n, workingLine } from './working.js';

const NOTHING = 1e-9; // thicknesses; so that a rule gives out at one place in every unit

/**
 * Linear deduction v = a·R + b·T for 90°, × A/90 otherwise.
 * A fold of 180° or more is a hem and takes the folded-flat figure: v × 2 would eat more than the metal there.
 * @param perRadius a, 0 to 2
 * @param perThickness b, 0 to 3
 */
export function linear(perRadius: number, perThickness: number): BendRule {
  const source = 'linear deduction given in the job';
  return {
    name: 'linear',
    title: `linear, v = ${n(perRadius)}·R + ${n(perThickness)}·T at 90°`,
    source,
    compensates: true,
    terms: (bend) => {
      const { thickness: T, insideRadius: R, angle: A } = bend;
      if (A >= 180) return foldedFlat(bend);
      const v = ((perRadius * R + perThickness * T) * A) / 90;
      const allowance = 2 * outsideSetback(bend) - v;
      if (allowance <= NOTHING * T)
        return fail(
          'linear-range',
          [],
          (say) =>
            `v = ${say.size(v)} at ${n(A)}°, R ${say.size(R)}, T ${say.size(T)}: more than both setbacks (${say.size(2 * outsideSetback(bend))}) leave`,
          'Use smaller constants, or the k-factor rule for this angle',
        );
      const working = () => [
        workingLine(
          'v = (# × # + # × #) × #/90',
          [perRadius, R, perThickness, T, A],
          (p, r, q, t, a) => ((p * r + q * t) * a) / 90,
        ),
        workingLine('BA = 2 × SB − v = 2 × # − #', [outsideSetback(bend), v], (s, w) => 2 * s - w),
      ];
      return termsFromAllowance(bend, allowance, working, source);
    },
  };
}
