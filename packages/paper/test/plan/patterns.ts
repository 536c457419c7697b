import { jobReader, type PartPlan, planJob } from '@tinwright/core';

const read = jobReader(); // keeps the schemas that it builds

/** A part of a job in mm, 1 mm mild steel by K 0.42 and inside radius 1 mm unless told otherwise. */
export function planned(part: object, job: object = {}): PartPlan {
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: 1 },
    ...job,
    parts: [{ name: 'part', ...part }],
  };
  return planJob(read(data)).parts[0] as PartPlan;
}

/** The layout of a carrier's body as it is drawn by hand, without allowance, in inches. */
export const handLayout = (): PartPlan =>
  planned(
    {
      family: 'hemmed-channel',
      length: 14,
      width: 7,
      height: 2,
      hem: { type: 'closed', length: 0.75 },
      endTabs: { length: 0.75 },
    },
    { units: 'in', stock: { material: 'galvanised-steel', gauge: 26 }, bending: { rule: 'nominal' } },
  );

/** A strip 40 wide, two legs up and one down. */
export const strip = (): PartPlan =>
  planned({ family: 'bent-strip', width: 40, legs: [30, 60, 30], angles: [90, -90] });

/** A box of 1 mm, 200 x 120 x 50. */
export const box = (more: object = {}): PartPlan =>
  planned({ family: 'open-box', length: 200, width: 120, height: 50, ...more });
