import { GAUGE_SYSTEMS, MM_PER_INCH } from '@tinwright/core';

const STEEL = GAUGE_SYSTEMS.find((s) => s.name === 'steel') as (typeof GAUGE_SYSTEMS)[number];
const CLOSE = 1.02; // a metric thickness this near under a gauge counts as it

/**
 * A thickness some gauges thinner, mm: of the thickest steel gauge that is no thicker than it. Past the thinnest gauge
 * the ratio of the last two goes on.
 * @param thickness mm  @param gauges how many steps thinner
 */
export function gaugesLess(thickness: number, gauges: number): number {
  const sizes = Object.values(STEEL.inches).map((i) => i * MM_PER_INCH);
  const own = sizes.findIndex((s) => s <= thickness * CLOSE);
  const found = own < 0 ? undefined : sizes[own + gauges];
  if (found !== undefined) return Math.min(found, thickness);
  const [before, last] = sizes.slice(-2) as [number, number];
  return Math.min(last, thickness) * (last / before) ** gauges;
}
