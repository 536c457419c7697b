import { frozen } from '@tinwright/core/internal';
import type { DxfForm } from '../dxf/write.js';
import type { LayerLooks } from '../layer-looks.js';
import type { CutLayerName, LayerPaints } from '../layers.js';

/** How a fastener's place is marked. A cross is two strokes, a dash one, a point or circle one touch. */
export type MarkStyle = 'cross' | 'dash' | 'point' | 'circle' | 'none';

/** What a cutting table wants of its files. */
export interface TableStyle {
  readonly form: DxfForm;
  readonly unit: 'mm' | 'in';
  /** Outlines as polylines with bulges, or as lines and arcs, which every controller knows. */
  readonly curves: 'polyline' | 'arcs';
  readonly marks: MarkStyle;
  readonly text: 'on' | 'off';
  /** Quantity, material and thickness in the note. */
  readonly note: 'name' | 'full';
  /** What files of parts are called: by the part, or also by quantity, material and thickness. */
  readonly names: 'part' | 'full';
  /** Holes of a smaller diameter become marks for a centre punch, mm; 0 for none. */
  readonly leastHole: number;
  /** Edges of an outline are made no shorter, where taking metal off can help, mm; 0 leaves them. */
  readonly leastEdge: number;
  /** Names and looks of layers in a DXF. */
  readonly looks: LayerLooks;
  /** Colours and widths of layers where they are other than ours. */
  readonly paints?: LayerPaints;
  /** Layers that are left out. */
  readonly without: readonly CutLayerName[];
}

/** How cut files are written when nothing else is asked for: mm, polylines with bulges, fasteners marked by a cross. */
export const TABLE_STYLE: TableStyle = frozen({
  form: 'r2000',
  unit: 'mm',
  curves: 'polyline',
  marks: 'cross',
  text: 'on',
  note: 'name',
  names: 'part',
  leastHole: 0,
  leastEdge: 0,
  looks: {},
  without: [],
});
