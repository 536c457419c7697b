import type { Drawing } from '../drawing.js';
import type { Writer } from '../writer.js';
import { toDxfR12 } from './r12.js';
import { toDxf } from './r2000.js';

/** DXF forms that are written. */
export type DxfForm = 'r2000' | 'r12';

const DXF = { extension: 'dxf', mediaType: 'image/vnd.dxf' };

/** DXF with units, for anything later than the year 2000. */
export const DXF_R2000: Writer<Drawing> = Object.freeze({
  ...DXF,
  format: 'r2000',
  words: 'DXF R2000',
  write: toDxf,
});

/** DXF of the least, for older cutting tables. */
export const DXF_R12: Writer<Drawing> = Object.freeze({
  ...DXF,
  format: 'r12',
  words: 'DXF R12',
  unitless: true,
  write: toDxfR12,
});

/** A drawing as DXF text in one of the forms. */
export function dxfOf(drawing: Drawing, form: DxfForm): string {
  return form === 'r12' ? toDxfR12(drawing) : toDxf(drawing);
}
