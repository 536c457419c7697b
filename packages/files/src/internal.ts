// What only sister packages use: no promise to anybody else.
export { letterOf } from './letter-of.js';
export { coordinate } from './number.js';
export { bendSurface } from './picture/bend-surface.js';
export { openings, panelSurface } from './picture/panel-surface.js';
export { partSurface } from './picture/part-surface.js';
export { pieces } from './picture/pieces.js';
export { type Facet, join, type Surface } from './picture/surface.js';
export { ISOMETRIC, see, type View } from './picture/view.js';
export { type VisibleLine, visibleLines } from './picture/visible.js';
export { FRONT, SIDE, TOP } from './sheets/views.js';
export { escapeXml } from './svg/escape.js';
