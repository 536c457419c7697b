import { fail } from '../errors/problem.js';
import { radians } from '../units/angle.js';
import { plainNumber } from '../units/format.js';
import { foldedFlat } from './folded-flat.js';
import { kFactor } from './k-factor.js';
import type { BendInput, BendRule } from './rule.js';
import type { StripBend } from './strip-bend.js';
import { workingNumber as n } from './working.js';

/** `mild-steel T 1 R 1.5`: sizes that are one to a hundredth of a millimetre are the same. */
const metal = (material: string, { thickness, insideRadius }: Bent) =>
  `${material} T ${plainNumber(thickness, 2)} R ${plainNumber(insideRadius, 2)}`;

type Bent = Pick<BendInput, 'thickness' | 'insideRadius'>;

/** The row of a metal, thickness and inside radius, both to a hundredth of a millimetre. */
export function stripOf<S extends StripBend>(
  strips: readonly S[],
  material: string,
  bend: Bent,
): S | undefined {
  return strips.find((s) => metal(s.material, s) === metal(material, bend));
}

/**
 * The neutral axis as strips of this metal, thickness and inside radius gave it. A fold of 180° or more is a hem, which
 * no strip of 90° speaks for: it takes the folded-flat figure.
 */
export function testStrip(material: string, strips: readonly StripBend[]): BendRule {
  return {
    name: 'test-strip',
    title: 'test-strip',
    source: 'shop file',
    compensates: true,
    doubt: (bend) => {
      const row = bend.angle >= 180 ? undefined : stripOf(strips, material, bend);
      return row === undefined ? null : radians(bend.angle) * bend.thickness * row.kError;
    },
    terms: (bend) => {
      if (bend.angle >= 180) return foldedFlat(bend);
      const row = stripOf(strips, material, bend);
      if (row) return kFactor(row.k, `test-strip ${row.name}, K ± ${n(row.kError)}`).terms(bend);
      return fail(
        'strip-missing',
        ['insideRadius'],
        `no test-strip of ${metal(material, bend)} mm`,
        `Known: ${strips.map((s) => metal(s.material, s)).join(', ') || 'none; --shop FILE gives them'}`,
      );
    },
  };
}
