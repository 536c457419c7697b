// The only door of @tinwright/export. Names, no `export *`.
export type { Drawing, DrawingLayer, Shape } from './drawing.js';
export { toDxfR12 } from './dxf/r12.js';
export { toDxf } from './dxf/r2000.js';
export { type DxfForm, jobFiles, type OutFile, partDxf } from './job-files.js';
export {
  type CutLayerName,
  LAYERS,
  type LayerName,
  type LayerStyle,
  type PictureLayerName,
} from './layers.js';
export { toMakerModel } from './maker/to-maker-model.js';
export { manifestOf, manifestText, type PartFiles } from './manifest.js';
export { flatDrawing } from './sheets/flat.js';
export { familyPicture, partPicture } from './sheets/picture.js';
export { toSvg } from './svg/write.js';
