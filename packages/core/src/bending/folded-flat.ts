import { radians } from '../units/angle.js';
import { allowanceAtK, type BendInput, type BendTerms, termsFromAllowance } from './rule.js';
import { workingLine } from './working.js';

/**
 * Folding flat for rules whose own formula ends before it: K = 0.5 with no inside radius (a closed hem then
 * takes 0.43 T), K = 0.45 with one (an open hem at R = T/2 then takes about nothing, which is why the trade
 * allows a hem its own width).
 * Source: common practice; both figures from memory, the open one agrees with the Steelworker manual's
 * "hem allowance = hem width".
 */
export function foldedFlat(bend: BendInput): BendTerms {
  const k = bend.insideRadius === 0 ? 0.5 : 0.45;
  const allowance = allowanceAtK(bend, k);
  const { thickness: T, insideRadius: R, angle: A } = bend;
  const working = () => [
    workingLine(
      `folded flat: BA = π/180 × #° × (# + ${k} × #)`,
      [A, R, T],
      (a, r, t) => radians(a) * (r + k * t),
    ),
  ];
  return termsFromAllowance(bend, allowance, working, 'hem figures: common practice, no source');
}
