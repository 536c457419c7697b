import { type PartPlan, verifyFlat, verifyForm } from '@tinwright/core';
import { inWords, sayIn } from '@tinwright/core/internal';

/** Something wrong with a planned part. */
export interface PlanFlaw {
  readonly code: string;
  readonly message: string;
}

const CLOSE = 1e-3; // mm³

/**
 * Hold a planned part against what must be true of it: the pattern is closed, simple and its bends lie on material; the
 * formed part has the sizes that were asked for and no panel passes through another; and the metal of both is the same
 * but for what bends stretch.
 */
export function verifyPlan({ flat, formed, part, sheet }: PartPlan): readonly PlanFlaw[] {
  const asked = sheet.rule.compensates ? part.asked : [];
  const flaws = [...verifyFlat(flat), ...verifyForm(formed, asked)].map(({ code, message }) => ({
    code,
    message: inWords(message, sayIn('mm')),
  }));
  const stretched = formed.bends.reduce((sum, b, i) => {
    const middle = b.sweep * ((b.insideRadius + b.outsideRadius) / 2);
    const length = (b.high[0] - b.low[0] + b.high[1] - b.low[1]) / 2;
    return sum + (middle - (flat.bends[i]?.zone ?? 0)) * length * flat.thickness;
  }, 0);
  const off = formed.volume - (flat.area * flat.thickness + stretched);
  const message = `the formed part has ${off} mm³ more than the pattern and its bends`;
  return Math.abs(off) < CLOSE ? flaws : [...flaws, { code: 'plan-metal', message }];
}
