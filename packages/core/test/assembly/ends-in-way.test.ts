import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { plan } from '../carrier.js';

/** A box with riveted corner tabs and a lid over it that is only set on. */
const box = (clearance: number, depth: number) =>
  plan({
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 0.8 },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: 0.8 },
    parts: [
      { name: 'box', family: 'open-box', length: 200, width: 120, height: 60, corner: 'tabbed' },
      {
        name: 'lid',
        family: 'lid',
        length: { of: 'box.length' },
        width: { of: 'box.width' },
        depth,
        clearance,
      },
    ],
    joints: [
      {
        name: 'corners',
        from: 'box.corner-tabs',
        to: 'box.end-walls',
        by: { 'blind-rivet': { diameter: 3.2 } },
      },
      { name: 'cover', from: 'box.rim', to: 'lid.skirt', by: 'none' },
    ],
  } as never).findings;

describe('a loose lid over a box with rivets in its corners', () => {
  test('a skirt that comes down over the heads has them in its way, by what they stand out less the clearance', () => {
    const found = box(0.3, 50).find((f) => f.code === 'fastener-in-way');
    // heads of 3.2 mm rivets stand out by a quarter of that
    expect(found).toMatchObject({ part: 'lid', severity: 'warning' });
    expect(found?.value).toBeCloseTo(0.8 - 0.3, 6);
    expect(spoken(found)?.message).toContain('lid');
  });

  test('one with room for them, or one that ends above them, has not', () => {
    for (const found of [box(1, 50), box(0.3, 5)])
      expect(found.map((f) => f.code)).not.toContain('fastener-in-way');
  });

  test('it lies in no stack of sheets: nothing holds it', () => {
    expect(box(0.3, 50).map((f) => f.code)).not.toContain('rivet-layers');
  });
});
