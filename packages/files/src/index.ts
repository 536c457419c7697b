// What a program that embeds @tinwright/files needs. Names, no `export *`.

export {
  type CutTotals,
  type CutWork,
  cutTotals,
  type KnownCut,
  type ListedPart,
} from './cut-list/cut-list.js';
export type { FastenerRow } from './cut-list/fastener-rows.js';
export { type CutAsk, knownCut } from './cut-list/known-cut.js';
export type { Drawing, DrawingLayer, Shape } from './drawing.js';
export { toDxfR12 } from './dxf/r12.js';
export { toDxf } from './dxf/r2000.js';
export type { DxfForm } from './dxf/write.js';
export { toGlb } from './glb/write.js';
export { cutFiles, jobFiles, streamJobFiles, type Wanted } from './job-files.js';
export { jobJsonSchema, type SchemaNode } from './job-schema.js';
export type { LayerLooks, LayerRow, Linetype } from './layer-looks.js';
export {
  type CutLayerName,
  LAYERS,
  type LayerName,
  type LayerPaint,
  type LayerPaints,
  type LayerStyle,
  type OwnLayerName,
  type PictureLayerName,
} from './layers.js';
export { fromMakerModel } from './maker/from-maker-model.js';
export { toMakerModel } from './maker/to-maker-model.js';
export { type ManifestTells, manifestOf, type PartFiles } from './manifest.js';
export { type CutNest, cutNest, nestFiles } from './nest/nest-files.js';
export { type NestShapes, nestShapes, type ShapedPart } from './nest/nest-shapes.js';
export type { NestFlat } from './nest/sheet-drawing.js';
export type { Bytes, OutFile } from './out-file.js';
export { pictureFiles, viewFiles } from './picture-files.js';
export type { ReadOutline } from './read/chains.js';
export { drawingOutlines } from './read/drawing-outlines.js';
export type { Legend } from './sheets/assembly-picture.js';
export { assemblyPicture, explodedPicture } from './sheets/assembly-picture.js';
export { familyPicture, type Pictured, partPicture } from './sheets/picture.js';
export { viewsDrawing } from './sheets/views.js';
export { shopJsonSchema } from './shop-schema.js';
export type { Cornered } from './sides.js';
export { assemblySolid, partSolid, type Solid, type SolidPart } from './solid.js';
export { stripFiles } from './strip-files.js';
export { toSvg } from './svg/write.js';
export { flatDrawing } from './table/flat.js';
export { partDrawing, partDxf, partSvg, type TablePart, tableDxf } from './table/part-table.js';
export { BASIC_LAYERS, type LayerMap, readLayers } from './table/read-layers.js';
export { type MarkStyle, TABLE_STYLE, type TableStyle } from './table/style.js';
export type { Writer } from './writer.js';
export { DRAWING_WRITERS, SOLID_WRITERS } from './writers.js';
