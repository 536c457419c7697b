import { fail } from '../errors/problem.js';
import { plainNumber } from '../units/format.js';
import { frozen } from '../units/frozen.js';
import { MM_PER_INCH } from '../units/length.js';

/** The four systems in which a gauge number means a thickness. */
export type GaugeSystemName = 'steel' | 'galvanised' | 'stainless' | 'aluminium';

/** A system of gauge numbers. `inches[n]` is the thickness of gauge n, in inches as the source prints it. */
export interface GaugeSystem {
  readonly name: GaugeSystemName;
  readonly title: string;
  readonly source: string;
  readonly inches: Readonly<Record<number, number>>;
}

const FIRST = 10;
const rows = (values: readonly number[]): Readonly<Record<number, number>> =>
  Object.freeze(Object.fromEntries(values.map((v, i) => [FIRST + i, v])));

const CHARTS =
  'two independent charts that agree: rustychevy.com/guage_chart.htm, greaseralley.com 2010-12-09';

/** Gauge tables, gauges 10 to 30. */
export const GAUGE_SYSTEMS: readonly GaugeSystem[] = frozen([
  {
    name: 'steel',
    title: "Manufacturers' Standard Gauge, uncoated steel",
    source: CHARTS,
    inches: rows([
      0.1345, 0.1196, 0.1046, 0.0897, 0.0747, 0.0673, 0.0598, 0.0538, 0.0478, 0.0418, 0.0359, 0.0329, 0.0299,
      0.0269, 0.0239, 0.0209, 0.0179, 0.0164, 0.0149, 0.0135, 0.012,
    ]),
  },
  {
    name: 'galvanised',
    title: 'galvanised sheet gauge, coating included',
    source: CHARTS,
    inches: rows([
      0.1382, 0.1233, 0.1084, 0.0934, 0.0785, 0.071, 0.0635, 0.0575, 0.0516, 0.0456, 0.0396, 0.0366, 0.0336,
      0.0306, 0.0276, 0.0247, 0.0217, 0.0202, 0.0187, 0.0172, 0.0157,
    ]),
  },
  {
    name: 'stainless',
    title: 'US Standard Gauge, used for stainless steel',
    source: '15 U.S.C. §206 to gauge 21; 22 to 30 from memory, agreeing with a printed stainless column',
    inches: rows([
      0.140625, 0.125, 0.109375, 0.09375, 0.078125, 0.0703125, 0.0625, 0.05625, 0.05, 0.04375, 0.0375,
      0.034375, 0.03125, 0.028125, 0.025, 0.021875, 0.01875, 0.0171875, 0.015625, 0.0140625, 0.0125,
    ]),
  },
  {
    name: 'aluminium',
    title: 'Brown & Sharpe gauge, aluminium, brass and copper',
    source: CHARTS,
    inches: rows([
      0.1019, 0.0907, 0.0808, 0.072, 0.0641, 0.0571, 0.0508, 0.0453, 0.0403, 0.0359, 0.032, 0.0285, 0.0253,
      0.0226, 0.0201, 0.0179, 0.0159, 0.0142, 0.0126, 0.0113, 0.01,
    ]),
  },
]);

export function gaugeSystem(name: GaugeSystemName): GaugeSystem {
  return GAUGE_SYSTEMS.find((s) => s.name === name) as GaugeSystem;
}

const mmText = (inches: number) => `${plainNumber(inches * MM_PER_INCH, 3)} mm`;

/** What gauge `n` would be in every system that has it, as text. */
export function gaugeMeanings(n: number): string {
  return GAUGE_SYSTEMS.filter((s) => s.inches[n] !== undefined)
    .map((s) => `${s.name} ${mmText(s.inches[n] as number)}`)
    .join(', ');
}

/**
 * Thickness of a gauge, mm.
 * @throws JobError `gauge-unknown`, naming the neighbours the system has
 */
export function gaugeThickness(
  name: GaugeSystemName,
  n: number,
  path: readonly (string | number)[] = [],
): number {
  const system = gaugeSystem(name);
  const inches = system.inches[n];
  if (inches !== undefined) return inches * MM_PER_INCH;
  const near = Object.keys(system.inches)
    .map(Number)
    .toSorted((a, b) => Math.abs(a - n) - Math.abs(b - n) || a - b)
    .slice(0, 2)
    .map((g) => `${g} (${mmText(system.inches[g] as number)})`);
  return fail(
    'gauge-unknown',
    path,
    `gauge ${n} given, the ${name} system has whole numbers from 10 to 30`,
    `Nearest: ${near.join(' and ')}`,
  );
}
