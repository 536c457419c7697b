import { type AnyFamily, jobReader, type PartPlan, planJob, readJob } from '@tinwright/core';
import { type Brake, DEFAULT_SHOP, type Shop } from '@tinwright/shop';

const reader = jobReader(); // keeps the schemas that it builds

/** The brake that the closed forms are written for: figures of a usual finger brake. */
export const BRAKE: Brake = {
  ...(DEFAULT_SHOP.brake as Brake),
  length: 1000,
  finger: { foot: 60, upright: 35, noseAngle: 45, noseRadius: 0.5 },
  beam: 35,
  clearHeight: 75,
  gaps: { end: 10, inner: 6 },
};

/** A shop with nothing but a brake. */
export const shopWith = (brake: Partial<Brake> = {}): Shop => ({
  ...DEFAULT_SHOP,
  brake: { ...BRAKE, ...brake },
  vise: null,
});

/** One part planned from its family's parameters. */
export function planned(part: object, job: object = {}, families?: readonly AnyFamily[]): PartPlan {
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    bending: { rule: 'k-factor', insideRadius: 1 },
    ...job,
    parts: [{ name: 'part', ...part }],
  };
  const read = families === undefined ? reader(data) : readJob(data as unknown, families);
  return planJob(read).parts[0] as PartPlan;
}
