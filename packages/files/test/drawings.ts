// Drawings in text, and a plate with one of them as its opening.
import { JobError, jobReader, type PartPlan, planJob } from '@tinwright/core';
import { drawingOutlines } from '@tinwright/files';

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

/** Area that loops of points and bulges enclose, by the trapezoids below chords and the segments over them. */
export const areaOf = (loops: readonly (readonly (readonly [number, number, number])[])[]) =>
  loops.reduce((sum, loop) => {
    const parts = loop.map(([x, y, bulge], i) => {
      const [u, v] = loop[(i + 1) % loop.length] as readonly [number, number, number];
      const angle = 4 * Math.atan(bulge);
      const radius = bulge === 0 ? 0 : Math.hypot(u - x, v - y) / 2 / Math.sin(angle / 2);
      return (x * v - u * y) / 2 + (radius ** 2 * (angle - Math.sin(angle))) / 2;
    });
    return sum + Math.abs(parts.reduce((a, b) => a + b, 0));
  }, 0);
/** Area of what a drawing shows, mm². */
export const areaIn = async (name: string, text: string) =>
  areaOf((await drawingOutlines(name, text)) as readonly (readonly (readonly [number, number, number])[])[]);
/** A closed polyline of a DXF, 10 high, with more codes before its corners. */
export const square = (more = '', x = 10) =>
  `0\nLWPOLYLINE\n8\n0\n${more}90\n4\n70\n1\n${[
    [0, 0],
    [x, 0],
    [x, 10],
    [0, 10],
  ]
    .map(([a, b]) => `10\n${a}\n20\n${b}\n`)
    .join('')}`;
