import { LAYERS } from '@tinwright/files';
import { expect, test } from 'vitest';
import { layerStyle } from '../src/layers.js';

test('the layers are those that cut files are promised to have', () => {
  expect(LAYERS.map((l) => l.name)).toEqual([
    'BEND-UP',
    'BEND-DOWN',
    'WELD-MARK',
    'SCRIBE',
    'LEAD',
    'CUT',
    'NOTE',
  ]);
});

test('names are such that also older DXF readers take them', () => {
  for (const { name } of LAYERS) expect(name).toMatch(/^[A-Z0-9_$-]{1,31}$/);
});

// Okabe & Ito, Color Universal Design: the eight colours, hex values from memory
const OKABE_ITO = ['#000000', '#E69F00', '#56B4E9', '#009E73', '#F0E442', '#0072B2', '#D55E00', '#CC79A7'];

test('colours are of the Okabe-Ito palette, each used once', () => {
  const colours = LAYERS.map((l) => l.colour);
  expect(colours.filter((c) => !OKABE_ITO.includes(c))).toEqual([]);
  expect(new Set(colours).size).toBe(LAYERS.length);
});

test('DXF colour numbers lie in 1 to 255, each used once', () => {
  const numbers = LAYERS.map((l) => l.number);
  expect(numbers.filter((n) => !Number.isInteger(n) || n < 1 || n > 255)).toEqual([]);
  expect(new Set(numbers).size).toBe(LAYERS.length);
});

test('outlines are wider than what is not cut', () => {
  const others = LAYERS.filter((l) => l.name !== 'CUT').map((l) => l.width);
  expect(layerStyle('CUT').width).toBeGreaterThan(Math.max(...others));
});
