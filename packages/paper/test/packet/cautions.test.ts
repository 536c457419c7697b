import { planJob, readJob } from '@tinwright/core';
import { cautionsFor } from '@tinwright/paper/internal';
import { DEFAULT_SHOP } from '@tinwright/shop';
import type { CautionName } from '@tinwright/words/internal';
import { LANGUAGES } from '@tinwright/words/internal';
import { describe, expect, test } from 'vitest';
import { plannedCarrier } from '../../../files/test/carrier.js';

const ASSUMED = { shop: DEFAULT_SHOP, assumed: true };
const of = (by: unknown, material: string, making = ASSUMED): readonly CautionName[] =>
  cautionsFor(plannedCarrier(by, { stock: { material, thickness: 1 } }), making);
const strip = (material: string): readonly CautionName[] =>
  cautionsFor(
    planJob(
      readJob({
        units: 'mm',
        stock: { material, thickness: 1 },
        parts: [{ name: 'strip', family: 'bent-strip', width: 40, legs: [30, 60], angles: [90] }],
      }),
    ),
    ASSUMED,
  );

test('what holds for every job comes with every job', () => {
  for (const name of ['rules', 'edges', 'eyes', 'shear', 'object', 'food', 'pupils'] as const)
    expect(strip('mild-steel')).toContain(name);
});

describe('only what applies', () => {
  test.each([
    ['zinc', 'spot-weld', 'galvanised-steel', true],
    ['zinc', 'spot-weld', 'mild-steel', false],
    ['zinc', { 'blind-rivet': { diameter: 3.2 } }, 'galvanised-steel', false], // nothing is heated
    ['food-zinc', { 'blind-rivet': { diameter: 3.2 } }, 'galvanised-steel', true],
    ['food-zinc', 'spot-weld', 'mild-steel', false],
    ['resistance-weld', 'spot-weld', 'mild-steel', true],
    ['implants', 'spot-weld', 'mild-steel', true],
    ['arc', 'spot-weld', 'mild-steel', false],
    ['arc', 'plug-weld', 'mild-steel', true],
    ['implants', 'plug-weld', 'mild-steel', false],
    ['chromium', 'plug-weld', 'stainless-304', true],
    ['chromium', 'plug-weld', 'mild-steel', false],
    ['mandrels', { 'blind-rivet': { diameter: 3.2 } }, 'mild-steel', true],
    ['mandrels', 'spot-weld', 'mild-steel', false],
    ['fire', 'spot-weld', 'mild-steel', true],
    ['fire', 'screw', 'mild-steel', false],
    ['burr-rotating', 'screw', 'mild-steel', true],
    ['burr-rotating', 'spot-weld', 'mild-steel', false],
  ] as const)('%s for %o of %s: %s', (name, by, material, applies) => {
    expect(of(by, material).includes(name)).toBe(applies);
  });

  test('a cutting table only where a shop with one is given, a press brake only where there is one', () => {
    expect(of('screw', 'mild-steel')).not.toContain('table');
    expect(of('screw', 'mild-steel', { shop: DEFAULT_SHOP, assumed: false })).toContain('table');
    expect(of('screw', 'mild-steel')).not.toContain('press-brake');
    expect(of('screw', 'mild-steel')).toContain('leaf-brake');
  });

  test('a flat part has no brake', () => {
    const flat = planJob(
      readJob({
        units: 'mm',
        stock: { material: 'mild-steel', thickness: 1 },
        parts: [
          { name: 'end', family: 'gusset-end', width: 90, shoulderHeight: 30, height: 80, crownWidth: 40 },
        ],
      }),
    );
    expect(cautionsFor(flat, ASSUMED)).not.toContain('leaf-brake');
  });
});

test.each(Object.entries(LANGUAGES))('every caution names its source (%s)', (_, { packet }) => {
  for (const { where, text, source } of Object.values(packet.cautions.all)) {
    expect(where).not.toBe('');
    expect(text.length).toBeGreaterThan(40);
    expect(source).toMatch(/CFR|ISO|ANSI|OSHA|FDA|UL |BS |from memory|no source|Gedächtnis|ohne Quelle/);
  }
});
