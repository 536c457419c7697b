// What only sister packages use: no promise to anybody else.

export { cutListFiles } from './cut-list/csv.js';
export {
  type CutTotals,
  cutTotals,
  cutWork,
  type ListedPart,
  listedPart,
} from './cut-list/cut-list.js';
export type { FastenerRow } from './cut-list/fastener-rows.js';
export { shearAbility } from './cut-list/shear-ability.js';
export { shopRack, stockOf } from './cut-list/stock-of.js';
export { dxfOf } from './dxf/write.js';
export { filesToMake } from './job-files.js';
export { letterOf } from './letter-of.js';
export { allFindings, manifestText } from './manifest.js';
export { coordinate } from './number.js';
export { type FileToMake, madeFile } from './out-file.js';
export { bendSurface } from './picture/bend-surface.js';
export { openings, panelSurface } from './picture/panel-surface.js';
export { partSurface } from './picture/part-surface.js';
export { pieces } from './picture/pieces.js';
export { type Facet, join, piecesOf, type Surface } from './picture/surface.js';
export { ISOMETRIC, see, type View } from './picture/view.js';
export { type VisibleLine, visibleBehind, visibleLines } from './picture/visible.js';
export { sequenceEntry } from './sequence-entry.js';
export { shearJson } from './shear/shear-json.js';
export { FRONT, SIDE, TOP } from './sheets/views.js';
export { escapeXml } from './svg/escape.js';
