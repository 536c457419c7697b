import type { Drawing } from './drawing.js';
import { DXF_R12, DXF_R2000 } from './dxf/write.js';
import { GLB } from './glb/write.js';
import type { Solid } from './solid.js';
import { SVG } from './svg/write.js';
import type { Writer } from './writer.js';

/** Every format of drawings. A new one is its folder and a line here. */
export const DRAWING_WRITERS: readonly Writer<Drawing>[] = Object.freeze([DXF_R2000, DXF_R12, SVG]);

/** Every format of solids. A new one is its folder and a line here. */
export const SOLID_WRITERS: readonly Writer<Solid>[] = Object.freeze([GLB]);
