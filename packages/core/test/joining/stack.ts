import { MATERIALS, type Material } from '@tinwright/core';
import type { StackSheet } from '@tinwright/core/family';

/** A material by its name in a job file. @throws Error when there is none */
export function materialOf(name: string): Material {
  const found = MATERIALS.find((m) => m.name === name);
  if (found === undefined) throw new Error(`no material ${name}`);
  return found;
}

/** Sheets lying on each other, mm: of mild steel where nothing is said. */
export function stackOf(thicknesses: readonly number[], material = 'mild-steel'): readonly StackSheet[] {
  return thicknesses.map((thickness, i) => ({
    part: `piece-${i + 1}`,
    thickness,
    material: materialOf(material),
  }));
}
