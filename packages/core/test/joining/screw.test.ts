import type { ScrewAsk } from '@tinwright/core';
import { expect, test } from 'vitest';
import { saidNeeds } from './said.js';
import { kindNamed, stackOf } from './stack.js';

const kind = kindNamed<ScrewAsk>('screw');
const ask = (diameter: number) => ({ count: null, pitch: null, diameter });

test('#8, 4.17 mm: 6.3 mm to an edge, 12.5 mm apart', () => {
  // AISI S100 J4, from memory: 1.5 d and 3 d
  const { edge, pitch, edgeSource, pitchSource } = saidNeeds(kind.needs(stackOf([1, 1]), ask(4.17), 2));
  expect(edge).toBeCloseTo(6.3, 1);
  expect(pitch).toBeCloseTo(12.5, 1);
  for (const source of [edgeSource, pitchSource]) expect(source).toContain('from memory');
});

test('holes: the screw passes through all sheets but the last, which it cuts its thread in', () => {
  const { holes } = kind.needs(stackOf([1, 1, 1]), ask(4), 2);
  expect(holes).toHaveLength(3);
  const [first, second, last] = holes as [number, number, number];
  expect(first).toBeGreaterThan(4);
  expect(second).toBe(first);
  expect(last).toBeLessThan(4);
});

test('twice the screw, twice the distances', () => {
  const [small, large] = [kind.needs(stackOf([1, 1]), ask(3), 2), kind.needs(stackOf([1, 1]), ask(6), 2)];
  expect(large.edge / small.edge).toBeCloseTo(2, 12);
  expect(large.pitch / small.pitch).toBeCloseTo(2, 12);
  expect(large.usualPitch).toBeCloseTo(36, 12); // six diameters
});
