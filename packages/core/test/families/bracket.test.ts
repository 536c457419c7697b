import { planJob, readJob } from '@tinwright/core';
import { describe, expect, test } from 'vitest';

const plan = (part: object) => {
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 2 },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: 2 },
    parts: [{ name: 'part', ...part }],
  };
  const [planned] = planJob(readJob(data as unknown)).parts;
  if (planned === undefined) throw new Error('no part');
  return planned;
};

const SIZES = { width: 60, base: 40, leg: 50 };

// a strip's flat length is held to the handbook's worked examples elsewhere
test.each([
  ['angle', [40, 50], [90]],
  ['z', [40, 30, 50], [90, -90]],
  ['u', [40, 30, 50], [90, 90]],
])('%s: the blank is that of a strip with the same legs', (profile, legs, angles) => {
  const bracket = plan({ family: 'bracket', profile, ...SIZES, web: 30 });
  const strip = plan({ family: 'bent-strip', width: 60, legs, angles });
  expect(bracket.flat.blank.max).toEqual(strip.flat.blank.max);
  expect(bracket.flat.bends.map((b) => b.angle)).toEqual(strip.flat.bends.map((b) => b.angle));
});

describe('holes', () => {
  const holes = { diameter: 6, count: 3, inset: 12, edge: 10 };
  const { flat, formed } = plan({ family: 'bracket', ...SIZES, holes });

  // base and leg 40 and 50, two setbacks of 4 less the allowance π/2·(2 + 0.42·2): 86.461 mm long
  test('lie as far from either end of the flat, spread between the edges', () => {
    const long = 90 - (8 - (Math.PI / 2) * 2.84);
    expect(flat.blank.max[0]).toBeCloseTo(long, 9);
    const boxes = flat.holes.map((h) => [
      Math.min(...h.map((v) => v.at[0])),
      Math.max(...h.map((v) => v.at[0])),
    ]);
    const middles = boxes.map(([a = 0, b = 0]) => (a + b) / 2).toSorted((a, b) => a - b);
    [12, 12, 12, long - 12, long - 12, long - 12].forEach((x, i) => {
      expect(middles[i]).toBeCloseTo(x, 9);
    });
  });

  test('go through both legs of the formed part', () => {
    expect(formed.panels.map((p) => [p.id, p.holes.length])).toEqual([
      ['base', 3],
      ['leg', 3],
    ]);
  });
});
