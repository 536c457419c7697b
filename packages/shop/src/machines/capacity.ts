import { cite, MATERIALS, type Material, type Source } from '@tinwright/core';

/** Thickest sheet of a material that a machine takes over its full length. mm */
export interface Capacity {
  readonly material: string;
  readonly thickness: number;
}

/** The thickest sheet of a material, and where the figure comes from. */
export interface Limit {
  readonly thickness: number;
  readonly source: readonly Source[];
}

/** Greatest tensile strength of a material, N/mm²: what a capacity has to be held against. */
const strength = ({ tensile }: Material): number => tensile[1];

/**
 * Thickest sheet of `material` by the machine's list, mm: its own row, else the row of the nearest strength carried
 * over by equal bending moment, T·√(Rm of the row / Rm). A softer metal never gets more than the thickest row: the
 * clamps do not open wider.
 * Source of the moment: plastic moment σ·T²/4 per width; derived.
 */
export function thicknessLimit(list: readonly Capacity[], material: Material): Limit {
  const own = list.find((c) => c.material === material.name);
  if (own !== undefined) return { thickness: own.thickness, source: [cite('shop-file')] };
  const rows = list.map((c) => ({ ...c, rm: strengthOf(c.material) }));
  const away = (rm: number) => Math.abs(Math.log(rm / strength(material)));
  const near = rows.reduce((a, b) => (away(b.rm) < away(a.rm) ? b : a));
  const most = Math.max(...rows.map((r) => r.thickness));
  const carried = near.thickness * Math.sqrt(near.rm / strength(material));
  return {
    thickness: Math.min(most, carried),
    source: [cite('shop-file', { rule: `T · √(Rm(${near.material}) / Rm)`, basis: 'derived' })],
  };
}

function strengthOf(name: string): number {
  const material = MATERIALS.find((m) => m.name === name);
  return material === undefined ? Number.NaN : strength(material);
}
