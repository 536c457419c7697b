import type { Drawing } from '../drawing.js';
import { toDxfR12 } from './r12.js';
import { toDxf } from './r2000.js';

/** DXF forms that are written. */
export type DxfForm = 'r2000' | 'r12';

/** A drawing as DXF text in one of the forms. */
export function dxfOf(drawing: Drawing, form: DxfForm): string {
  return form === 'r12' ? toDxfR12(drawing) : toDxf(drawing);
}
