import { FASTENER_KINDS, MATERIALS, type Material } from '@tinwright/core';
import type { FastenerAsk, FastenerKind, StackSheet } from '@tinwright/core/family';

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

/** A kind of fastener as whoever embeds the library finds it. */
export const kindNamed = <A extends FastenerAsk>(name: (typeof FASTENER_KINDS)[number]['name']) =>
  FASTENER_KINDS.find((k) => k.name === name) as unknown as FastenerKind<A>;
