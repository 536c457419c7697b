import { GAUGE_SYSTEMS, gaugeThickness, JobError, type Problem } from '@tinwright/core';
import { gaugeMeanings } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { gaugeSystem } from '../../src/stock/gauges.js';

// Inches as printed. Steel, galvanised and Brown & Sharpe columns: two independent charts that agree,
// rustychevy.com/guage_chart.htm and greaseralley.com 2010-12-09. US Standard: 15 U.S.C. §206 down to gauge
// 21; 22 to 30 from memory, agreeing with a printed stainless column.
const PRINTED = [
  [10, 0.1345, 0.1382, 0.140625, 0.1019],
  [11, 0.1196, 0.1233, 0.125, 0.0907],
  [12, 0.1046, 0.1084, 0.109375, 0.0808],
  [13, 0.0897, 0.0934, 0.09375, 0.072],
  [14, 0.0747, 0.0785, 0.078125, 0.0641],
  [15, 0.0673, 0.071, 0.0703125, 0.0571],
  [16, 0.0598, 0.0635, 0.0625, 0.0508],
  [17, 0.0538, 0.0575, 0.05625, 0.0453],
  [18, 0.0478, 0.0516, 0.05, 0.0403],
  [19, 0.0418, 0.0456, 0.04375, 0.0359],
  [20, 0.0359, 0.0396, 0.0375, 0.032],
  [21, 0.0329, 0.0366, 0.034375, 0.0285],
  [22, 0.0299, 0.0336, 0.03125, 0.0253],
  [23, 0.0269, 0.0306, 0.028125, 0.0226],
  [24, 0.0239, 0.0276, 0.025, 0.0201],
  [25, 0.0209, 0.0247, 0.021875, 0.0179],
  [26, 0.0179, 0.0217, 0.01875, 0.0159],
  [27, 0.0164, 0.0202, 0.0171875, 0.0142],
  [28, 0.0149, 0.0187, 0.015625, 0.0126],
  [29, 0.0135, 0.0172, 0.0140625, 0.0113],
  [30, 0.012, 0.0157, 0.0125, 0.01],
] as const;

const inches = (name: Parameters<typeof gaugeThickness>[0], n: number) => gaugeThickness(name, n) / 25.4;

test.each(PRINTED)(
  'gauge %d: steel %d, galvanised %d, stainless %d, aluminium %d in, as the charts print',
  (n, steel, galvanised, stainless, aluminium) => {
    expect(gaugeSystem('steel').inches[n]).toBe(steel);
    expect(gaugeSystem('galvanised').inches[n]).toBe(galvanised);
    expect(gaugeSystem('stainless').inches[n]).toBe(stainless);
    expect(gaugeSystem('aluminium').inches[n]).toBe(aluminium);
  },
);

test('every system: gauges 10 to 30 and no others, with a title and a source', () => {
  expect(GAUGE_SYSTEMS.map((s) => s.name)).toEqual(['steel', 'galvanised', 'stainless', 'aluminium']);
  for (const system of GAUGE_SYSTEMS) {
    expect(Object.keys(system.inches).map(Number)).toEqual(PRINTED.map(([n]) => n));
    expect(system.title).not.toBe('');
    expect(system.source).not.toBe('');
  }
});

// 15 U.S.C. §206 gives each gauge as ounces per square foot; from memory but for gauges 10, 16 and 20
// (5.625, 2.5 and 1.5 lb), at 640 oz/ft² to the inch of wrought iron.
const OUNCES = [90, 80, 70, 60, 50, 45, 40, 36, 32, 28, 24, 22, 20, 18, 16, 14, 12, 11, 10, 9, 8];

test.each(OUNCES.map((oz, i) => [10 + i, oz] as const))(
  'US Standard gauge %d of %d oz/ft²: its thickness is the weight by 640',
  (n, oz) => {
    expect(inches('stainless', n)).toBeCloseTo(oz / 640, 12);
  },
);

test.each(OUNCES.map((oz, i) => [10 + i, oz] as const))(
  "Manufacturers' Standard gauge %d of %d oz/ft²: pounds by 41.82, to the printed 0.0001 in",
  (n, oz) => {
    expect(inches('steel', n)).toBeCloseTo(oz / 16 / 41.82, 4);
  },
);

test.each(PRINTED.map(([n]) => n))(
  'Brown & Sharpe gauge %d: 0.005 × 92^((36 - n)/39), to the printed 0.0001 in',
  (n) => {
    expect(inches('aluminium', n)).toBeCloseTo(0.005 * 92 ** ((36 - n) / 39), 4);
  },
);

test('galvanised sheet: 0.0037 to 0.0038 in over the steel gauge, the coating', () => {
  for (const [n] of PRINTED) {
    const coating = inches('galvanised', n) - inches('steel', n);
    expect(coating).toBeGreaterThan(0.0037 - 1e-9);
    expect(coating).toBeLessThan(0.0038 + 1e-9);
  }
});

test('a gauge: its thickness is the printed inches times 25.4', () => {
  expect(gaugeThickness('steel', 20)).toBeCloseTo(0.91186, 9);
  expect(gaugeThickness('galvanised', 20)).toBeCloseTo(1.00584, 9);
  expect(gaugeThickness('stainless', 16)).toBeCloseTo(1.5875, 9);
  expect(gaugeThickness('aluminium', 10)).toBeCloseTo(2.58826, 9);
});

test('aluminium of 19 gauge: as thick as steel of 20 gauge', () => {
  expect(gaugeThickness('aluminium', 19)).toBe(gaugeThickness('steel', 20));
});

test('10 gauge: four thicknesses, all told with their system', () => {
  expect(gaugeMeanings(10)).toBe(
    'steel 3.416 mm, galvanised 3.51 mm, stainless 3.572 mm, aluminium 2.588 mm',
  );
});

test('a gauge no system has: no meanings', () => {
  expect(gaugeMeanings(9)).toBe('');
  expect(gaugeMeanings(16.5)).toBe('');
});

function refusal(work: () => unknown): Problem {
  try {
    work();
  } catch (error) {
    if (error instanceof JobError && error.problems[0] !== undefined) return error.problems[0];
    throw error;
  }
  throw new Error('nothing was refused');
}

// neighbours by hand: .1345 in = 3.416 mm, .1196 = 3.038, .0100 = .254, .0113 = .287, .0157 = .399
test.each([
  ['steel', 9, 'Nearest: 10 (3.416 mm) and 11 (3.038 mm)'],
  ['steel', 0, 'Nearest: 10 (3.416 mm) and 11 (3.038 mm)'],
  ['aluminium', 31, 'Nearest: 30 (0.254 mm) and 29 (0.287 mm)'],
  ['galvanised', 1000, 'Nearest: 30 (0.399 mm) and 29 (0.437 mm)'],
  ['steel', 20.5, 'Nearest: 20 (0.912 mm) and 21 (0.836 mm)'],
] as const)('%s gauge %d: refused, naming its neighbours', (name, n, fix) => {
  const problem = refusal(() => gaugeThickness(name, n, ['stock', 'gauge']));
  expect(problem.code).toBe('gauge-unknown');
  expect(problem.path).toEqual(['stock', 'gauge']);
  expect(problem.message).toContain(`gauge ${n} given, the ${name} system`);
  expect(problem.fix).toBe(fix);
});
