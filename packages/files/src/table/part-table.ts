import type { PartPlan } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { Drawing } from '../drawing.js';
import { dxfOf } from '../dxf/write.js';
import { toSvg } from '../svg/write.js';
import { flatDrawing } from './flat.js';
import { inInches } from './in-inches.js';
import { simpleCurves } from './simple-curves.js';
import { TABLE_STYLE, type TableStyle } from './style.js';
import { tableFlat } from './table-flat.js';

/** What of a part its cut file says. */
export type TablePart = Pick<PartPlan, 'flat' | 'name'> & Partial<Pick<PartPlan, 'quantity' | 'material'>>;

/** The drawing of a part as a table wants it, in mm and with loops. */
export function partDrawing(
  { flat, name, quantity, material }: TablePart,
  style: TableStyle = TABLE_STYLE,
): Drawing {
  const full = style.note === 'full' && quantity !== undefined && material !== undefined;
  const more = full ? [`${quantity} x`, `${material.name} T ${plainNumber(flat.thickness, 2)}`] : [];
  // R12 has no units, so there a line of the note says them
  const unit = style.form === 'r12' ? [style.unit] : [];
  const text = style.text === 'off' ? [] : [name, ...more, ...unit];
  const cut = tableFlat(flat, style);
  const drawing = flatDrawing(cut.flat, name, text, style.marks, cut.punched);
  const layers = drawing.layers.filter((l) => !style.without.some((w) => w === l.name));
  return { ...drawing, layers, ...(style.paints === undefined ? {} : { paints: style.paints }) };
}

/** The DXF of a drawing as a table wants it. */
export function tableDxf(drawing: Drawing, style: TableStyle): string {
  const curves = style.curves === 'arcs' ? simpleCurves(drawing) : drawing;
  const sized = style.unit === 'in' ? inInches(curves) : curves;
  return dxfOf({ ...sized, looks: style.looks }, style.form);
}

/**
 * The cut file of one part as DXF, R2000 unless the style says R12; mm unless it says inches, origin at the outline's
 * lower left corner.
 * @throws RangeError for a layer or colour of the style that the format does not have
 */
export function partDxf(part: TablePart, style: TableStyle = TABLE_STYLE): string {
  return tableDxf(partDrawing(part, style), style);
}

/** The same to look at; an SVG says its unit, so that is no line of its note. */
export function partSvg(part: TablePart, style: TableStyle = TABLE_STYLE): string {
  return toSvg(partDrawing(part, { ...style, form: 'r2000' }));
}
