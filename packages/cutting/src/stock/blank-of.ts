import type { Grain } from '@tinwright/core';
import type { Blank } from './blank.js';

/** What a blank needs to know of a planned part. Lengths mm */
export interface Planned {
  readonly name: string;
  readonly quantity: number;
  readonly grain: Grain;
  readonly material: { readonly name: string };
  readonly sheet: { readonly thickness: number };
  readonly flat: { readonly blank: { readonly max: readonly [number, number] } };
}

/** The rectangle to shear for a part: the extent of its flat pattern. */
export function blankOf({ name, quantity, grain, material, sheet, flat }: Planned): Blank {
  const [x, y] = flat.blank.max;
  return { part: name, material: material.name, thickness: sheet.thickness, x, y, quantity, grain };
}
