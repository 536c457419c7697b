import type { PartPlan } from '@tinwright/core';
import type { NestPart } from '@tinwright/cutting';
import { TABLE_STYLE, type TableStyle } from '../table/style.js';
import { tableFlat } from '../table/table-flat.js';
import type { NestFlat } from './sheet-drawing.js';

/** What of a planned part a nest needs. */
export type ShapedPart = Pick<PartPlan, 'name' | 'quantity' | 'grain' | 'material' | 'sheet' | 'flat'>;

/** Outlines to nest, and under the same names what is marked on them. */
export interface NestShapes {
  readonly parts: readonly NestPart[];
  readonly flats: readonly NestFlat[];
}

/** Planned parts as shapes to nest and to draw on their sheets, each under a name of its own. */
export function nestShapes(planned: readonly ShapedPart[], style: TableStyle = TABLE_STYLE): NestShapes {
  const flats = planned.map((p): NestFlat => ({ part: p.name, ...tableFlat(p.flat, style) }));
  const parts = planned.map(({ quantity, grain, material, sheet }, i): NestPart => {
    const { part, flat } = flats[i] as NestFlat;
    const { outline, holes } = flat;
    return { part, material: material.name, thickness: sheet.thickness, quantity, grain, outline, holes };
  });
  return { parts, flats };
}
