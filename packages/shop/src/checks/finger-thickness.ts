import { cite, type Material, type Source } from '@tinwright/core';
import { thicknessLimit } from '../machines/capacity.js';
import { gaugesLess } from '../machines/gauges.js';
import type { Brake } from '../machines/shop.js';

/** A number with where it comes from. */
export interface Sourced {
  readonly value: number;
  readonly source: readonly Source[];
}

/**
 * Thickest sheet for box fingers, mm: two gauges less than the brake's list, and on stainless without a row of its own
 * four less than mild steel first.
 */
export function fingerThickness(brake: Brake, material: Material): Sourced {
  const own = brake.capacity.some((c) => c.material === material.name);
  const { thickness, source } = thicknessLimit(brake.capacity, material);
  const steel = brake.capacity.find((c) => c.material === 'mild-steel');
  const stainless = !own && steel !== undefined && material.name.startsWith('stainless');
  const listed = stainless ? Math.min(thickness, gaugesLess(steel.thickness, 4)) : thickness;
  return {
    value: gaugesLess(listed, 2),
    source: [...source, cite('brake-manual', { rule: stainless ? '−6 ga' : '−2 ga', profile: 'strict' })],
  };
}
