import type { Finding } from '@tinwright/core';
import type { Blank, Rack, ShearPlan } from '@tinwright/cutting';
import type { JobBlanks } from './shear-blanks.js';

/** What no sheet was left for. */
export async function leftOut(
  plans: readonly ShearPlan[],
  { blanks, parts }: JobBlanks,
  rack: Rack,
): Promise<readonly Finding[]> {
  const { leftOutFinding } = await import('@tinwright/cutting/internal');
  return plans.flatMap((plan) =>
    plan.missing.map(({ part, count }) => {
      const blank = blanks.find((b) => b.part === part) as Blank;
      const mass = parts.find((p) => p.part === part)?.mass ?? 0;
      const left = { ...blank, count, mass, area: blank.x * blank.y, why: 'stock-short' as const };
      return leftOutFinding(left, rack.sheets);
    }),
  );
}
