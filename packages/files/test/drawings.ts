// Drawings in text, and a plate with one of them as its opening.
import { JobError, jobReader, type PartPlan, planJob } from '@tinwright/core';

const read = jobReader(); // keeps the schemas that it builds

export const svg = (inner: string, size = 'width="40mm" height="20mm" viewBox="0 0 400 200"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${inner}</svg>`;

/** A DXF of these entities, in millimetres unless another unit is given. */
export const dxf = (entities: string, units = 4) =>
  `0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n${units}\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n${entities}0\nENDSEC\n0\nEOF\n`;
export const line = (x1: number, y1: number, x2: number, y2: number) =>
  `0\nLINE\n8\n0\n10\n${x1}\n20\n${y1}\n11\n${x2}\n21\n${y2}\n`;

export function cut(loops: unknown, more: object = {}): PartPlan {
  const cutouts = [{ type: 'outline', panel: 'leg-1', loops, ...more }];
  const part = { name: 'plate', family: 'bent-strip', width: 200, legs: [300, 60], angles: [90], cutouts };
  const job = { units: 'mm', stock: { material: 'mild-steel', thickness: 1 }, parts: [part] };
  return planJob(read(job)).parts[0] as PartPlan;
}

export async function refusal(work: () => unknown): Promise<string> {
  try {
    await work();
    return '';
  } catch (error) {
    if (error instanceof JobError) return error.message;
    throw error;
  }
}

export const missing = (loops: unknown, more?: object) => 300 * 200 - cut(loops, more).flat.area;
