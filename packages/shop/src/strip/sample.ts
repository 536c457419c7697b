import {
  type BendInput,
  kFactor,
  type Material,
  outsideSetback,
  type PartPlan,
  planJob,
  readJob,
} from '@tinwright/core';
import { STRIP_FAMILY } from './strip-family.js';

/** A strip to bend and measure: scribed, its bend in the middle. mm */
export interface StripSample {
  readonly plan: PartPlan;
  readonly flat: number;
  readonly width: number;
  /** Between the witness lines, which stand as far from the middle of the bend on either side. */
  readonly between: number;
}

const SIDE = 50; // from the bend to a witness line, and more where the bend is large
const EDGE = 10; // from there to the end
const WIDTH = 50; // 8 T of the thickest sheet that is read, and a vise's jaw
const tens = (mm: number) => Math.ceil(mm / 10 - 1e-9) * 10;

/**
 * A strip for a metal, thickness and inside radius, to be bent through 90° by any tools. Its sizes are round and do not
 * hang on what is to be found; where exactly the bend falls does not matter, as both legs are measured.
 */
export function stripSample(
  material: Pick<Material, 'name' | 'k'>,
  { thickness, insideRadius }: Pick<BendInput, 'thickness' | 'insideRadius'>,
  count: number,
): StripSample {
  const bend = { thickness, insideRadius, angle: 90 };
  const between = 2 * tens(Math.max(SIDE, outsideSetback(bend) + 20));
  const flat = between + 2 * EDGE;
  const leg = (flat + kFactor(material.k).terms(bend).deduction) / 2;
  const job = readJob(
    {
      units: 'mm',
      stock: { material: material.name, thickness },
      bending: { rule: 'k-factor', insideRadius },
      parts: [{ name: 'strip', family: STRIP_FAMILY.name, quantity: count, leg, width: WIDTH }],
    },
    [STRIP_FAMILY],
  );
  return { plan: planJob(job).parts[0] as PartPlan, flat, width: WIDTH, between };
}
