// What a program that embeds @tinwright/paper needs. Names, no `export *`.

export { type HtmlInfo, pagesHtml } from './html/write.js';
export type { BlankEdge, MarkingRow, RowKind } from './marking/row.js';
export { type Making, type MakingOptions, makingOf, makingOfAsync } from './packet/making.js';
export { type PacketOptions, packetPages } from './packet/packet-pages.js';
export { SECTIONS, type Section } from './packet/sections.js';
export { type PacketFiles, type PacketForm, type PacketSeen, packetFiles } from './packet-files.js';
export type { Anchor, Block, Fill, Item, Page, Pen, Ring, Stroke, Words } from './page/page.js';
export { PAPERS, PATTERN_SCALES, type Paper, SCALES } from './page/paper.js';
export { type Run, type SpareFont, type Typeface, typeface } from './page/typeface.js';
export type { SightLine } from './pattern/pattern-ask.js';
export { type DocumentInfo, pagesPdf } from './pdf/write.js';
export type { BrakeMarks, PlanOptions } from './plan/options.js';
export { type Plan, partPlan } from './plan/plan-pages.js';
export { type DrawnFiles, type DrawnPart, planFiles, type SpareFile, templateFiles } from './plan-files.js';
export { type ShearFilesOptions, shearFiles } from './shear-files.js';
export { type JobStepOptions, jobStepFiles, stepFiles } from './step-files.js';
export { type StepOptions, stepDrawings } from './steps/step-drawings.js';
export { pageSvg } from './svg/page.js';
export { partTemplate, type Template, type TemplateOptions } from './template/template-pages.js';
export type { Medium, Tile, Tiling } from './template/tiles.js';
