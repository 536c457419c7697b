// The only door of @tinwright/export. Names, no `export *`.
export type { Drawing, DrawingLayer, Shape } from './drawing.js';
export { toDxfR12 } from './dxf/r12.js';
export { toDxf } from './dxf/r2000.js';
export { type DxfForm, dxfOf } from './dxf/write.js';
export { type Fraction, formatFraction } from './fraction.js';
export { type HtmlInfo, pagesHtml } from './html/write.js';
export { cutFiles, jobFiles, partDxf, type Wanted } from './job-files.js';
export { jobJsonSchema, type SchemaNode } from './job-schema.js';
export {
  type CutLayerName,
  LAYERS,
  type LayerName,
  type LayerStyle,
  type PictureLayerName,
} from './layers.js';
export { toMakerModel } from './maker/to-maker-model.js';
export { manifestOf, manifestText, type PartFiles } from './manifest.js';
export type { OutFile } from './out-file.js';
export { cautionsFor } from './packet/cautions.js';
export { LANGUAGES, type Language } from './packet/languages.js';
export { type Making, makingOf } from './packet/making.js';
export {
  type PacketOptions,
  packetPages,
  SECTIONS,
  type Section,
} from './packet/packet-pages.js';
export type { CautionName, PacketWords } from './packet/words.js';
export { type PacketFiles, type PacketForm, packetFiles } from './packet-files.js';
export type { Anchor, Block, Fill, Item, Page, Pen, Ring, Stroke, Words } from './page/page.js';
export { PAPERS, type Paper, SCALES } from './page/paper.js';
export { type Run, type SpareFont, type Typeface, typeface } from './page/typeface.js';
export { type DocumentInfo, pagesPdf } from './pdf/write.js';
export { pictureFiles, viewFiles } from './picture-files.js';
export { DIMS_NAMES, type DimsName } from './plan/dims.js';
export { ENGLISH } from './plan/english.js';
export type { BrakeMarks, PlanOptions } from './plan/options.js';
export { type Plan, partPlan } from './plan/plan-pages.js';
export type { SightAsk } from './plan/sight-lines.js';
export type { PlanWords } from './plan/words.js';
export { type DrawnFiles, type DrawnPart, planFiles, type SpareFile, templateFiles } from './plan-files.js';
export { sequenceEntry } from './sequence-entry.js';
export { stepNote } from './sequence-note.js';
export { assemblyPicture, explodedPicture } from './sheets/assembly-picture.js';
export { flatDrawing } from './sheets/flat.js';
export { familyPicture, type Pictured, partPicture } from './sheets/picture.js';
export { viewsDrawing } from './sheets/views.js';
export { shopJsonSchema } from './shop-schema.js';
export { stepFiles } from './step-files.js';
export { STEPS_ENGLISH } from './steps/english.js';
export { type StepOptions, stepDrawings } from './steps/step-drawings.js';
export type { StepWords } from './steps/words.js';
export { stripFiles } from './strip-files.js';
export { pageSvg } from './svg/page.js';
export { toSvg } from './svg/write.js';
export { partTemplate, type Template, type TemplateOptions } from './template/template-pages.js';
export type { Medium, Tile, Tiling } from './template/tiles.js';
