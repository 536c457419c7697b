import { fail } from '../errors/problem.js';
import { radians } from '../units/angle.js';
import { frozen } from '../units/frozen.js';
import { foldedFlat } from './folded-flat.js';
import { type BendInput, type BendRule, type BendTerms, outsideSetback, termsFromAllowance } from './rule.js';
import { workingNumber as n, workingLine } from './working.js';

const SOURCE = 'DIN 6935';
const ROUNDING = 1e-9; // so that the limit is one in every unit
const LEAST_RATIO = 0.05; // k reaches zero here, within its own rounding, and is negative below

/** Factor k of DIN 6935: 0.65 + 0.5·log10(r/s), 1 above r/s = 5. K = k/2. */
export function dinFactor(ratio: number): number {
  return ratio > 5 ? 1 : 0.65 + 0.5 * Math.log10(ratio);
}

/**
 * Flat-length correction by DIN 6935. With the opening angle β = 180° − A:
 * β ≤ 90°: v = 2(r+s) − π·A/180·(r + s·k/2), legs to the outer tangent;
 * β ≤ 165°: v = 2(r+s)·tan(A/2) − π·A/180·(r + s·k/2); β > 165°: v = 0.
 * Past 180° (a teardrop) the first branch is carried on; the standard ends at β = 0.
 * A closed hem (r = 0, 180°) lies outside the standard: it takes the closed-hem figure and says so.
 */
export const din6935: BendRule = frozen({
  name: 'din-6935',
  title: 'DIN 6935',
  source: SOURCE,
  compensates: true,
  terms: (bend) => {
    const { thickness: s, insideRadius: r, angle } = bend;
    if (r === 0 && angle === 180) return foldedFlat(bend);
    if (r / s < LEAST_RATIO - ROUNDING)
      return fail(
        'din-6935-range',
        ['insideRadius'],
        `r/s = ${n(r / s)} given; DIN 6935 can be used from r/s = ${LEAST_RATIO}`,
        (say) => `Use an inside radius of ${say.least(LEAST_RATIO * s)} or more, or another rule`,
      );
    return angle < 15 ? nearlyFlat(bend) : corrected(bend);
  },
});

function nearlyFlat(bend: BendInput): BendTerms {
  return termsFromAllowance(
    bend,
    2 * outsideSetback(bend),
    () => [`β = ${n(180 - bend.angle)}° > 165°: v = 0`],
    SOURCE,
  );
}

function corrected(bend: BendInput): BendTerms {
  const { thickness: s, insideRadius: r, angle } = bend;
  const k = dinFactor(r / s);
  const allowance = radians(angle) * (r + (s * k) / 2);
  return termsFromAllowance(
    bend,
    allowance,
    () => [
      r / s > 5 ? 'k = 1 (r/s > 5)' : workingLine('k = 0.65 + 0.5 × log10(#)', [r / s], (q) => dinFactor(q)),
      workingLine(
        'BA = π/180 × #° × (# + # × #/2)',
        [angle, r, s, k],
        (a, b, t, f) => radians(a) * (b + (t * f) / 2),
      ),
    ],
    SOURCE,
  );
}
