import { fail } from '../errors/problem.js';
import { GAUGE_SYSTEMS, gaugeMeanings, gaugeThickness } from '../stock/gauges.js';
import type { Material } from '../stock/materials.js';
import type { StockData } from './schema.js';

/**
 * Thickness of the stock, mm: given, or from a gauge in the material's system.
 * @throws JobError when there is none, both, a gauge without a system, or one the system does not have
 */
export function thicknessOf({ thickness, gauge }: StockData, material: Material): number {
  if (thickness !== undefined && gauge !== undefined)
    return fail('thickness-twice', ['gauge'], 'thickness and gauge given', 'Give one of the two');
  if (thickness !== undefined) return thickness;
  if (gauge === undefined)
    return fail(
      'thickness-missing',
      [],
      'no thickness',
      'Give thickness, or gauge with a material that has gauges',
    );
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
