import { fail } from '../errors/problem.js';
import { GAUGE_SYSTEMS, type GaugeSystemName, gaugeMeanings, gaugeThickness } from '../stock/gauges.js';
import type { Material } from '../stock/materials.js';
import { wholeNumber } from '../units/range.js';
import { type Gives, type ParamKit, strictGroup } from './kit.js';

/** A gauge as a file writes it: a number in the metal's own system, or in one that is named. */
export type GaugeData = number | { readonly system: GaugeSystemName; readonly number: number };

export function gaugeSchema(kit: ParamKit): Gives<GaugeData> {
  const system = kit.oneOf(GAUGE_SYSTEMS.map((s) => s.name));
  const number = wholeNumber();
  const named: Gives<unknown> = strictGroup({ system, number });
  return kit.either(number, named, 'a gauge number such as 20, or { system, number },') as Gives<GaugeData>;
}

/**
 * Thickness of a gauge of a metal, mm.
 * @throws JobError at `gauge` for a number without a system, or one the system does not have
 */
export function gaugedThickness(gauge: GaugeData, material: Pick<Material, 'name' | 'gauges'>): number {
  if (typeof gauge !== 'number') return gaugeThickness(gauge.system, gauge.number, ['gauge']);
  if (material.gauges !== null) return gaugeThickness(material.gauges, gauge, ['gauge']);
  const systems = GAUGE_SYSTEMS.map((s) => s.name).join(', ');
  const means = gaugeMeanings(gauge);
  return fail(
    'gauge-system',
    ['gauge'],
    `gauge ${gauge} given for ${material.name}, which has no gauge system of its own`,
    `Write gauge: { system: …, number: ${gauge} } with ${systems}${means === '' ? '' : `; ${gauge} is ${means}`}`,
  );
}
