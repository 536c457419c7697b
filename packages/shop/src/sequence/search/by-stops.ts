import type { LineStroke } from '../part/operations.js';
import type { BendProblem } from './states.js';

/**
 * Operations with a setting of a stop in common one after the other, those that most can share first; null where none is
 * shared.
 */
export function byStops({
  ways,
}: Pick<BendProblem, 'ways'>): ((a: LineStroke, b: LineStroke) => number) | null {
  const settings = ways.map(
    (list) => new Set(list.flatMap((w) => (w.gauging?.edges ?? []).map((e) => e.bit))),
  );
  const counts = new Map<bigint, number>();
  for (const own of settings) for (const bit of own) counts.set(bit, (counts.get(bit) ?? 0) + 1);
  const sharedBy = (bit: bigint) => counts.get(bit) ?? 0;
  if (Math.max(0, ...counts.values()) < 2) return null;
  const chosen = settings.map((own) =>
    [...own].reduce<bigint>((a, b) => (sharedBy(b) > sharedBy(a) ? b : a), 0n),
  );
  const bitOf = ({ index }: LineStroke) => chosen[index] as bigint;
  return (a, b) => {
    const [s, t] = [bitOf(a), bitOf(b)];
    return sharedBy(t) - sharedBy(s) || Number(s > t) - Number(s < t);
  };
}
