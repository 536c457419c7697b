import { planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';
import { told } from '../../../../tests/kit/told.js';

/** Two channels, one in the other, joined at their first legs and at these sites of their last. */
const open = (from: string, to: string) =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      parts: [
        { name: 'out', family: 'bent-strip', width: 40, legs: [60, 64, 60], angles: [90, 90] },
        { name: 'in', family: 'bent-strip', width: 40, legs: [50, 62, 50], angles: [90, 90] },
      ],
      joints: [
        { name: 'first', from: 'out.leg-1', to: 'in.leg-1-back', by: { 'blind-rivet': { diameter: 3.2 } } },
        { name: 'last', from, to, by: { 'blind-rivet': { diameter: 3.2 } } },
      ],
    } as unknown),
  ).findings.filter((f) => f.code === 'loop-open');

test('faces that look the same way: the other face of one is told, and closes', () => {
  const [found] = open('out.leg-3', 'in.leg-3');
  expect(told(found)?.message).toContain('the parts stand at 180° to each other');
  expect(told(found)?.fix).toMatch(/^join at the other face of out\.leg-3 or of in\.leg-3, or bend/);
  expect(open('out.leg-3', 'in.leg-3-back')).toEqual([]);
});
