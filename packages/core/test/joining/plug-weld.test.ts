import type { PlugWeldAsk } from '@tinwright/core';
import { expect, test } from 'vitest';
import { said, saidNeeds } from './said.js';
import { kindNamed, stackOf } from './stack.js';

const kind = kindNamed<PlugWeldAsk>('plug-weld');
const ask = { count: null, pitch: null, diameter: 8 };
const place = { layers: 2, reach: () => 0 };

test('a hole in the first sheet only', () => {
  expect(kind.needs(stackOf([1, 1]), ask, 2).holes).toEqual([8, null]);
});

test('the rim of the hole stays off the edge, the holes off each other, and every distance says it has no source', () => {
  const needs = saidNeeds(kind.needs(stackOf([1, 1]), ask, 2));
  expect(needs.edge).toBeGreaterThan(8 / 2);
  expect(needs.pitch).toBeGreaterThan(2 * 8);
  expect(needs.usualPitch).toBeGreaterThanOrEqual(needs.pitch);
  for (const source of [needs.edgeSource, needs.pitchSource, needs.bendSource])
    expect(source).toBe('common practice, no source');
});

test('galvanised sheet: zinc fume is told; mild steel: nothing', () => {
  expect(kind.remarks(stackOf([1, 1]), ask, place)).toEqual([]);
  const found = kind.remarks(stackOf([1, 1], 'galvanised-steel'), ask, place);
  expect(found).toMatchObject([{ code: 'weld-zinc', severity: 'warning' }]);
  expect(said(found)[0]?.source).toContain('29 CFR 1910.252');
});
