import {
  type BendInput,
  kFactor,
  type Material,
  MM_PER_INCH,
  outsideSetback,
  type PartPlan,
  planJob,
  readJob,
  type Unit,
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

/** Round sizes of a strip. mm */
interface Round {
  /** From the bend to a witness line; more, in steps of `step`, where the bend is large. */
  readonly side: number;
  readonly step: number;
  /** From there to the end. */
  readonly edge: number;
  /** 8 T of the thickest sheet that is read, and a vise's jaw. */
  readonly width: number;
}

const ROUND: Readonly<Record<Unit, Round>> = {
  mm: { side: 50, step: 10, edge: 10, width: 50 },
  in: { side: 2 * MM_PER_INCH, step: MM_PER_INCH / 2, edge: MM_PER_INCH / 2, width: 2 * MM_PER_INCH },
};
const FLAT = 20; // mm of a leg that stay flat up to the line, at least

/** Tenths of an inch in millimetres, as they are written. */
const even = (mm: number) => Math.round(mm * 100) / 100;

/**
 * A strip for a metal, thickness and inside radius, to be bent through 90° by any tools. Its sizes are round in the
 * unit and do not hang on what is to be found; where exactly the bend falls does not matter, as both legs are measured.
 */
export function stripSample(
  material: Pick<Material, 'name' | 'k'>,
  { thickness, insideRadius }: Pick<BendInput, 'thickness' | 'insideRadius'>,
  count: number,
  units: Unit,
): StripSample {
  const { side, step, edge, width } = ROUND[units];
  const bend = { thickness, insideRadius, angle: 90 };
  const steps = Math.ceil(Math.max(side, outsideSetback(bend) + FLAT) / step - 1e-9);
  const between = even(2 * step * steps);
  const flat = even(between + 2 * edge);
  const leg = (flat + kFactor(material.k).terms(bend).deduction) / 2;
  const job = readJob(
    {
      units: 'mm',
      stock: { material: material.name, thickness },
      bending: { rule: 'k-factor', insideRadius },
      parts: [{ name: 'strip', family: STRIP_FAMILY.name, quantity: count, leg, width }],
    },
    [STRIP_FAMILY],
  );
  return { plan: planJob(job).parts[0] as PartPlan, flat, width, between };
}
