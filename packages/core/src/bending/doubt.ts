import { allowanceAtK, type BendInput, type BendRule } from './rule.js';

/** Neutral axes that handbooks give for bends of sheet, in thicknesses from the inside. From memory, no source. */
const KNOWN = [0.33, 0.5] as const;

/**
 * How far the flat length of a bend may come out other than its rule says, mm: what the rule itself knows of its error,
 * else the furthest that the neutral axes of handbooks lie from it.
 * @param allowance the rule's own for this bend
 */
export function doubtOf(rule: BendRule, bend: BendInput, allowance: number): number {
  const own = rule.doubt?.(bend) ?? null;
  if (own !== null) return own;
  return Math.max(...KNOWN.map((k) => Math.abs(allowanceAtK(bend, k) - allowance)));
}
