import { frozen } from '../units/frozen.js';
import { type BendRule, termsFromAllowance } from './rule.js';
import { workingLine } from './working.js';

/** Material groups of the handbook rule. */
export type HandbookGroup = 'soft' | 'medium' | 'hard';

/** c in L = c·T + 1.57·R for 90°, with the metals each group is printed for. */
export const HANDBOOK_GROUPS: Readonly<
  Record<HandbookGroup, { readonly c: number; readonly metals: string }>
> = frozen({
  soft: { c: 0.55, metals: 'soft brass, soft copper' },
  medium: { c: 0.64, metals: 'half-hard copper and brass, soft steel, aluminium' },
  hard: { c: 0.71, metals: 'bronze, hard copper, cold-rolled and spring steel' },
});

const SOURCE = "Machinery's Handbook, 31st ed., p. 1421";
const PER_RADIUS = 1.57; // as printed; not π/2

/** Flat length of a bend L = (c·T + 1.57·R) × A/90, A bent through from flat. */
export function handbook(group: HandbookGroup): BendRule {
  const { c, metals } = HANDBOOK_GROUPS[group];
  return {
    name: 'handbook',
    title: `handbook, ${group} group (${metals})`,
    source: SOURCE,
    compensates: true,
    terms: (bend) => {
      const { thickness: T, insideRadius: R, angle: A } = bend;
      const allowance = ((c * T + PER_RADIUS * R) * A) / 90;
      const working = () => [
        workingLine(
          `BA = (${c} × # + ${PER_RADIUS} × #) × #/90`,
          [T, R, A],
          (t, r, a) => ((c * t + PER_RADIUS * r) * a) / 90,
        ),
      ];
      return termsFromAllowance(bend, allowance, working, SOURCE);
    },
  };
}
