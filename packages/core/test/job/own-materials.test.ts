import { JobError, type PartPlan, planJob, readJob } from '@tinwright/core';
import { describe, expect, test } from 'vitest';

const STRIP = { name: 'strip', family: 'bent-strip', width: 100, legs: [50, 50], angles: [90] };
const BRONZE = {
  name: 'garden-bronze',
  like: 'brass',
  density: 8800,
  tensile: [350, 450],
  k: 0.4,
  leastRadius: [
    { thickness: 1, radius: 2 },
    { thickness: 2, radius: 5 },
  ],
};

function planned(materials: readonly object[], thickness = 1) {
  const stock = { material: 'garden-bronze', thickness };
  return planJob(readJob({ units: 'mm', stock, materials, parts: [STRIP] } as unknown));
}

function refusal(...materials: readonly object[]): string {
  try {
    planned(materials);
    return '';
  } catch (error) {
    if (error instanceof JobError) return error.message;
    throw error;
  }
}

describe('a material of one’s own', () => {
  test('weighs what its density says and is laid out by its own k', () => {
    const [part] = planned([BRONZE]).parts as [PartPlan];
    expect(part.mass).toBeCloseTo((part.flat.area * 8800) / 1e9, 12);
    expect(part.flat.bends[0]?.terms.allowance).toBeCloseTo((Math.PI / 2) * 1.4, 9);
  });

  test('has its least radius by thickness: the next thicker row, past the last one in its ratio', () => {
    const limits = [0.8, 1, 1.5, 4].map(
      (t) => planned([BRONZE], t).findings.find((f) => f.code === 'radius-small')?.limit,
    );
    expect(limits).toEqual([2, 2, 5, 10]);
  });

  test('what it leaves out is named where it is used', () => {
    const { findings, parts } = planned([{ name: 'garden-bronze', like: 'mild-steel' }], 1.5);
    expect(JSON.stringify(findings.find((f) => f.code === 'radius-small')?.source)).toContain(
      'as mild-steel, since garden-bronze leaves it out',
    );
    expect(parts[0]?.material.kSource).toContain('as mild-steel, since garden-bronze leaves it out');
  });

  test.each<[string, readonly object[], RegExp]>([
    [
      'like nothing that is known',
      [{ ...BRONZE, like: 'bras' }],
      /materials\[0\]\.like: "bras" given\. Did you mean "brass"/,
    ],
    [
      'with a key unknown',
      [{ ...BRONZE, denstiy: 1 }],
      /materials\[0\]\.denstiy: unknown key "denstiy"\. Did you mean "density"/,
    ],
    [
      'with the name of another',
      [{ ...BRONZE, name: 'brass' }, BRONZE],
      /materials\[0\]\.name: there is a material "brass" already/,
    ],
    ['told twice', [BRONZE, BRONZE], /materials\[1\]\.name: there is a material "garden-bronze" already/],
    [
      'without weight',
      [{ ...BRONZE, density: 0 }],
      /materials\[0\]\.density: 0 kg\/m³ given, more than 0 to 25000 kg\/m³ allowed/,
    ],
  ])('%s is refused by its place', (_, materials, said) => {
    expect(refusal(...materials)).toMatch(said);
  });

  test('one that is not told is unknown, as ever', () => {
    expect(refusal()).toMatch(/stock\.material: "garden-bronze" given/);
  });
});
